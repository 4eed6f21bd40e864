package org.scantling.intake;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** What the tests of this package share: a small vocabulary and the folder of example files. */
final class Example {
  static final Vocabulary VOCABULARY =
      new Vocabulary(
          Set.of("southern-pine", "douglas-fir-larch", "hem-fir", "spruce-pine-fir"),
          Set.of("Select-Structural", "No.1", "No.2", "No.3"),
          Set.of("bedrock", "foliated-rock", "sandy-gravel", "sand", "clay"),
          Set.of("honeysuckle", "climbing-rose", "grape", "wisteria", "none"),
          Set.of("one", "two-abreast", "wheelbarrow", "wheelchair"),
          Set.of("2x4", "2x6", "2x8", "4x4", "6x6"));

  private Example() {}

  static Path folder(String name) {
    try {
      return Path.of(Example.class.getResource("/intake/" + name).toURI());
    } catch (URISyntaxException impossible) {
      throw new AssertionError(impossible);
    }
  }

  static Path good(String name) {
    return folder("good").resolve(name);
  }

  static Intake read(String name, Setting... settings) {
    return new SiteReader(VOCABULARY).read(good(name), List.of(settings));
  }
}
