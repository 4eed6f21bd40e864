package org.scantling.print;

import java.util.List;
import java.util.stream.Stream;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.BuriedFooting;
import org.scantling.ground.ConcreteOverSoil;
import org.scantling.ground.ConcreteWeight;
import org.scantling.ground.EffectiveWidth;
import org.scantling.ground.FrostDepth;
import org.scantling.ground.FrostSoil;
import org.scantling.ground.FrostWinter;
import org.scantling.ground.LateralLoad;
import org.scantling.ground.LateralResistance;
import org.scantling.ground.NeumannFactor;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.PostGrip;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.ground.Sliding;
import org.scantling.ground.SoilPressure;
import org.scantling.ground.TurnedFoot;
import org.scantling.ground.TurningFoot;
import org.scantling.ground.VerticalBearing;
import org.scantling.loads.CornerWind;
import org.scantling.loads.ExposureConstants;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.FoliageWind;
import org.scantling.loads.FreeRoofRule;
import org.scantling.loads.FreeRoofWind;
import org.scantling.loads.HeightFactor;
import org.scantling.loads.HillWind;
import org.scantling.loads.HourlyWind;
import org.scantling.loads.KeptSnow;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.MemberWeight;
import org.scantling.loads.NetPressureCoefficients;
import org.scantling.loads.OpenTop;
import org.scantling.loads.RoofEdgeZone;
import org.scantling.loads.SideWind;
import org.scantling.loads.SnowAndRain;
import org.scantling.loads.SnowFactors;
import org.scantling.loads.SolidityBands;
import org.scantling.loads.SolidityBands.Band;
import org.scantling.loads.StrengthGust;
import org.scantling.loads.VelocityPressure;
import org.scantling.loads.WallRule;
import org.scantling.loads.WindFactors;
import org.scantling.loads.WindPanel;

/** Every kernel of loads and ground that hands out how it worked. */
final class Kernels {
  private static final double IN_PER_FT = 12;
  private static final SolidityBands BANDS =
      new SolidityBands(List.of(new Band(0, 2.0), new Band(0.1, 1.8), new Band(0.3, 1.6)), 0.7);

  private Kernels() {}

  static Stream<Kernel> all() {
    return Stream.of(wind(), hills(), sides(), top(), snow(), gusts(), foot(), weights(), frost())
        .flatMap(each -> each);
  }

  private static HeightFactor height(double[] n) {
    return new ExposureConstants(n[0], n[1], n[2]).at(n[3]);
  }

  private static Stream<Kernel> wind() {
    return Stream.of(
        Kernel.of(
            "Kz over the least height",
            "wind.height-factor",
            Kernels::height,
            HeightFactor::factor,
            9.5,
            10800,
            180,
            300),
        Kernel.of(
            "Kz under it",
            "wind.height-factor",
            Kernels::height,
            HeightFactor::factor,
            7,
            14400,
            180,
            99),
        Kernel.of(
            "velocity pressure on flat ground",
            "wind.velocity-pressure",
            n ->
                VelocityPressure.of(
                    n[4], height(n), new WindFactors(HillWind.flat(n[5]), n[6], n[7])),
            VelocityPressure::pressurePsf,
            9.5,
            10800,
            180,
            300,
            115,
            1,
            0.85,
            1),
        Kernel.of(
            "velocity pressure on a hill",
            "wind.velocity-pressure",
            n ->
                VelocityPressure.of(
                    n[7],
                    new ExposureConstants(9.5, 10800, 180).at(240),
                    new WindFactors(hill(n), 0.85, 1)),
            VelocityPressure::pressurePsf,
            840,
            3000,
            360,
            49,
            1.45,
            3,
            1.5,
            115));
  }

  private static HillWind hill(double[] n) {
    return HillWind.of(
        new HillWind.Place(n[0], n[1], n[2], n[3]),
        new HillWind.Shape(n[4], n[5], n[6]),
        new HillWind.Bounds(180, 0.2, 0.5));
  }

  private static Stream<Kernel> hills() {
    return Stream.of(
        hill("a ridge", 840, 3000, 360, 49, 1.45, 3, 1.5),
        hill("a steep ridge", 480, 600, 0, 50, 1.45, 3, 1.5),
        hill("beyond the reach of a ridge", 480, 1800, 3000, 50, 1.45, 3, 1.5),
        hill("a hill too low to count", 120, 240, 0, 50, 1.45, 3, 1.5));
  }

  private static Kernel hill(String name, double... given) {
    return Kernel.of(name, "wind.hill", Kernels::hill, HillWind::topographicFactor, given);
  }

  private static Stream<Kernel> sides() {
    return Stream.of(
        side("a frame of its band", 0.2, 1440, 20, 0.85, 16, 1.4),
        side("a frame just past the start of a band", 0.105, 1440, 20, 0.85, 16, 1.4),
        side("a frame in a light wind", 0.5, 1440, 5, 0.85, 16, 1.4),
        side("a wall", 0.85, 1440, 20, 0.85, 16, 1.4),
        side("a wall in a light wind", 0.85, 1440, 5, 0.85, 16, 1.4),
        foliage("leaves", 1440, 16, 0.8, 0.5, 0.2, 1.0),
        foliage("stems", 144, 10, 0.9, 0.2, 0.3, 1.2));
  }

