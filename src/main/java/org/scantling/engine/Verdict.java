package org.scantling.engine;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;

/** What the resolver makes of the findings on one question. */
sealed interface Verdict {
  /** An answer, its reasons (governing first) and the options that were rejected. */
  record Answered(Answer answer, List<Reason> reasons, List<Reason> rejected) implements Verdict {}

  /**
   * Nothing is left.
   *
   * @param closest what stopped the option or value that came closest
   */
  record Unanswerable(Question question, Reason closest, List<Reason> rejected) implements Verdict {

    /** Of a number, the limit that it would have to pass. */
    Optional<Reason> against() {
      return closest.finding() instanceof Finding.AtLeast
          ? rejected.stream().findFirst()
          : Optional.empty();
    }

    /** The option or the value that came closest, forbidden as it is. */
    Answer closestAnswer() {
      return closest.finding() instanceof Finding.AtLeast least
          ? Answer.number(question, least.number())
          : Answer.option(question, ((Finding.Reject) closest.finding()).option());
    }
  }
}
