package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.AggregateWith;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.scantling.ground.ConstrainedEmbedment;
import org.scantling.ground.EffectiveWidth;
import org.scantling.ground.FrostDepth;
import org.scantling.ground.FrostSoil;
import org.scantling.ground.FrostWinter;
import org.scantling.ground.LateralLoad;
import org.scantling.ground.LateralResistance;
import org.scantling.ground.NeumannFactor;
import org.scantling.ground.NonConstrainedEmbedment;

class GroundWorkedValuesTest {
  private static final double IN_PER_FT = 12;
  private static final double IN_PER_M = 1 / 0.0254;
  private static final double LB_PER_KN = 1000 / 4.4482216152605;
  private static final double PSF_PER_KPA = 20.885434273;
  private static final double THIRD = 1.0 / 3;

  private static final Map<String, ToDoubleFunction<LoadsGroundRow>> EMBEDMENT =
      Map.ofEntries(
          entry("s1-psf", row -> soil(row).pressurePsf(row.given("depth") * IN_PER_FT, THIRD)),
          entry("s3-psf", row -> soil(row).pressurePsf(row.given("depth") * IN_PER_FT, 1)),
          entry("one-pass-a-m", row -> metricPass(row).aIn() / IN_PER_M),
          entry("one-pass-depth-m", row -> metricPass(row).depthIn() / IN_PER_M),
          entry("one-pass-a-ft", row -> trialPass(row).aIn() / IN_PER_FT),
          entry("depth-ft", row -> free(row).depthIn() / IN_PER_FT),
          entry("a-ft", row -> free(row).aIn() / IN_PER_FT),
          entry("s1-at-depth-psf", row -> free(row).s1Psf()),
          entry("constrained-depth-ft", row -> held(row).depthIn() / IN_PER_FT),
          entry("constrained-depth-m", row -> held(row).depthIn() / IN_PER_M),
          entry("constrained-s3-psf", row -> held(row).s3Psf()),
          entry("constrained-s3-kpa", row -> held(row).s3Psf() / PSF_PER_KPA));

  private static final Map<String, ToDoubleFunction<LoadsGroundRow>> FROST =
      Map.ofEntries(
          entry("latent-heat", row -> frost(row).soil().latentHeatBtuPerFt3()),
          entry("volumetric-heat", row -> frost(row).soil().volumetricHeatBtuPerFt3F()),
          entry("surface-frost-f", row -> frost(row).winter().surfaceFrostF()),
          entry("initial-warmth-f", row -> frost(row).winter().initialWarmthF()),
          entry("thermal-ratio", row -> frost(row).thermalRatio()),
          entry("fusion-factor", row -> frost(row).fusionFactor()),
          entry("lambda-factor", row -> frost(row).lambdaFactor()),
          entry("stefan-ft", row -> frost(row).stefanIn() / IN_PER_FT),
          entry("depth-ft", row -> frost(row).depthIn() / IN_PER_FT),
          entry("lambda", row -> NeumannFactor.lambda(row.given("alpha"), row.given("mu"))));

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/verification/ground-embedment.csv", numLinesToSkip = 1)
  void a_worked_embedment_is_met(@AggregateWith(LoadsGroundRow.Reader.class) LoadsGroundRow row) {
    row.check(EMBEDMENT);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = {"/verification/ground-frost.csv", "/verification/ground-lambda.csv"},
      numLinesToSkip = 1)
  void a_worked_frost_depth_is_met(@AggregateWith(LoadsGroundRow.Reader.class) LoadsGroundRow row) {
    row.check(FROST);
  }

  private static LateralResistance soil(LoadsGroundRow row) {
    return new LateralResistance(row.given("soil"), row.given("increase"));
  }

  private static LateralLoad push(LoadsGroundRow row) {
    return new LateralLoad(row.given("p"), row.given("h") * IN_PER_FT);
  }

  private static EffectiveWidth width(LoadsGroundRow row) {
    return EffectiveWidth.concreteCollar(row.given("b") * IN_PER_FT);
  }

  private static NonConstrainedEmbedment free(LoadsGroundRow row) {
    return NonConstrainedEmbedment.of(push(row), width(row), soil(row));
  }

  private static ConstrainedEmbedment held(LoadsGroundRow row) {
    return ConstrainedEmbedment.of(push(row), width(row), soil(row));
  }

  private static NonConstrainedEmbedment trialPass(LoadsGroundRow row) {
    double s1Psf = soil(row).pressurePsf(row.given("trial") * IN_PER_FT, THIRD);
    return NonConstrainedEmbedment.onePass(push(row), width(row), s1Psf);
  }

  private static NonConstrainedEmbedment metricPass(LoadsGroundRow row) {
    LateralLoad push = new LateralLoad(row.given("pKn") * LB_PER_KN, row.given("hM") * IN_PER_M);
    EffectiveWidth width = EffectiveWidth.concreteCollar(row.given("bM") * IN_PER_M);
    return NonConstrainedEmbedment.onePass(push, width, row.given("s1Kpa") * PSF_PER_KPA);
  }

  private static FrostDepth frost(LoadsGroundRow row) {
    return FrostDepth.of(
        new FrostSoil(row.given("pcf"), row.given("water"), row.given("k")),
        new FrostWinter(row.given("fi"), row.given("n"), row.given("days"), row.given("mean")));
  }
}