  private static Kernel side(String name, double... given) {
    boolean wall = name.startsWith("a wall");
    return Kernel.of(
        name,
        wall ? "wind.across.closed" : "wind.across.timber",
        n ->
            SideWind.on(
                new WindPanel(n[0] * n[1], n[1]),
                n[2],
                new LatticeRule(BANDS, n[3], n[4]),
                new WallRule(n[5], n[3], n[4])),
        SideWind::forceLb,
        given);
  }

  private static Kernel foliage(String name, double... given) {
    return Kernel.of(
        name,
        "wind.across.leaves",
        n -> FoliageWind.on(n[0], n[1], new FoliageCover(n[2], n[3]), new FoliageCover(n[4], n[5])),
        FoliageWind::worstLb,
        given);
  }

  private static FreeRoofWind canopy(double[] n) {
    return FreeRoofWind.on(
        n[0],
        new FreeRoofRule(
            n[1],
            n[2],
            List.of(NetPressureCoefficients.even(n[3]), NetPressureCoefficients.even(-n[4]))));
  }

  private static CornerWind corner(double[] n) {
    RoofEdgeZone zone =
        new RoofEdgeZone(
            n[5],
            List.of(
                new RoofEdgeZone.Band(1, n[6], n[7]),
                new RoofEdgeZone.Band(Double.POSITIVE_INFINITY, 1.1, 1.1)));
    return canopy(n).atCorner(zone.part(n[8], n[9]));
  }

  private static Stream<Kernel> top() {
    return Stream.of(
        Kernel.of(
            "lift",
            "wind.uplift",
            Kernels::canopy,
            FreeRoofWind::upliftPsf,
            16,
            0.85,
            0.5,
            1.2,
            1.1),
        Kernel.of(
            "press",
            "wind.press",
            Kernels::canopy,
            FreeRoofWind::downforcePsf,
            16,
            0.85,
            0.5,
            1.2,
            1.1),
        corner("a joint in the corner", 16, 0.85, 0.5, 1.2, 1.1, 36, 3.3, 1.7, 1200, 45),
        corner(
            "a joint that is lifted as the top is", 16, 0.85, 0.5, 1.2, 4, 36, 3.3, 1.7, 1200, 45),
        Kernel.of(
                "covered", "top.covered", Kernels::openTop, OpenTop::coveredRatio, 1.5, 11.33, 0.7)
            .as(line -> line.as("covered-in-leaf")));
  }

  private static Kernel corner(String name, double... given) {
    return Kernel.of(name, "wind.corner.lift", Kernels::corner, CornerWind::upliftPsf, given)
        .as(line -> line.as(line.id().equals("lift") ? "joint" : "joint." + line.id()));
  }

  private static OpenTop openTop(double[] n) {
    return new OpenTop(n[0], n[1], n[2]);
  }

  private static Stream<Kernel> snow() {
    return Stream.of(
        Kernel.of(
            "flat roof",
            "snow.flat",
            n -> FlatRoofSnow.of(n[0], new SnowFactors(n[1], n[2], n[3]), 20),
            FlatRoofSnow::flatRoofSnowPsf,
            25,
            0.9,
            1.2,
            0.8),
        Kernel.of(
            "snow and rain",
            "snow.from-snow-and-rain",
            n -> SnowAndRain.of(n[0], n[1], n[2], n[3]),
            SnowAndRain::groundPsf,
            39.68,
            8.354,
            0.8,
            1.2),
        Kernel.of(
            "more rain than counts",
            "snow.from-snow-and-rain",
            n -> SnowAndRain.of(n[0], n[1], n[2], n[3]),
            SnowAndRain::groundPsf,
            10,
            20,
            0.8,
            1.2),
        Kernel.of(
            "kept by the open top",
            "top.snow",
            n -> KeptSnow.of(n[0], n[1]),
            KeptSnow::keptPsf,
            0.55,
            15.12));
  }

  private static HourlyWind.Frames frames(double[] n) {
    return new HourlyWind.Frames(
        n[0], n[1], n[2], new ExposureConstants(9.5, 10800, 180).at(n[3]), n[4], n[5]);
  }

  private static Stream<Kernel> gusts() {
    return Stream.of(
        Kernel.of(
            "speed behind a pressure",
            "wind.hourly-speed",
            n -> HourlyWind.ofPressure(n[0]),
            HourlyWind::speedMph,
            7.519),
        Kernel.of(
            "pressure of a speed",
            "wind.hourly-pressure",
            n -> HourlyWind.ofSpeed(n[0]),
            HourlyWind::pressurePsf,
            52.8),
        Kernel.of(
            "gust of a mean",
            "wind.from-mean",
            n -> StrengthGust.ofMean(n[0], n[1], n[2]),
            StrengthGust::speedMph,
            52.8,
            1.52,
            1.6),
        Kernel.of(
            "gust of an older map",
            "wind.from-allowable",
            n -> StrengthGust.ofAllowable(n[0], n[1]),
            StrengthGust::speedMph,
            90,
            0.6),
        Kernel.of(
            "gust of equal pressure",
            "wind.equal-pressure",
            n -> HourlyWind.ofPressure(n[6]).equalGust(frames(n)),
            StrengthGust::speedMph,
            1.4,
            0.9,
            2,
            300,
            0.85,
            0.85,
            7.519));
  }

