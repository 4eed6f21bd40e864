package org.scantling.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBaseFault;

/**
 * Answers a question that has options: the preferred option if nothing rejects it, else the next
 * above it in rank order, else the nearest below.
 */
final class OptionResolver {
  private final Question question;
  private final List<String> options;
  private final List<Fired> findings;
  private final int floor;
  private final Map<String, Reason> earlier = new LinkedHashMap<>();
  private final Map<String, Fired> worst = new LinkedHashMap<>();

  /**
   * @param options in rank order, smallest first
   * @param floor the least rank allowed; sizes never shrink from pass to pass
   */
  OptionResolver(Question question, List<String> options, List<Fired> findings, int floor) {
    this.question = question;
    this.options = List.copyOf(options);
    this.findings = findings;
    this.floor = floor;
    findings.stream().filter(OptionResolver::isReject).forEach(this::keepWorst);
  }

  /**
   * The same resolver, told what stopped the options below its floor in the run before: an option
   * that is not gone back to keeps the reason why it was left.
   */
  OptionResolver keeping(List<Reason> rejected) {
    for (Reason reason : rejected) {
      String option = ((Finding.Reject) reason.finding()).option();
      int rank = options.indexOf(option);
      if (rank >= 0 && rank < floor) {
        earlier.put(option, reason);
      }
    }
    return this;
  }

  /**
   * True where a reason is what stopped an option in the run before. Not asked by identity: what is
   * kept between runs may hand out the same finding again when it is found anew.
   */
  boolean tellsEarlier(Reason reason) {
    return reason.finding() instanceof Finding.Reject reject
        && earlier.containsKey(reject.option())
        && (reject.calculated() || !worst.containsKey(reject.option()));
  }

  Resolution resolve() {
    if (findings.isEmpty()) {
      throw new RuleBaseFault("no rule has anything to say about " + question.id());
    }
    Optional<Fired> wish = preferred();
    int wanted = Math.max(floor, wish.map(f -> options.indexOf(preference(f).option())).orElse(0));
    OptionalInt found = firstAllowed(wanted);
    if (found.isEmpty()) {
      Fired closest = worst.values().stream().min(byRatio()).orElseThrow(this::noOptions);
      return new Resolution.Unanswerable(
          Optional.of(question), reason(closest, true), rejections());
    }
    int chosen = found.getAsInt();
    Answer answer = Answer.option(question, options.get(chosen));
    Reason governing = governing(chosen, wanted, wish);
    return new Resolution.Answered(answer, reasons(governing), rejections());
  }

  private OptionalInt firstAllowed(int wanted) {
    for (int i = wanted; i < options.size(); i++) {
      if (!worst.containsKey(options.get(i))) {
        return OptionalInt.of(i);
      }
    }
    for (int i = wanted - 1; i >= floor; i--) {
      if (!worst.containsKey(options.get(i))) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * What moved the answer off the wish, else the wish, else what stopped the option that the site
   * asks for, else what stopped the option below.
   */
  private Reason governing(int chosen, int wanted, Optional<Fired> wish) {
    if (chosen < wanted) {
      return reason(Objects.requireNonNull(worst.get(options.get(chosen + 1))), true);
    }
    if (wish.isPresent() && options.indexOf(preference(wish.get()).option()) == chosen) {
      return reason(wish.get(), true);
    }
    return wish.filter(each -> preference(each).priority() == Priority.ASKED)
        .flatMap(asked -> stopped(preference(asked).option(), true))
        .or(() -> below(chosen).flatMap(each -> stopped(each, true)))
        .or(() -> wish.map(each -> reason(each, true)))
        .orElseThrow(() -> new RuleBaseFault(unfounded(options.get(chosen))));
  }

  private Optional<String> below(int chosen) {
    return chosen > 0 ? Optional.of(options.get(chosen - 1)) : Optional.empty();
  }

  /**
   * What stopped an option. Where a check stopped it in the run before, what was said then is told:
   * it stood then among timbers of its own kind, and not among those that came in its place. A stop
   * of look or proportion names the timbers around it, so what it finds now is told.
   */
  private Optional<Reason> stopped(String option, boolean governing) {
    Optional<Reason> before = Optional.ofNullable(earlier.get(option));
    return before
        .filter(each -> ((Finding.Reject) each.finding()).calculated())
        .or(() -> Optional.ofNullable(worst.get(option)).map(fired -> reason(fired, governing)))
        .or(() -> before)
        .map(each -> each.governing(governing));
  }

  private Optional<Fired> preferred() {
    Comparator<Fired> byPriority = Comparator.comparing(f -> preference(f).priority());
    return findings.stream()
        .filter(f -> f.finding() instanceof Finding.PreferOption)
        .filter(f -> options.contains(preference(f).option()))
        .max(byPriority.thenComparingInt(f -> options.indexOf(preference(f).option())));
  }

  private void keepWorst(Fired fired) {
    worst.merge(
        ((Finding.Reject) fired.finding()).option(),
        fired,
        (one, other) -> byRatio().compare(one, other) >= 0 ? one : other);
  }

  /**
   * The governing finding, then the other findings that are not rejections, in the order of their
   * rules.
   */
  private List<Reason> reasons(Reason governing) {
    List<Reason> reasons = new ArrayList<>();
    reasons.add(governing);
    findings.stream()
        .filter(each -> each.finding() != governing.finding() && !isReject(each))
        .forEach(each -> reasons.add(reason(each, false)));
    return reasons;
  }

  private List<Reason> rejections() {
    return options.stream()
        .map(option -> stopped(option, false))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Comparator<Fired> byRatio() {
    return Comparator.comparingDouble(f -> ((Finding.Reject) f.finding()).ratio());
  }

  private static boolean isReject(Fired fired) {
    return fired.finding() instanceof Finding.Reject;
  }

  private static Finding.PreferOption preference(Fired fired) {
    return (Finding.PreferOption) fired.finding();
  }

  private static Reason reason(Fired fired, boolean governing) {
    return new Reason(fired.finding(), fired.note(), governing, fired.because());
  }

  private String unfounded(String option) {
    return "no rule speaks for " + option + " as the answer to " + question.id();
  }

  private RuleBaseFault noOptions() {
    return new RuleBaseFault("question " + question.id() + " has no options at all");
  }
}
