package org.scantling.property;

import java.util.ArrayList;
import java.util.List;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.SizeRow;

/**
 * Two proposals, of which the second answers more of one demand. Sizes compare only where the
 * layout came out the same: another number of bays, another spacing or another way of carrying the
 * crossbeams changes what each piece has to do.
 */
record Pair(Proposal less, Proposal more) {
  private static final double HAIR = 1e-6;
  private static final List<Question> LAYOUT =
      List.of(
          Question.BAYS,
          Question.CROSSBEAMS_PER_BAY,
          Question.FOOTING_KIND,
          Question.FOOTING_BACKFILL,
          Question.HEADER_STYLE);

  boolean bothProposed() {
    return less.proposed() && more.proposed();
  }

  /** True where a refusal is cured by asking for more. */
  boolean rescued() {
    return !less.proposed() && more.proposed();
  }

  boolean sameLayout() {
    return LAYOUT.stream().allMatch(this::same);
  }

  boolean same(Question question) {
    return outcome(less, question).equals(outcome(more, question));
  }

  /**
   * True where a tail was cut shorter to end on a length the yard sells: a person on its tip levers
   * less, and a shallower crossbeam may serve a wider way.
   */
  boolean shorterTail() {
    return amount(less, Question.CROSSBEAM_OVERHANG)
        > amount(more, Question.CROSSBEAM_OVERHANG) + HAIR;
  }

  /**
   * True where deeper crossbeams brought a deeper header: the posts end lower under it, and a
   * lighter one may serve.
   */
  boolean deeperStack() {
    return rank(less, Question.CROSSBEAM_SIZE) < rank(more, Question.CROSSBEAM_SIZE)
        && !same(Question.POST_SIZE);
  }

  /** True of a lighter post in a deeper hole: its foot turns less. */
  boolean deeperFoot() {
    return rank(less, Question.POST_SIZE) > rank(more, Question.POST_SIZE)
        && amount(less, Question.FOOTING_DEPTH) < amount(more, Question.FOOTING_DEPTH) - HAIR;
  }

  /**
   * True where no post did for its sway alone, the one thing of a post that a deeper foot mends.
   */
  boolean rescuedByFoot() {
    return less.result() instanceof Proposal.Result.NeedsEngineer needs
        && needs.reason().finding() instanceof Finding.Reject stop
        && stop.check().equals("post.drift");
  }

  /** True where depth alone holds the post down, and what is built wider or higher weighs more. */
  boolean weightHelps() {
    boolean lifted =
        less.decision(Question.FOOTING_DEPTH)
            .orElseThrow()
            .governing()
            .note()
            .id()
            .equals("footings.depth.uplift");
    return lifted && !(same(Question.POST_HEIGHT) && same(Question.ROW_SPACING));
  }

  /** What shrank though more was asked; empty where all is well. */
  List<String> shrunk() {
    List<String> shrunk = new ArrayList<>();
    for (Question size :
        List.of(Question.CROSSBEAM_SIZE, Question.HEADER_SIZE, Question.POST_SIZE)) {
      boolean compares = size != Question.HEADER_SIZE || !shallowerCrossbeams();
      if (compares && rank(less, size) > rank(more, size)) {
        shrunk.add(said(size));
      }
    }
    if (depthsCompare()
        && amount(less, Question.FOOTING_DEPTH) > amount(more, Question.FOOTING_DEPTH) + HAIR) {
      shrunk.add(said(Question.FOOTING_DEPTH));
    }
    return shrunk;
  }

  /** A header is no shallower than what lies on it; a stouter crossbeam may be a shallower one. */
  private boolean shallowerCrossbeams() {
    return depthIn(less) > depthIn(more) + HAIR;
  }

  private static double depthIn(Proposal proposal) {
    return House.TABLES
        .size(SoundProposal.word(outcome(proposal, Question.CROSSBEAM_SIZE)))
        .widthIn();
  }

  boolean depthsCompare() {
    // Posts that stand further apart may count the soil twice; a stiffer base turns less itself.
    return same(Question.POST_SIZE)
        && alike(Question.FOOTING_SIDE)
        && alike(Question.BASE_JOINT)
        && !widerCollar()
        && !weightHelps();
  }

  /** True of the same answer, and where neither has any. */
  private boolean alike(Question question) {
    return less.decision(question)
        .map(Decision::proposed)
        .equals(more.decision(question).map(Decision::proposed));
  }

  /** A collar of concrete that is wider leans on more soil and may be shallower. */
  private boolean widerCollar() {
    return SoundProposal.word(outcome(less, Question.FOOTING_BACKFILL)).equals("concrete")
        && amount(less, Question.HOLE_DIAMETER) < amount(more, Question.HOLE_DIAMETER) - HAIR;
  }

  private String said(Question question) {
    return question.id() + " " + text(less, question) + " -> " + text(more, question);
  }

  private static String text(Proposal proposal, Question question) {
    return outcome(proposal, question) instanceof Outcome.Word word
        ? word.text()
        : Double.toString(amount(proposal, question));
  }

  private static int rank(Proposal proposal, Question size) {
    String option = SoundProposal.word(outcome(proposal, size));
    SizeRow row = House.TABLES.size(option.startsWith("2-") ? option.substring(2) : option);
    return row.rankCount();
  }

  static double amount(Proposal proposal, Question question) {
    return ((Outcome.Amount) outcome(proposal, question)).measure().amount();
  }

  private static Outcome outcome(Proposal proposal, Question question) {
    return proposal.decision(question).orElseThrow().proposed();
  }
}