  private static Stream<Kernel> foot() {
    return Stream.of(
        Kernel.of(
            "a square post",
            "footing.depth",
            n ->
                NonConstrainedEmbedment.of(
                    new LateralLoad(n[0], n[1]),
                    EffectiveWidth.squarePost(n[2], n[2]),
                    new LateralResistance(n[3], n[4])),
            found -> found.depthIn() / IN_PER_FT,
            519,
            57.8,
            5.5,
            100,
            2),
        Kernel.of(
            "a collar",
            "footing.depth",
            n ->
                NonConstrainedEmbedment.of(
                    new LateralLoad(n[0], n[1]),
                    EffectiveWidth.concreteCollar(n[2]),
                    new LateralResistance(n[3], n[4])),
            found -> found.depthIn() / IN_PER_FT,
            519,
            57.8,
            12,
            150,
            1),
        Kernel.of(
            "the width of a post",
            "footing.width",
            n -> EffectiveWidth.squarePost(n[0], n[0]),
            width -> width.widthIn() / IN_PER_FT,
            5.5),
        Kernel.of(
            "a foot that turns",
            "post.drift.turned",
            n -> new TurningFoot(new LateralLoad(n[0], n[1]), n[2], n[3]).turned(n[4]),
            TurnedFoot::movementIn,
            77.43,
            48.63,
            36,
            24,
            82),
        Kernel.of("S1", "footing.soil", Kernels::third, SoilPressure::pressurePsf, 150, 2, 48),
        Kernel.of(
            "S1 far down", "footing.soil", Kernels::third, SoilPressure::pressurePsf, 150, 1, 180),
        Kernel.of(
            "under a pad",
            "footing.pressure",
            n -> VerticalBearing.of(n[0], n[1], n[2]),
            VerticalBearing::pressurePsf,
            408,
            254,
            3000),
        Kernel.of(
            "under concrete",
            "footing.pressure",
            n -> VerticalBearing.of(n[0], n[1], n[2], n[3]),
            VerticalBearing::pressurePsf,
            408,
            254,
            3000,
            125));
  }

  private static SoilPressure third(double[] n) {
    return new LateralResistance(n[0], n[1]).at(n[2], 1.0 / 3);
  }

  private static Stream<Kernel> weights() {
    return Stream.of(
        Kernel.of(
            "a timber",
            "crossbeam.own",
            n -> MemberWeight.of(n[0], n[1], n[2]),
            MemberWeight::weightLbPerIn,
            1.5,
            5.5,
            45),
        Kernel.of(
            "concrete over soil",
            "footing.own-pressure",
            n -> ConcreteOverSoil.of(new BallastWeights(n[0], n[1], 0), n[2]),
            ConcreteOverSoil::pressurePsf,
            150,
            100,
            30),
        Kernel.of(
            "a collar of concrete",
            "footing.concrete",
            n -> ConcreteWeight.of(BuriedFooting.fullCollar(n[0], n[1], n[2]), n[3]),
            ConcreteWeight::weightLb,
            36,
            12,
            3.5,
            150),
        Kernel.of(
            "the grip of fill",
            "footing.grip",
            n -> PostGrip.of(n[0], n[1], n[2], n[3]),
            PostGrip::gripLb,
            0.15,
            100,
            30,
            3.5),
        slid("a pier in sand", 653, 452, 42, 24, 200, 0.35, 0),
        slid("a pier in clay", 653, 300, 42, 24, 100, 0, 130),
        slid("a light pier in clay", 180, 452, 42, 24, 100, 0, 130));
  }

  private static Kernel slid(String name, double... given) {
    return Kernel.of(
        name,
        "footing.slide-hold",
        n ->
            Sliding.of(
                100,
                new Sliding.Footing(n[0], n[1], n[2], n[3]),
                new PresumptiveSoil(2000, n[4], n[5], n[6])),
        Sliding::resistanceLb,
        given);
  }

  private static Stream<Kernel> frost() {
    return Stream.of(
        Kernel.of(
            "frost",
            "frost.depth",
            n ->
                FrostDepth.of(
                    new FrostSoil(n[0], n[1], n[2]), new FrostWinter(n[3], n[4], n[5], n[6])),
            found -> found.depthIn() / IN_PER_FT,
            100,
            0.15,
            0.76,
            1500,
            0.7,
            120,
            45),
        Kernel.of(
            "what warm ground leaves of the frost",
            "frost.lambda",
            n -> NeumannFactor.of(n[0], n[1]),
            NeumannFactor::lambdaFactor,
            0.5,
            0.2));
  }
}
