package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.words.CalculationWords;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** What an engineer reads of the loads can be gone over with a pocket calculator. */
class CalculationTraceTest {
  /** More than this the rounding of the printed numbers may not leave open. */
  private static final double SPREAD = 0.03;

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void every_step_of_every_site_comes_to_what_it_says(UnitSystem units) {
    Voice voice = Demo.words().voice(Reader.ENGINEER, units);
    Set<String> formulas = new TreeSet<>();
    proposed()
        .flatMap(each -> each.trace().stream())
        .map(CalculationWords.of(voice)::formula)
        .forEach(formulas::add);
    assertThat(formulas.size()).isGreaterThan(1000);
    assertThat(formulas.stream().flatMap(each -> wrong(each).stream())).isEmpty();
  }

  @Test
  void every_step_says_what_it_is_and_stands_under_a_heading() {
    Voice voice = Demo.words().voice(Reader.ENGINEER, UnitSystem.METRIC);
    Set<String> headings = new TreeSet<>();
    proposed()
        .flatMap(each -> each.trace().stream())
        .forEach(
            each -> {
              assertThat(CalculationWords.of(voice).worked(each)).doesNotContain("{");
              headings.add(CalculationWords.of(voice).part(each));
            });
    assertThat(headings)
        .anyMatch(each -> each.startsWith("header.bending: "))
        .anyMatch(each -> each.contains("cut into pieces of 3+4+2 bays"))
        .anyMatch(each -> each.startsWith("Post 2 on its bracket"));
  }

  /** What a calculator makes of a line, where it is not what the line says. */
  static Optional<String> wrong(String formula) {
    if (formula.startsWith("Mo = ") && formula.contains("; ")) {
      return Optional.empty();
    }
    String[] sides = formula.split("[,;:]")[0].split(" = ");
    if (sides.length < 3) {
      return Optional.of(formula + ": not in symbols, numbers and result");
    }
    try {
      ByHand.Range worked = ByHand.work(sides[sides.length - 2]);
      ByHand.Range said = ByHand.work(sides[sides.length - 1].replace(" on the whole outline", ""));
      boolean same = worked.meets(said);
      boolean sharp = worked.spread() <= SPREAD * Math.abs(said.middle()) + tiny(worked);
      return same && sharp
          ? Optional.empty()
          : Optional.of(formula + ": " + worked + (same ? ", too wide" : ""));
    } catch (RuntimeException e) {
      return Optional.of(formula + ": " + e);
    }
  }

  /** Where things cancel out, a thousandth of a unit is nothing. */
  private static double tiny(ByHand.Range worked) {
    return Math.abs(worked.middle()) < 1e-3 ? 1e-3 : 0;
  }

  /** Numbers that are measured on the drawing, stated by the site or read in a table. */
  private static final Set<String> GIVEN =
      Set.of(
          "solved",
          // Bays that are not alike are told as simple spans, whose own statics is not gone over.
          "simple",
          "over",
          "one",
          "gap",
          "long",
          "lateral",
          "increase",
          "counted",
          "push-height",
          "hole",
          "soil-pressure",
          "soil-weight",
          "concrete-weight",
          "grip",
          "friction",
          "cohesion",
          "density",
          "water",
          "surface",
          "index",
          "days",
          "warm",
          "conductivity",
          "stiffening",
          "lifted",
          "height",
          "lowest",
          "gradient",
          "alpha",
          "directionalityFactor",
          "speed",
          "gust",
          "cf",
          "fill",
          "drag",
          "open",
          "thick",
          "half-length",
          "from",
          "decay",
          "above",
          "corner-factor",
          "edge-factor",
          "inside",
          "part",
          "zone",
          "at",
          "headers",
          "ends",
          "posts",
          "rails",
          "pickets",
          "crossbeams",
          "length",
          "share",
          "count",
          "postCount",
          "ground",
          "thermalFactor",
          "importanceFactor",
          "breadth",
          "depth",
          "spacing",
          "notch",
          "timber",
          "coefficient",
          "solidity",
          "less",
          "weight",
          "reference",
          "wet",
          "size",
          "incising",
          "duration",
          "unbraced",
          "tail",
          "span",
          "arm",
          "beyond",
          "stands",
          "far-off",
          "spaces",
          "passed",
          "post",
          "other",
          "first-factor",
          "dead-factor",
          "live-factor",
          "snow-factor",
          "wind-factor",
          "lift-factor",
          "factor",
          "rows",
          "reach",
          "seat",
          "creep",
          "groundRatio",
          "rest",
          "tabled",
          "first-post",
          "last-post",
          "person",
          "straight",
          "lengths",
          "depths",
          "number",
          "critical",
          "others",
          "below",
          "leg",
          "lift");

