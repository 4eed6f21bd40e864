package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.scantling.design.Geometry;
import org.scantling.mechanics.BeamLoad;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/**
 * One crossbeam: a simple span between the headers with a tail past each, notched over both, loaded
 * evenly over the strip that is its own, or by one person.
 */
public final class CrossbeamChecks {
  private static final String ROLE = "crossbeam";

  private final Geometry geometry;
  private final StripLoad strip;
  private final BeamChecks checks;
  private final SidewaysChecks sideways;

  public CrossbeamChecks(
      Geometry geometry, TopLoads loads, Limits limits, Function<String, Source> sources) {
    this(geometry, loads, limits, sources, new SolvedBeams());
  }

  /**
   * @param beams what was solved before, for who checks many
   */
  public CrossbeamChecks(
      Geometry geometry,
      TopLoads loads,
      Limits limits,
      Function<String, Source> sources,
      SolvedBeams beams) {
    this.geometry = geometry;
    this.strip = StripLoad.of(loads, geometry.crossbeamSpacingIn());
    double tailIn = geometry.crossbeamTailIn();
    double[] seats = {tailIn, tailIn + geometry.plan().rowSpacingIn()};
    LoadedBeam loaded = beams.of(geometry.crossbeamLengthIn(), seats, lying());
    BeamChecks.Seating seating =
        new BeamChecks.Seating(
            ROLE,
            geometry.crossbeams().notchIn(),
            0,
            seatIn(),
            geometry.headerLengthIn(),
            true,
            tailIn,
            geometry.plan().rowSpacingIn(),
            geometry.headers().paired() ? limits.pairShareRatio() : 1);
    this.checks = new BeamChecks(loaded, seating, limits, sources);
    this.sideways = new SidewaysChecks(loaded, seating, limits, sources);
  }

  /** Every check of that stock size, each with its worst combination. */
  public List<Checked> of(Material material) {
    return checks.of(material);
  }

  /** The same with what wind on its face does to it. */
  public List<Checked> of(Material material, SideBlow blow) {
    List<Checked> all = new ArrayList<>(checks.of(material));
    all.addAll(sideways.of(material, blow));
    return all;
  }

  /** Which loads work each check hardest. */
  public BeamStory story(Material material) {
    return new BeamStory(List.of(checks), material);
  }

  /** Paired headers are thin: one board of the pair takes its share on its own breadth. */
  private double seatIn() {
    return geometry.headers().breadthIn();
  }

  /** What lies on each inch of it, with how it was worked. */
  public StripLoad strip() {
    return strip;
  }

  private BeamLoads lying() {
    double tailIn = geometry.crossbeamTailIn();
    double spanIn = geometry.plan().rowSpacingIn();
    double endIn = geometry.crossbeamLengthIn();
    double[] marks = {0, tailIn, tailIn + spanIn, endIn};
    List<BeamLoad> people =
        List.of(
            new BeamLoad.Point(endIn / 2, strip.top().personLb()),
            new BeamLoad.Point(0, strip.top().personLb()),
            new BeamLoad.Point(tailIn + seatIn() / 2, strip.top().personLb()));
    return new BeamLoads(
        over(0, endIn, 0),
        over(0, endIn, strip.vinesLbPerIn()),
        bySpan(marks, strip.liveLbPerIn()),
        people,
        bySpan(marks, strip.snowLbPerIn()),
        over(0, endIn, strip.pressLbPerIn()),
        over(0, endIn, -strip.liftLbPerIn()));
  }

  private List<List<BeamLoad>> bySpan(double[] marks, double lbPerIn) {
    return List.of(
        over(marks[0], marks[1], lbPerIn),
        over(marks[1], marks[2], lbPerIn),
        over(marks[2], marks[3], lbPerIn));
  }

  private List<BeamLoad> over(double fromIn, double toIn, double lbPerIn) {
    return List.of(new BeamLoad.Uniform(fromIn, toIn, lbPerIn));
  }
}
