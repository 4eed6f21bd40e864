package org.scantling.search;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.ResultCache;
import org.scantling.design.Site;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Question;
import org.scantling.tables.JointRow;
import org.scantling.tables.Tables;

/** What a question of a site can be answered with. */
public final class AnswerOptions {
  private final Tables tables;

  public AnswerOptions(Tables tables) {
    this.tables = tables;
  }

  /**
   * The options in order, the least first; none for a number, or where only the work shows them.
   */
  public List<String> of(Site site, Question question) {
    DesignProblem problem =
        new DesignProblem(site, tables, new ResultCache(ResultCache.Retention.NOTHING));
    return switch (question) {
      case POST_SIZE, CROSSBEAM_SIZE, RAIL_SIZE, BRACE_SIZE ->
          problem.offer().sizes(question, false);
      case HEADER_SIZE -> headers(problem);
      case HEADER_STYLE,
          CROSSBEAM_BLOCKING,
          TOP_LINE,
          FOOTING_KIND,
          FOOTING_BACKFILL,
          FOOTING_SIDE,
          BRACING,
          CROSSBEAMS_AT_POSTS ->
          problem.words(question);
      case BAYS -> problem.bayCounts().stream().map(String::valueOf).toList();
      case CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT, HEADER_STEP, BASE_JOINT ->
          tables.joints().rows().stream()
              .filter(row -> row.question() == question)
              .map(JointRow::id)
              .toList();
      default -> List.of();
    };
  }

  private static List<String> headers(DesignProblem problem) {
    List<String> sizes = new ArrayList<>(problem.offer().sizes(Question.HEADER_SIZE, false));
    sizes.addAll(problem.offer().sizes(Question.HEADER_SIZE, true));
    return sizes;
  }
}
