package org.scantling.intake;

import org.scantling.design.Site;

/** Builds a climate from what a file said under a path. */
final class ClimateAssembly {
  private ClimateAssembly() {}

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
