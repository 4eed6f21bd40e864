package org.scantling.engine;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.rulebase.Fired;

/** What the resolver makes of the findings on one question. */
sealed interface Resolution {
  /** An answer, its reasons (governing first) and the options that were rejected. */
  record Answered(Answer answer, List<Reason> reasons, List<Reason> rejected)
      implements Resolution {

    /**
     * The same, with its stops of look and proportion as {@code last} found them: they name the
     * timbers around them, and those may have been others in between.
     */
    Answered amongTimbersOf(Answered last) {
      return new Answered(
          answer,
          reasons.stream().map(told -> last.found(told).orElse(told)).toList(),
          rejected.stream().flatMap(told -> last.found(told).stream()).toList());
    }

    /** True where an option is stopped by look or proportion, and by none of these findings. */
    boolean tellsMoreThan(List<Fired> findings) {
      return rejected.stream()
          .map(told -> (Finding.Reject) told.finding())
          .filter(told -> !told.calculated())
          .anyMatch(told -> findings.stream().noneMatch(each -> stops(each, told.option())));
    }

    private static boolean stops(Fired fired, String option) {
      return fired.finding() instanceof Finding.Reject reject && reject.option().equals(option);
    }

    /** What is told of the same option here; what a check stopped stays as it was told. */
    private Optional<Reason> found(Reason told) {
      return told.finding() instanceof Finding.Reject reject && !reject.calculated()
          ? rejected.stream()
              .filter(each -> stops(each, reject.option()))
              .findFirst()
              .map(each -> each.governing(told.governing()))
          : Optional.of(told);
    }

    private static boolean stops(Reason reason, String option) {
      return ((Finding.Reject) reason.finding()).option().equals(option);
    }
  }

  /**
   * Nothing is left.
   *
   * @param question that has no answer; none where the whole site is refused
   * @param closest what stopped the option or value that came closest
   */
  record Unanswerable(Optional<Question> question, Reason closest, List<Reason> rejected)
      implements Resolution {

    /** Of a number, the limit that it would have to pass. */
    Optional<Reason> against() {
      return closest.finding() instanceof Finding.AtLeast
          ? rejected.stream().findFirst()
          : Optional.empty();
    }

    /**
     * @throws java.util.NoSuchElementException where the whole site is refused
     */
    Question asked() {
      return question.orElseThrow();
    }

    /** The option or the value that came closest, forbidden as it is. */
    Answer closestAnswer() {
      return closest.finding() instanceof Finding.AtLeast least
          ? Answer.number(asked(), least.number())
          : Answer.option(asked(), ((Finding.Reject) closest.finding()).option());
    }
  }
}
