package org.scantling.intake;

import java.util.Optional;
import org.scantling.design.Locality;
import org.scantling.design.Site;

/** Builds a climate from what a file said under a path. */
final class ClimateAssembly {
  private ClimateAssembly() {}

  /** The climate of a site, with what kind of wind and snow it is. */
  static Site.Climate climate(Readings said) {
    Site.Climate plain = climate(said, "site.climate");
    return new Site.Climate(
        plain.frostDepthIn(),
        plain.groundSnowPsf(),
        plain.windSpeedMph(),
        plain.exposure(),
        plain.hardinessZone(),
        plain.freezingIndexFDays(),
        plain.meanAnnualF(),
        new Site.Weather(
            said.maybeWord("site.climate.wind-basis"),
            said.maybeNumber("site.climate.wind-pressure"),
            snow(said),
            said.maybeNumber("site.climate.roof-live"),
            hill(said),
            said.maybeWord("site.place").flatMap(Locality::of)));
  }

  private static Optional<Site.SnowAndRain> snow(Readings said) {
    return said.hasGroup("site.climate.snow")
        ? Optional.of(
            new Site.SnowAndRain(
                said.number("site.climate.snow.ss"), said.number("site.climate.snow.sr")))
        : Optional.empty();
  }

  private static Optional<Site.Hill> hill(Readings said) {
    return said.hasGroup("site.hill")
        ? Optional.of(
            new Site.Hill(
                said.word("site.hill.shape"),
                said.number("site.hill.height"),
                said.number("site.hill.half-length"),
                said.number("site.hill.place")))
        : Optional.empty();
  }

  static Site.Climate climate(Readings said, String path) {
    return new Site.Climate(
        said.maybeNumber(path + ".frost-depth"),
        said.maybeNumber(path + ".ground-snow"),
        said.maybeNumber(path + ".wind-speed"),
        said.maybeWord(path + ".exposure"),
        said.maybeNumber(path + ".hardiness-zone"),
        said.maybeNumber(path + ".air-freezing-index"),
        said.maybeNumber(path + ".mean-annual-temperature"));
  }
}
