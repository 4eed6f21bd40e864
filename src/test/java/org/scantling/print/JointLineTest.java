package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.tables.CalculationRow;
import org.scantling.timber.AdjustedStress;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.NotchedShear;
import org.scantling.timber.Rectangle;
import org.scantling.timber.YieldLimit;
import org.scantling.words.CalculationWords;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** Lines of joints that no site of the demo has come to what they say, too. */
class JointLineTest {
  /** A knee brace that is packed out over a post: the dowel equations with a gap. */
  private static List<FormulaLine> gap(double gapIn, double mainIn) {
    return YieldLimit.singleShear(
            Dowel.smooth(0.5, 45_000),
            DowelMember.ofWood(mainIn, DowelBearing.of(0.43, 0.5), 45),
            DowelMember.ofWood(1.5, DowelBearing.of(0.5, 0.5), 0),
            gapIn)
        .lines();
  }

  /** Lag screws whose root is thinner than 1/4 in, but that feel the grain by their name. */
  private static List<FormulaLine> thinRoot() {
    return YieldLimit.singleShear(
            new Dowel(0.3125, 0.227, 60_000),
            DowelMember.ofWood(3, DowelBearing.of(0.43, 0.3125), 90),
            DowelMember.ofWood(1.5, DowelBearing.of(0.5, 0.3125), 90))
        .lines();
  }

  private static List<FormulaLine> pastBolts(double toEndIn) {
    AdjustedStress allowable =
        new AdjustedStress(
            "Fv",
            180,
            List.of(
                new Factor("C_D", 1.25),
                new Factor("C_M", 0.97),
                new Factor("C_t", 1),
                new Factor("C_i", 0.8)));
    return NotchedShear.atFasteners(
            400, new Rectangle(1.5, 7.25), new NotchedShear.FastenerPlace(2, toEndIn), allowable)
        .lines();
  }

  private static Stream<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    for (double gapIn : new double[] {0.25, 1, 2.125}) {
      lines.addAll(gap(gapIn, 3.5));
      lines.addAll(gap(gapIn, 5.5));
    }
    lines.addAll(thinRoot());
    lines.addAll(pastBolts(12));
    lines.addAll(pastBolts(60));
    lines.addAll(byHouseRule());
    return lines.stream();
  }

  /** What blocks, and steel on rails, would tell: 280 lb and 40 lb, 900 lb held. */
  private static List<FormulaLine> byHouseRule() {
    Measure pull = Measure.pounds(900);
    Measure side = Measure.pounds(600);
    return List.of(
        FormulaLine.of("block-held", Measure.inchPounds(900 * 2.75))
            .with("pull-holds", pull)
            .with("lever", Measure.inches(2.75)),
        FormulaLine.of("roll-held-middle", Measure.inchPounds(900 * 0.75))
            .with("pull-holds", pull)
            .with("breadth", Measure.inches(1.5)),
        FormulaLine.of("roll-held-rated", Measure.inchPounds(900 / 2.0 * 1.5))
            .with("pull-holds", pull)
            .with("count", Measure.count(2))
            .with("fewer", Measure.count(1))
            .with("breadth", Measure.inches(1.5)),
        weight("weight-rated", pull, side),
        weight("weight-together", side, side));
  }

  private static FormulaLine weight(String id, Measure pull, Measure side) {
    return FormulaLine.of(id, Measure.pounds(280 + 40 * pull.amount() / side.amount()))
        .with("lift", Measure.pounds(280))
        .with("push", Measure.pounds(40))
        .with("pull-holds", pull)
        .with("side-holds", side);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void they_come_to_what_they_say(UnitSystem units) {
    Voice voice = Demo.words().voice(Reader.ENGINEER, units);
    List<String> formulas =
        lines().map(line -> CalculationWords.of(voice).formula(step("joint.", line))).toList();
    assertThat(formulas).hasSizeGreaterThan(80);
    assertThat(formulas.stream().map(CalculationTraceTest::wrong).flatMap(Optional::stream))
        .isEmpty();
    String stocky =
        CalculationWords.of(voice)
            .formula(
                step(
                    "post.notch.",
                    BeamLoading.CANTILEVER_TIP_POINT.effective(20, 5.5).lines().get(0)));
    assertThat(CalculationTraceTest.wrong(stocky)).isEmpty();
  }

  @Test
  void no_row_of_a_joint_is_left_without_a_line() {
    Set<String> told =
        Stream.concat(
                Demo.withRare().stream()
                    .flatMap(each -> each.trace().stream())
                    .map(CalculationStep::id),
                lines().map(line -> "joint." + line.id()))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> rows =
        Demo.tables().workings().rows().stream()
            .map(CalculationRow::id)
            .filter(id -> id.startsWith("joint."))
            .collect(Collectors.toCollection(TreeSet::new));
    rows.removeAll(told);
    assertThat(rows).isEmpty();
  }

  private static CalculationStep step(String prefix, FormulaLine line) {
    Evidence evidence = Evidence.none();
    for (FormulaLine.Operand each : line.operands()) {
      evidence = evidence.and(each.name(), each.measure());
    }
    String id = prefix + line.id();
    return new CalculationStep(
        id, line.result(), evidence, Demo.tables().workings().row(id).source());
  }
}
