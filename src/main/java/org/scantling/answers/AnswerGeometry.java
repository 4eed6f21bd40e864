package org.scantling.answers;

import static org.scantling.reasons.Question.*;

import java.util.Optional;
import org.scantling.design.Bays;
import org.scantling.design.Geometry;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Question;
import org.scantling.tables.SizeRow;

/** The geometry that a set of answers describes. */
public final class AnswerGeometry {
  private AnswerGeometry() {}

  /**
   * @param endMarginIn least distance from the last crossbeam to the end of the header
   * @param told the bays where they are told one by one, instead of as so many of one length
   */
  public static Geometry of(Answers answers, Stock stock, double endMarginIn, Optional<Bays> told) {
    SizeRow post = stock.row(answers.option(POST_SIZE));
    SizeRow header = stock.row(answers.option(HEADER_SIZE));
    SizeRow crossbeam = stock.row(answers.option(CROSSBEAM_SIZE));
    boolean paired = Stock.plies(answers.option(HEADER_SIZE)) > 1;
    return new Geometry(
        new Geometry.Plan(answers.number(ROW_SPACING), along(answers, told)),
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

  /** Those that are told, the longest as long as it was answered; else so many of that length. */
  private static Bays along(Answers answers, Optional<Bays> told) {
    int count = Integer.parseInt(answers.option(BAYS));
    return told.filter(bays -> bays.count() == count)
        .map(bays -> bays.stretchedTo(answers.number(BAY)))
        .orElseGet(() -> Bays.of(count, answers.number(BAY)));
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
