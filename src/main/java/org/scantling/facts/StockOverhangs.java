package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.Geometry;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;

/**
 * The overhangs at which a timber is exactly as long as the yard sells it, beside the longer stick
 * that the wanted overhang would take.
 */
final class StockOverhangs {
  private static final double LAST_BITS = 1e-9;

  private final DesignProblem problem;
  private final Answers answers;
  private final Geometry geometry;

  StockOverhangs(DesignProblem problem, Answers answers, Geometry geometry) {
    this.problem = problem;
    this.answers = answers;
    this.geometry = geometry;
  }

  /** The overhang, nearest to the wanted one, at which a crossbeam ends on a length sold. */
  Optional<Worked> crossbeam(double wantedIn) {
    double fixedIn = answers.number(ROW_SPACING) + geometry.seatBreadthIn();
    List<Double> soldIn = problem.context(answers).soldIn(CROSSBEAM_SIZE);
    return soldIn.stream()
        .map(length -> (length - fixedIn) / 2)
        .filter(overhang -> overhang > 0)
        .min(Comparator.comparingDouble(overhang -> Math.abs(overhang - wantedIn)))
        .map(
            overhang ->
                ByGeometry.worked(
                    "crossbeam.overhang.stock",
                    CROSSBEAM_OVERHANG,
                    overhang,
                    seen(wantedIn, overhang, fixedIn, soldIn)));
  }

  /**
   * The overhang below the proven one at which a whole header ends on the next length sold below
   * it, and how many crossbeams each tail would lose by that. None where every bay has a header of
   * its own.
   */
  List<Worked> header() {
    if (isTop(WayOfBuilding.STEPPED)) {
      return List.of();
    }
    double wantedIn = problem.base().geometry().headers().overhangIn();
    double slopeRatio =
        isTop(WayOfBuilding.FOLLOWS_GROUND) ? problem.site().ground().slopePercent() / 100 : 0;
    double fixedIn =
        problem.site().walkway().lengthIn() * Math.hypot(1, slopeRatio)
            + geometry.posts().breadthIn();
    List<Double> soldIn = problem.context(answers).soldIn(HEADER_SIZE);
    List<Worked> trimmed = new ArrayList<>();
    soldIn.stream()
        .map(length -> (length - fixedIn) / 2)
        .filter(overhang -> overhang > 0 && overhang < wantedIn - LAST_BITS)
        .max(Comparator.naturalOrder())
        .ifPresent(
            overhang -> {
              trimmed.add(
                  ByGeometry.worked(
                      "header.overhang.stock",
                      HEADER_OVERHANG,
                      overhang,
                      seen(wantedIn, overhang, fixedIn, soldIn)));
              lost(wantedIn, overhang).ifPresent(trimmed::add);
            });
    return trimmed;
  }

  private Optional<Worked> lost(double wantedIn, double overhangIn) {
    int lost = geometry.crossbeamsOnTail(wantedIn) - geometry.crossbeamsOnTail(overhangIn);
    return lost > 0
        ? Optional.of(
            ByGeometry.worked(
                "header.overhang.crossbeams-lost", HEADER_OVERHANG, lost, Evidence.none()))
        : Optional.empty();
  }

  private boolean isTop(String kind) {
    return answers.has(TOP_LINE) && answers.option(TOP_LINE).equals(kind);
  }

  private static Evidence seen(
      double wantedIn, double overhangIn, double fixedIn, List<Double> soldIn) {
    double endsIn = fixedIn + 2 * overhangIn;
    Evidence seen =
        Evidence.saw("wanted", Measure.inches(wantedIn)).and("sold", Measure.inches(endsIn));
    double wholeIn = fixedIn + 2 * wantedIn;
    Optional<Double> without =
        soldIn.stream().filter(length -> length >= wholeIn - LAST_BITS).findFirst();
    if (without.isEmpty()) {
      return seen.and("whole", Measure.inches(wholeIn));
    }
    return without.get() > endsIn + LAST_BITS
        ? seen.and("without", Measure.inches(without.get()))
        : seen;
  }
}
