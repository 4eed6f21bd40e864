package org.scantling.engine;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Site;
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
    Job job = new Job(site, tables, new Ledger(Ledger.Keeps.NOTHING));
    return switch (question) {
      case POST_SIZE, CROSSBEAM_SIZE, RAIL_SIZE, BRACE_SIZE -> job.offer().sizes(question, false);
      case HEADER_SIZE -> headers(job);
      case HEADER_STYLE,
          CROSSBEAM_BLOCKING,
          TOP_LINE,
          FOOTING_KIND,
          FOOTING_BACKFILL,
          FOOTING_SIDE,
          BRACING ->
          job.words(question);
      case BAYS -> job.bayCounts().stream().map(String::valueOf).toList();
      case CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT, HEADER_STEP, BASE_JOINT ->
          tables.joints().rows().stream()
              .filter(row -> row.question() == question)
              .map(JointRow::id)
              .toList();
      default -> List.of();
    };
  }

  private static List<String> headers(Job job) {
    List<String> sizes = new ArrayList<>(job.offer().sizes(Question.HEADER_SIZE, false));
    sizes.addAll(job.offer().sizes(Question.HEADER_SIZE, true));
    return sizes;
  }
}
