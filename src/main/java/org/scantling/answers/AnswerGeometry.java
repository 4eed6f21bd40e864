package org.scantling.answers;

import static org.scantling.reasons.Question.*;

import org.scantling.design.Geometry;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Question;
import org.scantling.tables.SizeRow;

/** The geometry that a set of answers describes. */
public final class AnswerGeometry {
  private AnswerGeometry() {}

  public static Geometry of(Answers answers, Stock stock, double endMarginIn) {
    SizeRow post = stock.row(answers.option(POST_SIZE));
    SizeRow header = stock.row(answers.option(HEADER_SIZE));
    SizeRow crossbeam = stock.row(answers.option(CROSSBEAM_SIZE));
    boolean paired = Stock.plies(answers.option(HEADER_SIZE)) > 1;
    return new Geometry(
        new Geometry.Plan(
            answers.number(ROW_SPACING),
            answers.number(BAY),
            Integer.parseInt(answers.option(BAYS))),
        new Geometry.Posts(post.thicknessIn(), answers.number(POST_HEIGHT)),
        new Geometry.Headers(
            paired,
            header.thicknessIn(),
            header.widthIn(),
            answers.number(HEADER_OVERHANG),
            paired ? 0 : answers.number(HEADER_NOTCH)),
        new Geometry.Crossbeams(
            Integer.parseInt(answers.option(CROSSBEAMS_PER_BAY)),
            crossbeam.thicknessIn(),
            crossbeam.widthIn(),
            answers.number(CROSSBEAM_OVERHANG),
            answers.number(CROSSBEAM_NOTCH),
            endMarginIn,
            answers.has(CROSSBEAM_BLOCKING)
                && answers.option(CROSSBEAM_BLOCKING).equals(WayOfBuilding.OVER_HEADERS),
            doubled(answers)));
  }

  /** Crossbeams are doubled for the braces that hold posts on brackets, and nowhere else. */
  private static boolean doubled(Answers answers) {
    return is(answers, CROSSBEAMS_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS)
        && is(answers, FOOTING_KIND, WayOfBuilding.BRACKET)
        && is(answers, BRACING, WayOfBuilding.KNEE_BRACES);
  }

  private static boolean is(Answers answers, Question question, String option) {
    return answers.has(question) && answers.option(question).equals(option);
  }
}
