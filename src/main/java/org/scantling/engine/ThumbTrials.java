package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebase.Fired;
import org.scantling.tables.Tables;

/**
 * Sets each rule of thumb about a size or a depth beside the calculation of the same: the smallest
 * answer that the one forbids nothing of, and the smallest that the other forbids nothing of.
 */
final class ThumbTrials {
  private static final List<Question> SIZES = List.of(CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE);
  private static final List<Question> DEPTHS = List.of(FOOTING_DEPTH, HOLE_DIAMETER);
  private static final double SLACK = 1e-9;

  private final Tables tables;
  private final Map<Question, List<RuleNote>> thumbs;
  private final Map<Question, Pass.QuestionFindings> collected;
  private final List<ThumbTrial> trials = new ArrayList<>();

  /**
   * @param thumbs the rules of thumb that bound each question from below
   * @param collected everything the rules found about the questions
   */
  ThumbTrials(
      Tables tables,
      Map<Question, List<RuleNote>> thumbs,
      Map<Question, Pass.QuestionFindings> collected) {
    this.tables = tables;
    this.thumbs = thumbs;
    this.collected = collected;
  }

  List<ThumbTrial> list() {
    SIZES.forEach(this::size);
    DEPTHS.forEach(this::depth);
    return trials;
  }

  private void size(Question question) {
    Pass.QuestionFindings said = collected.get(question);
    if (said == null || said.options().isEmpty()) {
      return;
    }
    int calculated = smallest(said, this::check);
    for (RuleNote note : thumbs.getOrDefault(question, List.of())) {
      Predicate<Fired> own = fired -> fired.note().id().equals(note.id()) && reject(fired);
      int thumb = smallest(said, own);
      trials.add(
          new ThumbTrial(
              note,
              question,
              standing(thumb, calculated),
              said.findings().stream().anyMatch(own),
              option(said, thumb),
              option(said, calculated)));
    }
  }

  /** Rank of the smallest option that no such finding rejects; past the last where none is left. */
  private static int smallest(Pass.QuestionFindings said, Predicate<Fired> stops) {
    List<String> stopped =
        said.findings().stream()
            .filter(stops)
            .map(fired -> ((Finding.Reject) fired.finding()).option())
            .toList();
    int rank = 0;
    while (rank < said.options().size() && stopped.contains(said.options().get(rank))) {
      rank++;
    }
    return rank;
  }

  private static String option(Pass.QuestionFindings said, int rank) {
    return rank < said.options().size() ? said.options().get(rank) : "none";
  }

  private void depth(Question question) {
    Pass.QuestionFindings said = collected.get(question);
    if (said == null) {
      return;
    }
    double calculatedIn = least(said, fired -> calculation(fired, question));
    for (RuleNote note : thumbs.getOrDefault(question, List.of())) {
      Predicate<Fired> own = fired -> fired.note().id().equals(note.id());
      double thumbIn = least(said, own);
      trials.add(
          new ThumbTrial(
              note,
              question,
              standing(thumbIn, calculatedIn),
              said.findings().stream().anyMatch(own),
              inches(thumbIn),
              inches(calculatedIn)));
    }
  }

  private static double least(Pass.QuestionFindings said, Predicate<Fired> asks) {
    return said.findings().stream()
        .filter(fired -> fired.finding() instanceof Finding.AtLeast)
        .filter(asks)
        .mapToDouble(fired -> ((Finding.AtLeast) fired.finding()).number())
        .max()
        .orElse(0);
  }

  /** Worked for the structure, not read off a map or taken from somebody's word. */
  private static boolean calculation(Fired fired, Question question) {
    boolean worked =
        fired.because().stream().anyMatch(each -> each.startsWith(question.subject() + "."));
    SourceKind kind = fired.note().source().kind();
    return worked && (kind == SourceKind.STANDARD || kind == SourceKind.CALCULATION);
  }

  private boolean check(Fired fired) {
    return fired.finding() instanceof Finding.Reject reject
        && tables.checks().find(reject.check()).isPresent();
  }

  private static boolean reject(Fired fired) {
    return fired.finding() instanceof Finding.Reject;
  }

  private static Standing standing(double thumb, double calculated) {
    if (Math.abs(thumb - calculated) <= SLACK * Math.abs(calculated)) {
      return Standing.EQUAL;
    }
    return thumb > calculated ? Standing.SAFER : Standing.NOT_ENOUGH;
  }

  private static String inches(double amountIn) {
    return MeasureText.imperial(Measure.inches(amountIn));
  }
}
