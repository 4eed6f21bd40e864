package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.perInch;
import static org.scantling.workings.CalculationSteps.pounds;

import java.util.List;
import java.util.Optional;
import org.scantling.confirm.BeamAsk;
import org.scantling.confirm.BeamScene;
import org.scantling.design.CrossbeamPlace;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;
import org.scantling.workings.BeamBurden.Part;

/**
 * One check of a beam under the arrangement of loads that works it hardest.
 *
 * @param check id of the check
 */
record BeamTask(BeamMember member, String check, BeamScene scene) {

  /** Crossbeams nearer to a place than this lie at it. */
  static final double NEAR_IN = 1e-6;

  /** True for a header over bays that are not alike. */
  boolean uneven() {
    return onPosts() && !geometry().plan().along().even();
  }

  /** The crossbeams on a header. */
  List<CrossbeamPlace> crossbeams() {
    return geometry().crossbeamPlaces();
  }

  /** Where one of them lies, from the first tip. */
  double fromTipIn(CrossbeamPlace crossbeam) {
    return geometry().headerTailIn() + crossbeam.alongIn();
  }

  /** A check under the loads that work it hardest; empty where nothing works it. */
  static Optional<BeamTask> hardest(BeamMember member, BeamAsk ask, Checked check) {
    return member
        .hardest(ask, LoadCombination.of(check.combination()))
        .map(scene -> new BeamTask(member, check.id(), scene));
  }

  /** What lies on the beam then, or a part of it. */
  BeamBurden burden(Part part) {
    return new BeamBurden(scene, part, member.each());
  }

  boolean onPosts() {
    return member.onPosts();
  }

  int spaces() {
    return geometry().crossbeams().perBay();
  }

  double spacingIn() {
    return geometry().crossbeamSpacingIn();
  }

  int crossbeamsOnTail() {
    return geometry().crossbeamsOnTail();
  }

  /** Crossbeams between a post and a place in its bay. */
  int passed(double fromIn) {
    int passed = 0;
    while (passed + 1 < spaces() && (passed + 1) * spacingIn() < fromIn - NEAR_IN) {
      passed++;
    }
    return passed;
  }

  /** A load as it is counted on this beam: by the inch, or of each crossbeam. */
  Measure load(double amount) {
    return onPosts() ? pounds(amount) : perInch(amount);
  }

  /** One person, and how they lever where they stand on the tail of a crossbeam. */
  Evidence person(Evidence evidence) {
    Evidence with = evidence.and("person", pounds(member.context().topLoads().personLb()));
    if (!onPosts()) {
      return with;
    }
    Evidence levering =
        with.and("reach", Measure.inches(geometry().crossbeamTailIn()))
            .and("rows", Measure.inches(geometry().plan().rowSpacingIn()));
    double share = member.boardShareRatio();
    return share < 1 ? levering.and("share", Measure.ratio(share)) : levering;
  }

  /** Of what a support carries, the part on the seat that is pressed: of a crossbeam on a pair. */
  double seatShareRatio() {
    return !onPosts() && geometry().headers().paired()
        ? member.context().limits().pairShareRatio()
        : 1;
  }

  /** A step of this member's own kind. */
  CalculationStep step(String what, Measure result, Evidence evidence) {
    return of(member.name() + "." + what, result, evidence);
  }

  /** A line of a kernel as a step that crossbeams and headers have alike. */
  CalculationStep both(String what, FormulaLine line) {
    return member.steps().as("beam." + what, line, about());
  }

  private CalculationStep of(String id, Measure result, Evidence evidence) {
    return member.steps().of(id, result, evidence.and(about()));
  }

  private Evidence about() {
    Evidence about =
        Evidence.saw("member", member.page())
            .and("check", check)
            .and("combination", combination().id());
    boolean cut = !scene.beam().cuts().isEmpty();
    return cut ? about.and("pieces", scene.pieces().way()) : about;
  }

  LoadCombination combination() {
    return scene.lying().combination();
  }

  private Geometry geometry() {
    return member.context().geometry();
  }
}
