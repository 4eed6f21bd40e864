package org.scantling.drawing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Stock;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.design.Structure;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.property.House;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.shop.Lists;

/** A proposal with its lists, worked out once for all who draw it. */
record Job(
    Proposal proposal, Site site, Lists lists, Map<UnitSystem, Map<String, String>> finished) {
  private static final Map<List<String>, Job> WORKED = new ConcurrentHashMap<>();

  /**
   * What is built in each of the ways that can be built; {@code -Ddrawings=all} for other jobs of
   * the same ways too, every scenario of the demo among them.
   */
  static List<String> all() {
    List<String> jobs =
        List.of(
            "brackets-asked",
            "doubled-on-steps",
            "everything-at-once",
            "long-walk",
            "metric-brackets",
            "mower-lane",
            "over-the-root",
            "sloping-path",
            "steep-ramp",
            "stone-terrace",
            "wisteria-court");
    List<String> more =
        List.of(
            "bean-row",
            "concrete-asked",
            "deep-frost",
            "doubled-at-the-posts",
            "heavy-snow",
            "metric-country",
            "past-the-pipe",
            "proven-ground",
            "roses-on-paving",
            "same-place",
            "step-free",
            "tall-and-wide",
            "windy-hill");
    boolean every = "all".equals(System.getProperty("drawings"));
    return every ? Stream.concat(jobs.stream(), more.stream()).toList() : jobs;
  }

  static Job of(String scenario, String... settings) {
    return WORKED.computeIfAbsent(
        Stream.concat(Stream.of(scenario), Arrays.stream(settings)).toList(),
        key -> work(scenario, List.of(settings)));
  }

  private static Job work(String scenario, List<String> settings) {
    Path demo = Path.of("scenarios", scenario + ".yaml");
    Path file =
        Files.exists(demo)
            ? demo
            : Path.of("src", "test", "resources", "rulecases", "sites", scenario + ".yaml");
    Site site =
        new SiteReader(Vocabulary.of(House.TABLES))
            .read(file, settings.stream().map(Setting::parse).toList())
            .site();
    Proposal proposal = House.propose(site);
    return new Job(
        proposal,
        site,
        Lists.of(proposal, site, House.TABLES, Optional.empty()),
        new EnumMap<>(UnitSystem.class));
  }

  Structure structure() {
    return ((Proposal.Result.Proposed) proposal.result()).structure();
  }

  Geometry base() {
    String market = site.materials().market().orElse(House.TABLES.defaults().row("market").word());
    double endMarginIn = House.TABLES.thumb("crossbeam.end-margin").amount();
    return new BaseRecord(site.base(), new Stock(House.TABLES, market), endMarginIn).geometry();
  }

  /** The drawings, made once. */
  Map<String, String> drawings(UnitSystem units) {
    return finished.computeIfAbsent(units, this::drawn);
  }

  /** The same, made anew. */
  Map<String, String> drawn(UnitSystem units) {
    return laidOut(units).files();
  }

  Drawings laidOut(UnitSystem units) {
    return Drawings.of(lists, proposal, site, base(), House.TABLES, units);
  }

  List<Picture> pictures(UnitSystem units) {
    return drawings(units).entrySet().stream()
        .map(each -> Picture.read(each.getKey(), each.getValue()))
        .toList();
  }

  Picture picture(String name, UnitSystem units) {
    return pictures(units).stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