  /**
   * Numbers of a joint that are read in the table of fasteners, measured on the drawing, or stated
   * by a maker; and its forces, which the page of the timber that brings them works.
   */
  private static final Set<String> GIVEN_OF_JOINTS =
      Set.of(
          "gravity",
          "diameter",
          "shank",
          "yield",
          "angle",
          "square",
          "main-long",
          "side-long",
          "through",
          "tip",
          "distance",
          "full",
          "toe",
          "end-grain",
          "planes",
          "plumb",
          "push",
          "asked",
          "up",
          "dead",
          "wind",
          "own",
          "vines",
          "fewer");

  @Test
  void every_number_that_goes_in_is_found_on_the_page() {
    Voice voice = Demo.words().voice(Reader.ENGINEER, UnitSystem.IMPERIAL);
    Set<String> missing = new TreeSet<>();
    for (Proposal proposal : proposed().toList()) {
      for (String role :
          List.of(
              "crossbeam",
              "header",
              "post",
              "footing",
              "joint.crossbeam",
              "joint.header",
              "joint.rail",
              "joint.brace")) {
        List<CalculationStep> page =
            proposal.trace().stream()
                .filter(each -> CalculationWords.of(voice).works(each, role))
                .toList();
        Set<Measure> results =
            page.stream().map(CalculationStep::result).collect(Collectors.toSet());
        results.add(Measure.ratio(1));
        page.forEach(each -> listed(each).forEach(results::add));
        for (CalculationStep working : page) {
          for (Evidence.Seen seen : working.evidence().seen()) {
            if (seen instanceof Evidence.Seen.Amount amount
                && amount.measure().amount() != 0
                && !GIVEN.contains(amount.name())
                && !(role.startsWith("joint.") && GIVEN_OF_JOINTS.contains(amount.name()))
                && results.stream().noneMatch(each -> same(each, amount.measure()))) {
              missing.add(role + ": " + amount.name() + " of " + working.id());
            }
          }
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  /**
   * Numbers of a list of moments, the least pressure, what a table prints of a strength and what a
   * maker rates steel for stand on the page by themselves.
   */
  private static Stream<Measure> listed(CalculationStep working) {
    String rated = working.id().endsWith("-rated") ? "|pull-holds|side-holds" : "";
    return working.evidence().seen().stream()
        .filter(seen -> seen.name().matches("m-[a-z]|least|printed|arm-[a-z]" + rated))
        .map(seen -> ((Evidence.Seen.Amount) seen).measure());
  }

  private static boolean same(Measure one, Measure other) {
    double apart = Math.abs(Math.abs(one.amount()) - Math.abs(other.amount()));
    return one.unit() == other.unit() && apart <= 1e-6 * Math.abs(other.amount()) + 1e-6;
  }

  /** Of pieces as built: the page gave one lift as a reaction and went on with another. */
  @Test
  void what_the_header_lifts_is_what_its_footing_holds_down() {
    int compared = 0;
    for (Proposal proposal : proposed().toList()) {
      for (CalculationStep working : proposal.trace()) {
        if (working.id().equals("header.reaction") && isOf(working, "footing.uplift")) {
          assertThat(-working.result().amount())
              .as(proposal.title())
              .isCloseTo(check(proposal, working).check().demand(), within(1e-6));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(4);
  }

  private static boolean isOf(CalculationStep working, String check) {
    return working.evidence().seen().stream()
        .anyMatch(seen -> seen instanceof Evidence.Seen.Word word && word.text().equals(check));
  }

  /** What a step ends in, and the check whose demand or capacity it is. */
  private static final Map<String, Boolean> ENDS =
      Map.ofEntries(
          Map.entry("beam.bending", true),
          Map.entry("beam.seat-bending", true),
          Map.entry("beam.bending-allowed", false),
          Map.entry("beam.shear", true),
          Map.entry("beam.shear-allowed", false),
          Map.entry("beam.bearing", true),
          Map.entry("beam.bearing-allowed", false),
          Map.entry("beam.sag", true),
          Map.entry("footing.depth", true),
          Map.entry("footing.pressure", true),
          Map.entry("footing.pressure-pier", true),
          Map.entry("footing.hold", false),
          Map.entry("footing.hold-grip", false),
          Map.entry("post.combined.combined", true),
          Map.entry("post.combined.combined-both", true),
          Map.entry("footing.slide-hold", false),
          Map.entry("post.drift.sway", true),
          Map.entry("post.notch.sum", true),
          Map.entry("post.notch.sum-across", true),
          Map.entry("joint.together", true),
          Map.entry("joint.together-rated", true),
          Map.entry("joint.weight-together", true),
          Map.entry("joint.weight-rated", true),
          Map.entry("joint.force", true),
          Map.entry("joint.roll-sum", true),
          Map.entry("joint.roll-held", false),
          Map.entry("joint.roll-held-rated", false),
          Map.entry("joint.block-held", false),
          Map.entry("joint.splitting", false),
          Map.entry("joint.splitting-inside", false));

  @Test
  void what_a_step_ends_in_is_the_demand_or_the_capacity_of_its_check() {
    int compared = 0;
    for (Proposal proposal : proposed().toList()) {
      for (CalculationStep working : proposal.trace()) {
        Boolean demand = ENDS.get(working.id());
        if (demand != null) {
          Checked check = check(proposal, working);
          double amount = demand ? check.check().demand() : check.check().capacity();
          double inFeet = working.result().unit() == Unit.FOOT ? Inches.PER_FOOT : 1;
          assertThat(working.result().amount() * inFeet)
              .as(proposal.title() + ", " + working.id() + " of " + check.id())
              .isCloseTo(amount, within(1e-6 * Math.abs(amount) + 1e-9));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(400);
  }

  private static Checked check(Proposal proposal, CalculationStep working) {
    Evidence.Seen id = working.evidence().find("check").orElseThrow();
    return proposal.checks().stream()
        .filter(each -> each.id().equals(((Evidence.Seen.Word) id).text()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_last_step_is_the_stress_that_is_checked() {
    long compared =
        proposed()
            .filter(each -> step(each, "post.stress").count() > 0)
            .peek(
                each -> {
                  Checked bending =
                      each.checks().stream()
                          .filter(check -> check.id().equals("post.bending"))
                          .findFirst()
                          .orElseThrow();
                  double psi = step(each, "post.stress").findFirst().get().result().amount();
                  assertThat(bending.check().demand())
                      .as(each.title())
                      .isCloseTo(psi, within(1e-6));
                })
            .count();
    assertThat(compared).isGreaterThan(5);
  }

  @Test
  void what_a_post_is_allowed_in_bending_is_what_its_check_is_held_against() {
    proposed()
        .forEach(
            each -> {
              Checked bending =
                  each.checks().stream()
                      .filter(check -> check.id().equals("post.bending"))
                      .findFirst()
                      .orElseThrow();
              double lastingPsi =
                  step(each, "stress.bending.post").findFirst().orElseThrow().result().amount();
              assertThat(bending.check().capacity())
                  .as(each.title())
                  .isCloseTo(lastingPsi * bending.loadDurationFactor(), within(1e-6));
            });
  }

  @Test
  void an_official_finds_every_factor_area_and_height_behind_the_post() {
    // Across: a header of 34 by 7 1/4 in, three crossbeam ends of 1 1/2 by 5 1/2, a post of 5 1/2
    // by 94 1/4, a rail of 28 1/2 by 3 1/2 and four pickets of 1 1/2 by 65 1/4: 8.895 sq ft. The
    // outline is 34 in by 99 in, so 0.38 is solid, and Cf is 1.6. Along: 0.17, and Cf is 1.8.
    // Leaves: 34 by 94 1/4 in without post, rail and pickets, 15.24 sq ft; 0.6 of it is full, drag
    // 0.5. Half the wind on the pickets is on the header, half on the rail: (90.62 + 20) / 2 =
    // 55.31 in up; that is 0.1882 of it at 90.62 in and the rest at half the post. So at the top
    // (1.712 + 0.172 + 0.512) / 8.895 of 377.6 lb and 20.64 lb of edge, 122.3 lb, and along the
    // post 276.0 lb and the leaves.
    String page = why("windy-hill", Question.POST_SIZE);
    assertThat(page)
        .contains("Kz = 2.01 (z/zg)^(2/alpha) = 2.01 x (15 ft / 900 ft)^(2 / 9.5) = 0.8489")
        .contains(
            "qh = 0.00256 Kz Kzt Kd Ke V^2 = 0.00256 x 0.8489 x 1 x 0.85 x 1 x (130 mph)^2 ="
                + " 31.22 psf")
        .contains("p = qh G Cf = 31.22 psf x 0.85 x 1.6 = 42.46 psf; at least 16 psf")
        .contains("p = qh G Cf = 31.22 psf x 0.85 x 1.8 = 47.76 psf; at least 16 psf")
        .contains("F = p epsilon Ag = 42.46 psf x 0.3805 x 23.38 sq ft = 377.6 lb")
        .contains("15.24 sq ft = 142.7 lb, climbing rose in leaf")
        .contains(
            "Mg = Ft zt + Fs hp/2 = 122.3 lb x 92.37 in + 418.7 lb x 94.25 in / 2 = 31030 in-lb")
        .contains("fb = 6 M/(b d^2)");
  }

  @Test
  void what_lifts_the_top_is_told_with_its_coefficient_and_the_covered_share() {
    // Of 11.33 in from crossbeam to crossbeam 1.5 in are timber, and leaves fill 0.7 of the rest.
    assertThat(why("windy-hill", Question.CROSSBEAM_SIZE))
        .contains("kc = kt + (1 - kt) kf")
        .contains("pup = qh G CN kc = 31.22 psf x 0.85 x 1.2 x 0.7397 = 23.55 psf");
  }

  @Test
  void the_leafy_edge_of_the_top_pushes_the_post() {
    // A rose 8 in thick over the 34 in of a bay: 1.889 sq ft, 0.7 of it full, drag 0.5.
    assertThat(why("windy-hill", Question.POST_SIZE))
        .contains(
            "Fed = qh kf Cd Aed = 31.22 psf x 0.7 x 0.5 x 1.889 sq ft = 20.64 lb, climbing rose")
        .contains("Ft = F At/As + Fed");
  }

  @Test
  void footings_and_joints_are_held_against_the_lift_at_a_corner_of_the_top() {
    // ASCE 7-16 Figure 30.8-1, blocked flow, flat: a = 3 ft. On a post hang 34 in by 46.25 in, 10.9
    // sq ft, between a^2 and 4 a^2: 1.8. A crossbeam of 56 in span counts 56^2/3 = 7.3 sq ft, under
    // a^2: 3.6 over 36 of its 46.25 in, 1.8 over the rest, 3.201.
    assertThat(why("windy-hill", Question.FOOTING_DEPTH))
        .contains("pcp = qh G CNp kc = 31.22 psf x 0.85 x 1.8 x 0.7397 = 35.33 psf");
    assertThat(why("windy-hill", Question.CROSSBEAM_JOINT))
        .contains("pcj = qh G CNj kc = 31.22 psf x 0.85 x 3.201 x 0.7397 = 62.83 psf");
  }

  @Test
  void the_frost_of_an_air_freezing_index_is_worked_where_it_is_decided() {
    // Silt of 100 pcf at 15 %: L = 2160 Btu, C = 28.25; 0.7 of 1500 over 120 days is 8.75 degrees,
    // so a = (45 - 32)/8.75 = 1.486 and u = 8.75 x 28.25/2160 = 0.1144.
    assertThat(why("by freezing index", Question.FROST_DEPTH))
        .contains("L = 144 gd w = 144 x 100 pcf x 0.15 = 2160 Btu/cu ft")
        .contains("vs = n F/t = 0.7 x 1500 °F·days / 120 = 8.75 °F")
        .contains("mu = vs C/L = 8.75 °F x 28.25 Btu/cu ft·°F / 2160 Btu/cu ft = 0.1144")
        .contains("X = lambda (48 k n F/L)^0.5");
    assertThat(why("by freezing index", Question.FOOTING_DEPTH)).doesNotContain("48 k n F/L");
  }

  @Test
  void where_the_frost_sets_the_depth_of_the_footings_it_is_worked_there_too() {
    assertThat(why("hard winter", Question.FOOTING_DEPTH)).contains("X = lambda (48 k n F/L)^0.5");
  }

  @Test
  void snow_and_wind_are_cited_by_the_clause_of_their_equation() {
    Decision pressure = Demo.decision("windy-hill", Question.WIND_PRESSURE);
    assertThat(pressure.governing().source().text()).contains("26.10.2, Equation 26.10-1");
    assertThat(
            Demo.decision("heavy-snow", Question.FLAT_SNOW).reasons().stream()
                .map(each -> each.source().text()))
        .anyMatch(text -> text.contains("7.3, Equation 7.3-1"));
  }

  private static String why(String name, Question question) {
    Proposal proposal = Demo.proposal(name);
    Voice voice = Demo.words().voice(Reader.ENGINEER, UnitSystem.IMPERIAL);
    return String.join(
        "\n",
        CalculationTrace.behind(List.of(Demo.decision(name, question)), proposal, voice).stream()
            .map(CalculationWords.of(voice)::formula)
            .toList());
  }

  private static Stream<Proposal> proposed() {
    return Demo.withRare().stream().filter(Proposal::proposed);
  }

  private static Stream<CalculationStep> step(Proposal proposal, String id) {
    return proposal.trace().stream().filter(each -> each.id().equals(id));
  }
}
