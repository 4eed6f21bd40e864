package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.perInch;
import static org.scantling.workings.CalculationSteps.pounds;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.scantling.confirm.BeamScene;
import org.scantling.mechanics.BeamResult;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/**
 * The lines written so far of one beam under one arrangement of loads, and what every one of them
 * draws on: the beam, what lies on it, and the moments over its supports. Moments that pull the top
 * are positive here.
 */
final class BeamLines {
  /** Filled into a part of a formula that is told only where its load is there. */
  private static final String HERE = "";

  private final BeamTask task;
  private final BeamBurden burden;
  private final BeamResult result;
  private final Set<CalculationStep> lines = new LinkedHashSet<>();

  BeamLines(BeamTask task, BeamBurden burden) {
    this.task = task;
    this.burden = burden;
    this.result =
        switch (burden.part()) {
          case ALL -> scene().all();
          case STILL -> scene().permanent();
          case PASSING -> scene().passing();
        };
  }

  BeamTask task() {
    return task;
  }

  BeamBurden burden() {
    return burden;
  }

  BeamScene scene() {
    return burden.scene();
  }

  BeamResult result() {
    return result;
  }

  /** The lines so far, each once. */
  List<CalculationStep> list() {
    return List.copyOf(lines);
  }

  /** Writes a line and gives its result back. */
  double add(String what, Measure amount, Evidence evidence) {
    lines.add(task.step(what, amount, evidence));
    return amount.amount();
  }

  /** Moment over a support, pulling the top. */
  double over(int support) {
    return -result.momentInLb(supportAtIn(support));
  }

  double supportAtIn(int support) {
    return scene().beam().supportAtIn(support);
  }

  int lastSupport() {
    return scene().beam().supportCount() - 1;
  }

  OptionalDouble personAtIn() {
    return burden.personAtIn();
  }

  /** The even load of a region by the inch: of a header its own weight alone. */
  double evenLbPerIn(int region) {
    return task.onPosts() ? burden.ownLbPerIn() : burden.on(region);
  }

  Measure even(int region) {
    return perInch(evenLbPerIn(region));
  }

  /**
   * Of a header what each crossbeam on a span presses, and their spaces; of a crossbeam nothing.
   */
  Evidence withCrossbeams(Evidence evidence, int span) {
    return task.onPosts()
        ? evidence
            .and("point", point(burden.region(span)))
            .and("spaces", Measure.count(task.spaces()))
        : evidence;
  }

  /** What each crossbeam on a region of a header presses. */
  Measure point(int region) {
    return pounds(burden.on(region));
  }

  /** Turns on the part of a formula that counts one person. */
  Evidence withPerson(Evidence evidence) {
    return turnedOn(evidence, "p").and("person", pounds(burden.personLb()));
  }

  /** Turns on a part of a formula. */
  static Evidence turnedOn(Evidence evidence, String part) {
    return evidence.and(part, HERE);
  }
}
