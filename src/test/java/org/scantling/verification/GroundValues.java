package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.ground.EffectiveWidth;
import org.scantling.ground.EmbeddedPost;
import org.scantling.ground.FrostDepth;
import org.scantling.ground.FrostSoil;
import org.scantling.ground.FrostWinter;
import org.scantling.ground.LateralLoad;
import org.scantling.ground.LateralResistance;
import org.scantling.ground.NeumannFactor;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.SoilPressure;
import org.scantling.ground.VerticalBearing;

/** Embedment, frost and bearing. */
final class GroundValues {
  private static final double IN_PER_FT = 12;
  private static final double IN2_PER_FT2 = 144;
  private static final double IN_PER_M = 1 / 0.0254;
  private static final double LB_PER_KN = 1000 / 4.4482216152605;
  private static final double PSF_PER_KPA = 20.885434273;
  private static final double THIRD = 1.0 / 3;

  static final Map<String, ToDoubleFunction<PackRow>> QUANTITIES =
      Map.ofEntries(
          entry("s1-psf", row -> soil(row).pressurePsf(row.number("depth") * IN_PER_FT, THIRD)),
          entry("s3-psf", row -> soil(row).pressurePsf(row.number("depth") * IN_PER_FT, 1)),
          entry("one-pass-a-m", row -> metricPass(row).aIn() / IN_PER_M),
          entry("one-pass-depth-m", row -> metricPass(row).depthIn() / IN_PER_M),
          entry("one-pass-a-ft", row -> trialPass(row).aIn() / IN_PER_FT),
          entry("depth-ft", row -> free(row).depthIn() / IN_PER_FT),
          entry("a-ft", row -> free(row).aIn() / IN_PER_FT),
          entry("s1-at-depth-psf", row -> free(row).s1Psf()),
          entry("latent-heat", row -> frost(row).soil().latentHeatBtuPerFt3()),
          entry("volumetric-heat", row -> frost(row).soil().volumetricHeatBtuPerFt3F()),
          entry("surface-frost-f", row -> frost(row).winter().surfaceFrostF()),
          entry("initial-warmth-f", row -> frost(row).winter().initialWarmthF()),
          entry("thermal-ratio", row -> frost(row).thermalRatio()),
          entry("fusion-factor", row -> frost(row).fusionFactor()),
          entry("lambda-factor", row -> frost(row).lambdaFactor()),
          entry("stefan-ft", row -> frost(row).stefanIn() / IN_PER_FT),
          entry("frost-depth-ft", row -> frost(row).depthIn() / IN_PER_FT),
          entry("lambda", GroundValues::lambda),
          entry("in-ground-moment-in-lb", row -> inGround(row).greatestMomentInLb()),
          entry("in-ground-most-bent-in", row -> inGround(row).mostBentAtIn()),
          entry("in-ground-turns-at-in", row -> inGround(row).turnsAtIn()),
          entry("in-ground-shear-lb", row -> inGround(row).greatestShearLb()),
          entry("footing load", GroundValues::footingLb),
          entry("footing area", row -> footingIn2(row) / IN2_PER_FT2),
          entry("footing side", row -> Math.sqrt(footingIn2(row))),
          entry("footing diameter", row -> bearing(row).neededDiameterIn()));

  private GroundValues() {}

  private static LateralResistance soil(PackRow row) {
    return new LateralResistance(row.number("soil"), row.number("increase"));
  }

  private static LateralLoad push(PackRow row) {
    return new LateralLoad(row.number("p"), row.number("h") * IN_PER_FT);
  }

  private static EffectiveWidth width(PackRow row) {
    return EffectiveWidth.concreteCollar(row.number("b") * IN_PER_FT);
  }

  private static NonConstrainedEmbedment free(PackRow row) {
    return NonConstrainedEmbedment.of(push(row), width(row), soil(row));
  }

  private static NonConstrainedEmbedment trialPass(PackRow row) {
    SoilPressure s1 = soil(row).at(row.number("trial") * IN_PER_FT, THIRD);
    return NonConstrainedEmbedment.onePass(push(row), width(row), s1);
  }

  private static NonConstrainedEmbedment metricPass(PackRow row) {
    LateralLoad push = new LateralLoad(row.number("pKn") * LB_PER_KN, row.number("hM") * IN_PER_M);
    EffectiveWidth width = EffectiveWidth.concreteCollar(row.number("bM") * IN_PER_M);
    SoilPressure s1 =
        new LateralResistance(row.number("s1Kpa") * PSF_PER_KPA, 1)
            .at(IN_PER_FT, /* shareRatio= */ 1);
    return NonConstrainedEmbedment.onePass(push, width, s1);
  }

  private static EmbeddedPost inGround(PackRow row) {
    return new EmbeddedPost(new LateralLoad(row.number("p"), row.number("hIn")), row.number("dIn"));
  }

  private static double lambda(PackRow row) {
    return NeumannFactor.of(row.number("alpha"), row.number("mu")).lambdaFactor();
  }

  private static FrostDepth frost(PackRow row) {
    return FrostDepth.of(
        new FrostSoil(row.number("pcf"), row.number("water"), row.number("k")),
        new FrostWinter(row.number("fi"), row.number("n"), row.number("days"), row.number("mean")));
  }

  /** What a deck post brings down: its share of the deck. */
  private static double footingLb(PackRow row) {
    return row.number("loadPsf")
        * row.number("beamSpanFt")
        * row.number("joistSpanFt")
        * row.number("joistShare");
  }

  /** The soil carries the footing's own weight too, so that much less is left for the post. */
  private static VerticalBearing bearing(PackRow row) {
    double ownPsf = row.number("concretePcf") * row.number("thicknessIn") / IN_PER_FT;
    return VerticalBearing.of(footingLb(row), IN2_PER_FT2, row.number("soilPsf") - ownPsf);
  }

  private static double footingIn2(PackRow row) {
    return VerticalBearing.circleIn2(bearing(row).neededDiameterIn());
  }
}
