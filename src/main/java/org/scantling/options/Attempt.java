package org.scantling.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.design.WayOfBuilding;
import org.scantling.intake.Intake;
import org.scantling.reasons.Change;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.OptionAxisRow;
import org.scantling.words.ChangeWords;

/**
 * What is set otherwise in one structure that is tried.
 *
 * @param changes of what the site asks
 * @param base the file of the base that it starts from, where the site file names several
 * @param conceded of what room is given up, where some is
 */
record Attempt(List<Change> changes, Optional<String> base, Optional<Demand> conceded) {
  /** The structure that is proposed anyway. */
  static final Attempt NOTHING = new Attempt(List.of(), Optional.empty(), Optional.empty());

  Attempt {
    changes = List.copyOf(changes);
  }

  static Attempt of(Change change, boolean concedes) {
    return new Attempt(
        List.of(change),
        Optional.empty(),
        concedes ? Optional.of(change.demand()) : Optional.empty());
  }

  /** True where it is tried together with what other rows set. */
  boolean crosses(OptionAxisRow row) {
    return changes.isEmpty()
        ? row.crossed()
        : changes.stream().allMatch(each -> row.crosses(text(each.to())));
  }

  private static String text(Outcome outcome) {
    return outcome instanceof Outcome.Word word ? word.text() : "";
  }

  /** The same over that base. */
  Attempt from(String file) {
    return new Attempt(changes, Optional.of(file), conceded);
  }

  /** Set beside a file that names several bases, anything might make another one the nearest. */
  Attempt overBaseOf(Intake intake) {
    return base.isPresent() || intake.choice().isEmpty() ? this : from(intake.baseFile());
  }

  Attempt with(Attempt other) {
    return new Attempt(
        Stream.concat(changes.stream(), other.changes.stream()).toList(),
        base.or(other::base),
        conceded.or(other::conceded));
  }

  /** What {@code --set} takes. */
  List<String> settings() {
    List<String> settings = new ArrayList<>(changes.stream().map(ChangeWords::setting).toList());
    base.ifPresent(file -> settings.add("base=" + file));
    return settings;
  }

  /** Inches of room that it gives up. */
  double concededIn() {
    return changes.stream()
        .filter(each -> conceded.filter(each.demand()::equals).isPresent())
        .mapToDouble(each -> amount(each.from()) - amount(each.to()))
        .sum();
  }

  boolean otherTimber() {
    return changes.stream()
        .anyMatch(each -> each.demand() == Demand.SPECIES || each.demand() == Demand.GRADE);
  }

  /** True where every choice that it sets is also what came of it. */
  boolean kept(Proposal proposal) {
    return changes.stream()
        .allMatch(
            each ->
                each.demand()
                    .question()
                    .flatMap(proposal::decision)
                    .map(Decision::proposed)
                    .filter(answer -> each.demand() != Demand.HEADROOM)
                    .map(answer -> kept(each, answer, proposal))
                    .orElse(true));
  }

  /** Posts in concrete stand in the ground like any others. */
  private static boolean kept(Change change, Outcome answer, Proposal proposal) {
    Optional<String> fill =
        change.demand() == Demand.FOOTING
            ? WayOfBuilding.fillAsked(text(change.to()))
            : Optional.empty();
    return fill.isEmpty()
        ? answer.equals(change.to())
        : text(answer).equals(WayOfBuilding.EMBEDDED)
            && proposal
                .decision(Question.FOOTING_BACKFILL)
                .filter(each -> text(each.proposed()).equals(fill.get()))
                .isPresent();
  }

  private static double amount(Outcome outcome) {
    return ((Outcome.Amount) outcome).measure().amount();
  }
}
