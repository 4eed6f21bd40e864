package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Working;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** What an engineer reads of the loads can be gone over with a pocket calculator. */
class WorkingsTest {
  /** Four figures of each of some six numbers, one of them squared. */
  private static final double ROUNDED = 0.004;

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void every_step_of_every_site_comes_to_what_it_says(UnitSystem units) {
    Voice voice = Demo.words().voice(Reader.ENGINEER, units);
    List<Working> workings = proposed().flatMap(each -> each.workings().stream()).toList();
    assertThat(workings).hasSizeGreaterThan(300);
    for (Working working : workings) {
      String formula = voice.formula(working);
      String[] sides = formula.split("[,;:]")[0].split(" = ");
      assertThat(sides).as(formula).hasSizeGreaterThan(2);
      double worked = ByHand.work(sides[sides.length - 2]);
      double said = ByHand.work(sides[sides.length - 1].replace(" on the whole outline", ""));
      assertThat(said).as(formula).isCloseTo(worked, within(Math.abs(worked) * ROUNDED + 1e-9));
    }
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
    String page = why("windy-hill", Question.POST_SIZE);
    assertThat(page)
        .contains("Kz = 2.01 (z/zg)^(2/a) = 2.01 x (15 ft / 900 ft)^(2 / 9.5) = 0.8489")
        .contains(
            "q = 0.00256 Kz Kzt Kd Ke V^2 = 0.00256 x 0.8489 x 1 x 0.85 x 1 x (130 mph)^2 ="
                + " 31.22 psf")
        .contains("p = q G Cf = 31.22 psf x 0.85 x 1.8 = 47.76 psf, not under 16 psf")
        .contains("23.12 sq ft = 180.4 lb, clematis in leaf")
        .contains("M = Ft z + Fs h/2 = 119.2 lb x 88.66 in + 445.7 lb x 91.75 in / 2 = 31010 in-lb")
        .contains("fb = 6 Mmax/(b d^2)");
  }

  @Test
  void what_lifts_the_top_is_told_with_its_coefficient_and_the_covered_share() {
    assertThat(why("windy-hill", Question.CROSSBEAM_SIZE))
        .contains("c = s + (1 - s) f")
        .contains("pu = q G CN c = 31.22 psf x 0.85 x 1.2 x 0.6533 = 20.8 psf");
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
        Workings.behind(List.of(Demo.decision(name, question)), proposal, voice).stream()
            .map(voice::formula)
            .toList());
  }

  private static Stream<Proposal> proposed() {
    return Demo.all().values().stream().filter(Proposal::proposed);
  }

  private static Stream<Working> step(Proposal proposal, String id) {
    return proposal.workings().stream().filter(each -> each.id().equals(id));
  }
}
