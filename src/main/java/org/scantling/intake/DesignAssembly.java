package org.scantling.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.scantling.design.BaseDesign;
import org.scantling.design.Bays;
import org.scantling.design.WayOfBuilding;

/** Builds a design from a file that had no problem. */
final class DesignAssembly {
  private final Readings said;

  DesignAssembly(Readings said) {
    this.said = said;
  }

  BaseDesign design() {
    return new BaseDesign(
        said.word("title"),
        said.hasGroup("proven") ? Optional.of(proven()) : Optional.empty(),
        posts(),
        new BaseDesign.Headers(
            said.word("headers.style"),
            said.word("headers.size"),
            said.number("headers.overhang"),
            said.number("headers.notch")),
        crossbeams(),
        said.hasGroup("side-panels") ? Optional.of(sidePanels()) : Optional.empty(),
        said.hasGroup("braces") ? Optional.of(braces()) : Optional.empty(),
        said.hasGroup("materials")
            ? Optional.of(MaterialsAssembly.materials(said))
            : Optional.empty());
  }

  private BaseDesign.Proven proven() {
    return new BaseDesign.Proven(
        said.count("proven.built"),
        ClimateAssembly.climate(said, "proven.climate"),
        said.maybeWord("proven.soil"),
        said.maybeWord("proven.vine"),
        said.maybeNumber("proven.slope").orElse(0),
        IntStream.range(0, said.size("proven.record"))
            .mapToObj(place -> event("proven.record[" + place + "]"))
            .toList());
  }

  private BaseDesign.Event event(String path) {
    return new BaseDesign.Event(
        said.word(path + ".date"),
        said.word(path + ".kind"),
        said.word(path + ".what"),
        said.maybeWord(path + ".photo"));
  }

  private BaseDesign.Posts posts() {
    return new BaseDesign.Posts(
        said.word("posts.size"),
        said.number("posts.row-spacing"),
        bays(said).orElseThrow(),
        said.number("posts.height"),
        said.number("posts.embedment"),
        said.word("posts.footing"),
        said.maybeWord("posts.backfill"),
        said.maybeNumber("posts.hole-diameter"));
  }

  /** The bays, told one by one or as so many of one length; empty where that is not said. */
  static Optional<Bays> bays(Readings said) {
    List<Double> listed = said.numbers("posts.bays");
    if (!listed.isEmpty()) {
      return Optional.of(Bays.of(listed));
    }
    OptionalDouble bay = said.maybeNumber("posts.bay");
    OptionalInt count = said.maybeCount("posts.bays");
    return bay.isPresent() && count.isPresent()
        ? Optional.of(Bays.of(count.getAsInt(), bay.getAsDouble()))
        : Optional.empty();
  }

  private BaseDesign.Crossbeams crossbeams() {
    return new BaseDesign.Crossbeams(
        said.word("crossbeams.size"),
        said.count("crossbeams.count"),
        said.number("crossbeams.overhang"),
        said.number("crossbeams.notch"),
        said.hasGroup("crossbeams.end-cut") ? Optional.of(endCut()) : Optional.empty(),
        said.maybeWord("crossbeams.at-posts").orElse(WayOfBuilding.SINGLE_AT_POSTS));
  }

  private BaseDesign.EndCut endCut() {
    return new BaseDesign.EndCut(
        said.word("crossbeams.end-cut.kind"),
        said.number("crossbeams.end-cut.drop"),
        said.number("crossbeams.end-cut.run"));
  }

  private BaseDesign.SidePanels sidePanels() {
    return new BaseDesign.SidePanels(
        said.word("side-panels.rail"),
        said.number("side-panels.rail-height"),
        said.count("side-panels.pickets"));
  }

  private BaseDesign.Braces braces() {
    return new BaseDesign.Braces(said.word("braces.size"), said.number("braces.leg"));
  }
}
