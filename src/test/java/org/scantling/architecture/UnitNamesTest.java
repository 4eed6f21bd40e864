package org.scantling.architecture;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A bare number says its unit in its name, or that it has none. */
class UnitNamesTest {
  private static final Pattern UNIT =
      Pattern.compile(
          ".*(In|In2|In3|In4|Ft|Lb|LbPerIn|LbPerIn3|InLb|InLbPerRad|Rad|Psi|Psf|PsfPerFt|Pcf|Mph|F|FDays"
              + "|Days|Minutes|Degrees|Percent|BtuPerFtHF|Px|Pt)");
  private static final Pattern WITHOUT_UNIT =
      Pattern.compile(
          "ratio|factor|.*(Ratio|Factor|Count|Exponent|Divisor|Term|Reserve|Depths|Diameters)");

  /** What else is named otherwise, and why that is right. */
  private static final Map<String, String> EXCEPTIONS =
      Map.ofEntries(
          entry("confirm.WindOnWalk$Sides.pickets", "a count that reads as one"),
          entry("cutting.LeastLoss$1At.loss", "in the unit of the costs, whatever that is"),
          entry("cutting.LossSearch$Found.leastLoss", "in the unit of the costs, whatever that is"),
          entry("intake.Bounds$Range.high", "in the unit of the field it bounds"),
          entry("intake.Bounds$Range.low", "in the unit of the field it bounds"),
          entry("mechanics.ElementEnds.shearFlexibility", "a share of the bending flexibility"),
          entry("mechanics.Peak.amount", "moment, shear or deflection: the name of the field says"),
          entry("quantity.Check.capacity", "in the unit of the demand"),
          entry("quantity.Check.demand", "in the unit of the capacity"),
          entry("quantity.Measure.amount", "its unit stands beside it"),
          entry("quantity.WrittenUnits$Scale.offset", "in the unit it leads to"),
          entry("reasons.Answer.number", "in the unit of the question"),
          entry("reasons.BaseGap.amount", "its unit stands beside it"),
          entry("reasons.BaseGap.thanAmount", "its unit stands beside it"),
          entry("reasons.BeamDiagram$At.amount", "shear or moment: the diagram says which"),
          entry("reasons.Finding$AtLeast.number", "in the unit of the question"),
          entry("reasons.Finding$AtMost.number", "in the unit of the question"),
          entry("reasons.Finding$PreferNumber.number", "in the unit of the question"),
          entry("reasons.Given.number", "in the unit of the demand"),
          entry("reasons.Proven.number", "in the unit of the question"),
          entry("reasons.Worked.number", "in the unit of the question"),
          entry("tables.OptionCountRow.step", "in the unit of what its row counts"),
          entry("tables.NearMissRow.from", "in the unit of what its row gains"),
          entry("tables.NearMissRow.gain", "in the unit of what its row gains"),
          entry("tables.OptionCountRow.worth", "in the unit of what its row counts"),
          entry("shop.BuyingLine$Quantity.amount", "its unit stands beside it"),
          entry("shop.Task$Part.amount", "its unit stands in its row"),
          entry("timber.Factor.value", "the factor itself"),
          entry("timber.GroupAction.m", "the symbol of NDS 11.3.6"),
          entry("timber.GroupAction.u", "the symbol of NDS 11.3.6"),
          entry("timber.GroupAction.value", "the factor itself"),
          entry("timber.Hankinson.across", "in any unit of strength"),
          entry("timber.Hankinson.along", "in any unit of strength"),
          entry("timber.Hankinson.value", "in the unit of both"),
          entry("timber.YieldEquations.k1", "the symbol of NDS Table 12.3.1A"),
          entry("timber.YieldEquations.k2", "the symbol of NDS Table 12.3.1A"),
          entry("timber.YieldEquations.k3", "the symbol of NDS Table 12.3.1A"));

  @Test
  void every_bare_number_of_a_record_says_its_unit() {
    assertThat(
            names(each -> !says(each.getName())).stream()
                .filter(name -> !EXCEPTIONS.containsKey(name)))
        .isEmpty();
  }

  @Test
  void every_exception_is_still_one() {
    assertThat(names(each -> !says(each.getName()))).containsAll(EXCEPTIONS.keySet());
  }

  @Test
  void there_are_numbers_to_look_at() {
    assertThat(names(each -> true)).hasSizeGreaterThan(300);
  }

  private static boolean says(String name) {
    return UNIT.matcher(name).matches() || WITHOUT_UNIT.matcher(name).matches();
  }

  private static Set<String> names(Predicate<RecordComponent> wanted) {
    return records()
        .flatMap(each -> Arrays.stream(each.getRecordComponents()))
        .filter(each -> each.getType() == double.class)
        .filter(wanted)
        .map(each -> each.getDeclaringRecord().getName() + "." + each.getName())
        .map(name -> name.substring(Imported.ROOT.length() + 1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Class<?> type(JavaClass each) {
    return each.reflect();
  }

  private static Stream<Class<?>> records() {
    return Imported.CLASSES.stream()
        .filter(each -> !each.getPackageName().startsWith(Imported.RULES))
        .filter(JavaClass::isRecord)
        .map(UnitNamesTest::type);
  }
}
