package org.scantling.spans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.scantling.confirm.Material;
import org.scantling.confirm.Materials;
import org.scantling.confirm.Service;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.tables.Tables;

/** How far sizes reach, worked by hand or from one cell to the next. */
class SpanTablesTest {
  private static final TimberGrade PINE = new TimberGrade("southern-pine", "No.2");
  private static final Service WET = new Service(true, false, 1);

  private final Tables tables = Tables.load();

  private static Assumptions assumed(Assumptions.Beam beam, Assumptions.Post post) {
    return new Assumptions(
        new Assumptions.Loads(10, 20, 1.25, 0, false),
        new Assumptions.Sag(OptionalDouble.of(240), OptionalDouble.empty(), 2),
        new Assumptions.Use(true, false, 1),
        beam,
        post);
  }

  private static Assumptions.Beam beam(double notchIn, double supportIn) {
    return new Assumptions.Beam(notchIn, supportIn, true, 1, false, false);
  }

  private static final Assumptions.Post FREE = new Assumptions.Post(false, 1.0 / 6, 0);

  private TimberSize size(String name, int plies) {
    return new TimberSize(name, plies, tables.size(name.substring(name.indexOf('-') + 1)));
  }

  private SpanRow beam(Role role, TimberSize size, double stepIn, Assumptions assumed) {
    return only(new SpanRequest(role, List.of(size), inches(stepIn), List.of(PINE), assumed));
  }

  private SpanRow only(SpanRequest request) {
    List<SpanRow> rows = new SpanTables(tables).of(request).rows();
    assertThat(rows).hasSize(1);
    return rows.get(0);
  }

  private static List<Measure> inches(double amount) {
    return List.of(Measure.inches(amount));
  }

  private static double reach(SpanRow row) {
    return row.reach().orElseThrow().amount();
  }

  @Test
  void a_crossbeam_reaches_as_far_as_its_bending_strength() {
    SpanRow row = beam(Role.CROSSBEAMS, size("2x12", 1), 24, assumed(beam(0, 0), FREE));
    // Fb' = 750 · 1.25 psi, S = 31.64 in³, w = 5 lb/in: √(8 · 937.5 · 31.640625/5)
    assertThat(reach(row)).isCloseTo(217.86, within(0.01));
    assertThat(row.stop().id()).isEqualTo("crossbeam.bending");
  }

  @Test
  void a_light_load_leaves_it_to_the_sag() {
    SpanRow row = beam(Role.CROSSBEAMS, size("2x4", 1), 12, assumed(beam(0, 0), FREE));
    // E' = 1.4e6 · 0.9, I = 5.3594, live 1.6667 lb/in: cube root of 384 E I/(5 · 1.6667 · 240)
    assertThat(reach(row)).isCloseTo(109.04, within(0.01));
    assertThat(row.stop().id()).isEqualTo("crossbeam.deflection-live");
  }

  @Test
  void the_clear_span_is_the_span_between_the_faces_of_the_supports() {
    double centres = reach(beam(Role.CROSSBEAMS, size("2x4", 1), 12, assumed(beam(0, 0), FREE)));
    double clear = reach(beam(Role.CROSSBEAMS, size("2x4", 1), 12, assumed(beam(0, 3.5), FREE)));
    assertThat(clear).isCloseTo(centres - 3.5, within(0.001));
  }

  @Test
  void the_span_that_is_printed_passes_and_a_little_more_does_not() {
    Assumptions assumed = assumed(beam(0, 0), FREE);
    Material material =
        new Materials(tables)
            .find(tables.size("2x8"), 1, "southern-pine", "No.2", WET)
            .orElseThrow();
    double reach = reach(beam(Role.CROSSBEAMS, size("2x8", 1), 16, assumed));
    SpanLimits limits = new SpanLimits(tables, assumed);
    BeamTrial trial =
        new BeamTrial(tables, Role.CROSSBEAMS, material.weightless(), 16, assumed, limits.limits());
    assertThat(trial.apply(reach).stream().filter(limits::counts))
        .allMatch(each -> each.check().passes());
    assertThat(trial.apply(reach + 0.001).stream().filter(limits::counts))
        .anyMatch(each -> !each.check().passes());
  }

  @Test
  void boards_apart_carry_alone_and_boards_together_share() {
    Assumptions together = assumed(beam(0, 0), FREE);
    Assumptions apart = assumed(new Assumptions.Beam(0, 0, true, 1, false, true), FREE);
    double pair = reach(beam(Role.HEADERS, size("2-2x8", 2), 60, together));
    double half = reach(beam(Role.HEADERS, size("2x8", 1), 30, together));
    assertThat(pair).isCloseTo(half, within(0.001));
    assertThat(reach(beam(Role.HEADERS, size("2-2x8", 2), 60, apart)))
        .isCloseTo(reach(beam(Role.HEADERS, size("2x8", 1), 60, together)), within(0.001));
  }

  @Test
  void a_notch_deeper_than_the_standard_lets_cut_has_no_span() {
    SpanRow row = beam(Role.CROSSBEAMS, size("2x4", 1), 16, assumed(beam(1, 0), FREE));
    assertThat(row.reach()).isEmpty();
    assertThat(row.stop().id()).isEqualTo("notch.end-depth-share");
    assertThat(beam(Role.CROSSBEAMS, size("2x6", 1), 16, assumed(beam(1, 0), FREE)).reach())
        .isPresent();
  }

  @Test
  void a_grade_that_the_standard_does_not_have_in_that_size_has_no_span() {
    SpanRow row =
        only(
            new SpanRequest(
                Role.HEADERS,
                List.of(size("6x6", 1)),
                inches(36),
                List.of(new TimberGrade("southern-pine", "No.3")),
                assumed(beam(0, 0), FREE)));
    assertThat(row.reach()).isEmpty();
    assertThat(row.stop().id()).isEqualTo(SpanTables.NO_VALUES);
    assertThat(row.stop().source()).isEmpty();
  }

  @Test
  void a_free_post_ends_at_the_slenderness_of_the_standard() {
    SpanRow row = post(FREE, new Measure(20, Unit.SQUARE_FOOT));
    // 2.1 · h/3.5 = 50
    assertThat(reach(row)).isCloseTo(50 * 3.5 / 2.1, within(0.001));
    assertThat(row.stop().id()).isEqualTo("post.slenderness");
  }

  @Test
  void a_post_of_that_height_carries_that_area() {
    Assumptions.Post held = new Assumptions.Post(true, 1.0 / 6, 0);
    SpanRow byArea = post(held, new Measure(70, Unit.SQUARE_FOOT));
    SpanRow byHeight = post(held, Measure.inches(reach(byArea)));
    assertThat(byArea.stop().id()).isEqualTo("post.combined");
    assertThat(byHeight.reach().orElseThrow().unit()).isEqualTo(Unit.SQUARE_FOOT);
    assertThat(reach(byHeight)).isCloseTo(70, within(0.01));
  }

  @Test
  void wind_on_its_top_makes_a_post_shorter() {
    double still = reach(post(FREE, new Measure(60, Unit.SQUARE_FOOT)));
    double blown =
        reach(post(new Assumptions.Post(false, 1.0 / 6, 200), new Measure(60, Unit.SQUARE_FOOT)));
    assertThat(blown).isLessThan(still);
  }

  private SpanRow post(Assumptions.Post post, Measure step) {
    return only(
        new SpanRequest(
            Role.POSTS,
            List.of(size("4x4", 1)),
            List.of(step),
            List.of(PINE),
            assumed(beam(0, 0), post)));
  }
}
