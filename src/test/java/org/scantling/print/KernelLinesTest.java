package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.words.CalculationWords;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** What a kernel tells is what it worked: nothing is worked a second time for the page. */
class KernelLinesTest {
  static Stream<Kernel> kernels() {
    return Kernels.all();
  }

  @ParameterizedTest
  @MethodSource("kernels")
  void the_number_that_is_used_and_the_line_that_is_told_move_together(Kernel kernel) {
    for (Kernel each : withNudged(kernel)) {
      double used = each.usedNumber();
      assertThat(each.told().result().amount())
          .as(each.name())
          .isCloseTo(used, within(1e-12 * Math.abs(used)));
    }
  }

  @ParameterizedTest
  @MethodSource("kernels")
  void whatever_moves_the_number_moves_a_number_on_the_page(Kernel kernel) {
    int moved = 0;
    for (Kernel each : kernel.eachNudged()) {
      double apart = Math.abs(each.usedNumber() - kernel.usedNumber());
      if (apart > 1e-9 * Math.abs(kernel.usedNumber())) {
        assertThat(operands(each)).as(each.name()).isNotEqualTo(operands(kernel));
        moved++;
      }
    }
    boolean flat = kernel.line().equals("hill") && kernel.usedNumber() == 1;
    assertThat(moved > 0).as(kernel.name()).isNotEqualTo(flat);
  }

  @ParameterizedTest
  @MethodSource("kernels")
  void every_line_comes_to_its_result_on_a_calculator(Kernel kernel) {
    for (UnitSystem units : UnitSystem.values()) {
      Voice voice = Demo.words().voice(Reader.ENGINEER, units);
      for (Kernel each : withNudged(kernel)) {
        List<String> formulas = each.lines().stream().map(line -> told(each, line, voice)).toList();
        assertThat(
                formulas.stream().flatMap(formula -> CalculationTraceTest.wrong(formula).stream()))
            .as(each.name())
            .isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("kernels")
  void a_line_is_told_once_and_has_a_row_of_its_own(Kernel kernel) {
    List<String> ids = kernel.lines().stream().map(FormulaLine::id).toList();
    assertThat(ids).doesNotHaveDuplicates();
    for (FormulaLine line : kernel.lines()) {
      String id = kernel.prefix() + kernel.row().apply(line).id();
      assertThat(Demo.tables().workings().row(id).formula()).as(id).contains("{result}");
    }
  }

  private static String told(Kernel kernel, FormulaLine line, Voice voice) {
    FormulaLine row = kernel.row().apply(line);
    String id = kernel.prefix() + row.id();
    Evidence evidence = WORDS;
    for (FormulaLine.Operand each : row.operands()) {
      evidence = evidence.and(each.name(), each.measure());
    }
    if (line.id().equals("height-factor")) {
      evidence = evidence.and("exposure", "C");
    }
    if (row.operands().stream().anyMatch(each -> each.name().equals("own"))) {
      evidence = evidence.and("c", "");
    }
    return CalculationWords.of(voice)
        .formula(
            new CalculationStep(
                id, row.result(), evidence, Demo.tables().workings().row(id).source()));
  }

  private static final Evidence WORDS =
      Evidence.saw("vine", "grape").and("season", "in leaf").and("flow", "clear");

  private static List<FormulaLine.Operand> operands(Kernel kernel) {
    List<FormulaLine.Operand> operands = new ArrayList<>();
    kernel.lines().forEach(line -> operands.addAll(line.operands()));
    return operands;
  }

  private static List<Kernel> withNudged(Kernel kernel) {
    List<Kernel> all = new ArrayList<>(kernel.eachNudged());
    all.add(kernel);
    return all;
  }
}
