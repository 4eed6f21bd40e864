package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What one crossbeam puts on one of its two headers: half of what lies on it.
 *
 * @param ownLbPerIn weight of the crossbeam
 * @param strip what lies on it
 * @param crossbeams how they are laid, with blocks between them or without
 * @param lengthIn of the crossbeam
 * @param gapIn from crossbeam to crossbeam, length of a block
 * @param load all of it, by kind
 */
public record CrossbeamOnHeader(
    double ownLbPerIn,
    StripLoad strip,
    Geometry.Crossbeams crossbeams,
    double lengthIn,
    double gapIn,
    HeaderLoad load)
    implements Calculated {

  /**
   * @param material the crossbeam
   * @param loads on the open top
   */
  static CrossbeamOnHeader of(Geometry geometry, Material material, TopLoads loads) {
    Geometry.Crossbeams crossbeams = geometry.crossbeams();
    StripLoad strip = StripLoad.of(loads, geometry.crossbeamSpacingIn());
    double halfIn = geometry.crossbeamLengthIn() / 2;
    double halfIn2 = strip.spacingIn() * halfIn;
    double ownLbPerIn = material.weightLbPerIn();
    double blockLb =
        crossbeams.blocked()
            ? ownLbPerIn
                * (crossbeams.blockDepthIn() / crossbeams.depthIn())
                * geometry.crossbeamGapIn()
            : 0;
    HeaderLoad load =
        new HeaderLoad(
            ownLbPerIn * halfIn + blockLb,
            TopLoads.lbPerIn(loads.vinePsf(), halfIn2),
            TopLoads.lbPerIn(loads.livePsf(), halfIn2),
            TopLoads.lbPerIn(loads.snowPsf(), halfIn2),
            TopLoads.lbPerIn(loads.windDownPsf(), halfIn2),
            TopLoads.lbPerIn(loads.windUpPsf(), halfIn2),
            TopLoads.lbPerIn(loads.jointUpPsf(), halfIn2),
            TopLoads.lbPerIn(loads.postUpPsf(), halfIn2),
            // At the tip of a tail a person levers more than their weight onto the near header.
            loads.personLb() * (1 + geometry.crossbeamTailIn() / geometry.plan().rowSpacingIn()));
    return new CrossbeamOnHeader(
        ownLbPerIn,
        strip,
        crossbeams,
        geometry.crossbeamLengthIn(),
        crossbeams.blocked() ? geometry.crossbeamGapIn() : 0,
        load);
  }

  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>(crossbeams.blocked() ? blocked() : unblocked());
    lines.add(half("vines", strip.vinesLbPerIn(), load.vinesLb()));
    lines.add(half("live", strip.liveLbPerIn(), load.liveLb()));
    lines.add(half("snow", strip.snowLbPerIn(), load.snowLb()));
    lines.add(half("press", strip.pressLbPerIn(), load.windDownLb()));
    lines.add(half("lift", strip.liftLbPerIn(), load.windUpLb()));
    lines.add(
        FormulaLine.of("corner-lift", Measure.pounds(load.postUpLb()))
            .with("pressure", Measure.psf(strip.top().postUpPsf()))
            .with("spacing", Measure.inches(strip.spacingIn()))
            .with("length", Measure.inches(lengthIn)));
    return lines;
  }

  private List<FormulaLine> unblocked() {
    return List.of(half("dead", ownLbPerIn, load.deadLb()));
  }

  /** A block is of the crossbeam's timber, as long as their gap and as deep as stands clear. */
  private List<FormulaLine> blocked() {
    Measure gap = Measure.inches(gapIn);
    Measure block = Measure.inches(crossbeams.blockDepthIn());
    Measure depth = Measure.inches(crossbeams.depthIn());
    return List.of(
        FormulaLine.of("gap", gap)
            .with("spacing", Measure.inches(strip.spacingIn()))
            .with("breadth", Measure.inches(crossbeams.breadthIn())),
        FormulaLine.of("block", block)
            .with("depth", depth)
            .with("notch", Measure.inches(crossbeams.notchIn())),
        half("dead-blocked", ownLbPerIn, load.deadLb())
            .with("gap", gap)
            .with("block", block)
            .with("depth", depth));
  }

  private FormulaLine half(String id, double lbPerIn, double lb) {
    return FormulaLine.of(id, Measure.pounds(lb))
        .with("line", new Measure(lbPerIn, Unit.POUND_PER_INCH))
        .with("length", Measure.inches(lengthIn));
  }
}
