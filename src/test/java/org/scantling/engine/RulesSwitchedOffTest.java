package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.intake.Intake;
import org.scantling.tables.Tables;

/** Switches each rule off in turn: some site must come to something else. */
@Tag("slow")
class RulesSwitchedOffTest {
  /** Rules that no site shows, and why that may be. */
  private static final Map<String, String> UNSEEN = unseen();

  private static Map<String, String> unseen() {
    Map<String, String> unseen = new TreeMap<>();
    String checked = "a check of the same candidates stops them first; its cases show it";
    unseen.put("posts.size.ungraded", "a better grade is taken for the role; its cases show it");
    unseen.put("support.side.posts-close", "no site stands its posts so close");
    unseen.put(
        "layout.bays.next-to-dead-end",
        "only walks of more than some seventeen bays pass any number over; its cases show it");
    unseen.put(
        "headers.size.dead-end",
        "the posts stop most joints that find no room; its cases show the headers");
    unseen.put(
        "cautions.record-slope", "no site that leans on a record falls so steeply; its cases do");
    unseen.put("cautions.record-across", "no site that leans on a record has rows at two heights");
    unseen.put("support.refuse.across", "only a given design stands so; RowsAndRockTest has one");
    unseen.put("sides.brace.holds-nothing", "no site leaves braces no room; its cases do");
    unseen.put(
        "layout.bays.end-not-free",
        "a file whose last post stands there is refused; only a search of lengths comes there");
    unseen.put("support.side.house", "only a house says so; its cases show it");
    unseen.put("joints.splice.bearing", "no post is sold that thin; a house may sell one");
    unseen.put("posts.size.long-bay", checked);
    unseen.put("posts.size.spindly", checked);
    unseen.put("posts.size.tall", checked);
    for (String member : List.of("crossbeams.size", "headers.size", "sides.rail", "sides.brace")) {
      unseen.put(member + ".ungraded", "a site shows it of the posts, and its cases of the rest");
    }
    unseen.put(
        "climate.refuse.wind-zone", "no zone of ours is guessed so windy; one of a house may be");
    for (String kind :
        List.of(
            "harsher",
            "joints",
            "length",
            "named",
            "over",
            "refused",
            "rhythm",
            "room",
            "sizes",
            "stands",
            "unproven")) {
      unseen.put("base.choice." + kind, "each site has one base here; BaseChoiceTest has several");
    }
    for (String asks :
        List.of(
            "climate.frost.authority",
            "climate.frost.authority-alone",
            "climate.snow.authority",
            "climate.snow.authority-alone",
            "climate.wind.authority",
            "climate.wind.authority-alone",
            "cautions.house-loosened",
            "cautions.setback",
            "cautions.permit-height")) {
      unseen.put(asks, "only a house says so; HouseOfPlaceTest has one");
    }
    for (String measured : List.of("cautions.snow-far-below", "cautions.frost-far-below")) {
      unseen.put(measured, "no site says where on earth it lies; MeasuredPlaceTest has some");
    }
    unseen.put("sides.brace.check", "the brace of the trade serves wherever its bolt does");
    return unseen;
  }

  private final Scenarios scenarios = new Scenarios();
  private final Tables tables = Tables.load();
  private final Map<Intake, Object> before = new LinkedHashMap<>();
  private final Map<String, List<Intake>> fired = new TreeMap<>();

  @Test
  void every_rule_makes_a_difference_somewhere() {
    for (Intake site : scenarios.sites()) {
      // The record of the base is worked out on another thread.
      Set<String> here = new ConcurrentSkipListSet<>();
      before.put(
          site,
          scenarios.outcome(
              site,
              tables,
              rule -> {
                here.add(rule);
                return true;
              }));
      here.forEach(rule -> fired.computeIfAbsent(rule, each -> new ArrayList<>()).add(site));
    }

    assertThat(scenarios.rules().stream().filter(rule -> !makesADifference(rule)))
        .as("rules that can go without any site noticing")
        .containsExactlyInAnyOrderElementsOf(UNSEEN.keySet());
  }

  private boolean makesADifference(String rule) {
    return fired.getOrDefault(rule, List.of()).stream()
        .anyMatch(
            site ->
                !scenarios
                    .outcome(site, tables, each -> !each.equals(rule))
                    .equals(before.get(site)));
  }
}
