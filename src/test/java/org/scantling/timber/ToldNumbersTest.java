package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;

/**
 * What a kernel tells is what it worked: where any number that goes in is moved a little, the
 * number that is used and the line that tells it move together, and some line shows what was moved.
 */
class ToldNumbersTest {
  private static final double LITTLE = 1 + 1e-3;

  /**
   * A kernel with numbers that go in.
   *
   * @param used the numbers of the result that checks and other kernels take
   */
  private record Kernel<T extends Calculated>(
      String name, List<Double> inputs, Function<Inputs, T> make, Function<T, List<Double>> used) {

    Told told(List<Double> with) {
      T result = make.apply(new Inputs(with));
      return new Told(result.getClass(), used.apply(result), result.lines());
    }

    List<Double> nudged(int which) {
      List<Double> other = new ArrayList<>(inputs);
      other.set(which, other.get(which) * LITTLE);
      return other;
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private record Inputs(List<Double> all) {
    double at(int index) {
      return all.get(index);
    }
  }

  private record Told(Class<?> kind, List<Double> used, List<FormulaLine> lines) {
    List<Double> results() {
      return lines.stream().map(line -> line.result().amount()).toList();
    }
  }

  private static <T extends Calculated> Kernel<T> kernel(
      String name, List<Double> inputs, Function<Inputs, T> make, Function<T, List<Double>> used) {
    return new Kernel<>(name, inputs, make, used);
  }

  private static AdjustedStress stress(double psi, double wet, double duration) {
    return new AdjustedStress(
        "Fb", psi, List.of(new Factor("C_D", duration), new Factor("C_M", wet)));
  }

  /** Adjusted values of bending, compression and E min, each with its factors. */
  private static AdjustedValues values(double fb, double fc, double minimum, double duration) {
    return AdjustedValues.of(
        new DesignValues(fb, 575, 180, 625, fc, 1.6e6, minimum, 0.5),
        Adjustments.none().lasting(duration).wet(Sample.WET));
  }

  private static BeamStability rolling(double length, double depth, double minimum) {
    return BeamStability.of(
        new Rectangle(1.5, depth),
        BeamLoading.UNIFORM.effective(length, depth),
        values(900, 1350, minimum, 1.15));
  }

  private static Column column(double load, double endFactor, double height) {
    return Column.of(
        load,
        Sample.FOUR_BY_FOUR,
        new Column.Bracing(new BucklingLength(endFactor, height), 0.8),
        values(900, 1350, 580_000, 1.15));
  }

  private static Bending bent(double moment, Rectangle section) {
    return Bending.of(moment, section, stress(900, 0.85, 1.6));
  }

  private static BentAxis axis(double moment, double eccentricity) {
    return new BentAxis(bent(moment, Sample.FOUR_BY_FOUR), 3.5, eccentricity);
  }

  private static CombinedStress combined(Inputs in, double cross, double crossOff, boolean cut) {
    BeamStability stability =
        BeamStability.of(
            Sample.FOUR_BY_FOUR,
            BeamLoading.OTHER.effective(90, 3.5),
            values(900, 1350, in.at(3), 1.15));
    Column column = column(in.at(0), 2.1, 60);
    BentAxis edgewise = axis(in.at(1), in.at(2));
    return cut
        ? CombinedStress.atCut(column, in.at(4), edgewise, axis(0, crossOff), stability)
        : CombinedStress.of(column, edgewise, axis(cross, 0), stability);
  }

  private static DowelMember member(double length, double gravity, double diameter, double angle) {
    return DowelMember.ofWood(length, DowelBearing.of(gravity, diameter), angle);
  }

  private static List<Double> modes(LateralValue value) {
    Collection<Double> modes = value.modesLb().values();
    assertThat(modes).contains(value.valueLb());
    return List.copyOf(modes);
  }

  /** Main piece, side piece, shank, Fyb, in that order. */
  private static LateralValue single(Inputs in, double gap) {
    return YieldLimit.singleShear(
        new Dowel(0.625, in.at(4), in.at(5)),
        new DowelMember(in.at(0), in.at(1), 90),
        new DowelMember(in.at(2), in.at(3), 0),
        gap);
  }

  private static final List<Double> TWO_PIECES = List.of(3.5, 3150.0, 1.5, 5600.0, 0.5, 45000.0);

  static Stream<Kernel<?>> kernels() {
    return Stream.of(members(), posts(), fasteners(), joints()).flatMap(List::stream);
  }

  private static List<Kernel<?>> members() {
    return List.of(
        kernel(
            "adjusted stress",
            List.of(900.0, 0.85, 1.15),
            in -> stress(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.psi())),
        kernel(
            "effective length",
            List.of(90.0, 5.5),
            in -> BeamLoading.UNIFORM.effective(in.at(0), in.at(1)),
            each -> List.of(each.lengthIn())),
        kernel(
            "effective length of a stocky beam",
            List.of(20.0),
            in -> BeamLoading.CANTILEVER_TIP_POINT.effective(in.at(0), 5.5),
            each -> List.of(each.lengthIn())),
        kernel(
            "beam stability",
            List.of(120.0, 9.25, 580_000.0),
            in -> rolling(in.at(0), in.at(1), in.at(2)),
            each ->
                List.of(each.effectiveLengthIn(), each.slendernessRatio(), each.stabilityFactor())),
        kernel(
            "beam stability by its bending value",
            List.of(900.0, 1.15),
            in ->
                BeamStability.of(
                    Sample.TWO_BY_SIX,
                    BeamLoading.UNIFORM.effective(120, 5.5),
                    values(in.at(0), 1350, 580_000, in.at(1))),
            each -> List.of(each.criticalRatio(), each.stabilityFactor())),
        kernel(
            "bending",
            List.of(6000.0, 1.5, 5.5, 900.0, 0.85, 1.6),
            in ->
                Bending.of(
                    in.at(0),
                    new Rectangle(in.at(1), in.at(2)),
                    stress(in.at(3), in.at(4), in.at(5))),
            each -> List.of(each.check().demand(), each.check().capacity())),
        kernel(
            "shear",
            List.of(500.0, 1.5, 5.5, 180.0, 0.97, 1.25),
            in ->
                Shear.of(
                    in.at(0),
                    new Rectangle(in.at(1), in.at(2)),
                    stress(in.at(3), in.at(4), in.at(5))),
            each -> List.of(each.check().demand(), each.check().capacity())),
        kernel(
            "notched shear",
            List.of(1.5, 7.25, 1.5, 180.0),
            in ->
                NotchedShear.onTensionFace(
                    500,
                    new Rectangle(in.at(0), in.at(1)),
                    new EndNotch(in.at(2), 0),
                    stress(in.at(3), 1, 1)),
            each -> List.of(each.check().capacity())),
        kernel(
            "shear past bolts near an end",
            List.of(1.5, 7.25, 2.0, 180.0, 0.97, 1.25),
            in -> past(in, 4),
            each -> List.of(each.allowable().psi(), each.check().capacity())),
        kernel(
            "shear past bolts far from an end",
            List.of(1.5, 7.25, 2.0, 180.0, 0.97, 1.25),
            in -> past(in, 60),
            each -> List.of(each.allowable().psi(), each.check().capacity())),
        kernel(
            "seat",
            List.of(1.5),
            in -> new Seat(3.5, in.at(0), 12),
            each -> List.of(each.bearingFactor())),
        kernel(
            "bearing",
            List.of(1000.0, 3.5, 1.5, 625.0, 0.67),
            in ->
                Bearing.across(
                    in.at(0), new Seat(in.at(1), in.at(2), 12), stress(in.at(3), in.at(4), 1)),
            each -> List.of(each.check().demand(), each.check().capacity())),
        kernel(
            "deflection",
            List.of(0.2, 0.1, 2.0),
            in -> new Deflection(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.totalIn())));
  }

  private static NotchedShear past(Inputs in, double toEndIn) {
    return NotchedShear.atFasteners(
        500,
        new Rectangle(in.at(0), in.at(1)),
        new NotchedShear.FastenerPlace(in.at(2), toEndIn),
        stress(in.at(3), in.at(4), in.at(5)));
  }

  private static List<Kernel<?>> posts() {
    return List.of(
        kernel(
            "buckling length",
            List.of(2.1, 90.0),
            in -> new BucklingLength(in.at(0), in.at(1)),
            each -> List.of(each.lengthIn())),
        kernel(
            "column stability",
            List.of(2.1, 60.0, 3.5, 1350.0, 580_000.0, 1.15, 0.8),
            in ->
                ColumnStability.of(
                    new BucklingLength(in.at(0), in.at(1)),
                    in.at(2),
                    values(900, in.at(3), in.at(4), in.at(5)),
                    in.at(6)),
            each ->
                List.of(
                    each.effectiveLengthIn(),
                    each.criticalStressPsi(),
                    each.startStressPsi(),
                    each.stabilityFactor())),
        kernel(
            "column",
            List.of(2000.0, 2.1, 60.0),
            in -> column(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.check().demand(), each.check().capacity())),
        kernel(
            "pressure and bending",
            List.of(2000.0, 3000.0, 0.6),
            in -> combined(new Inputs(more(in.all(), 580_000.0)), 0, 0, false),
            each -> List.of(each.check().demand())),
        kernel(
            "pressure and bending both ways",
            List.of(2000.0, 3000.0, 0.6, 580_000.0),
            in -> combined(in, 900, 0, false),
            each -> List.of(each.check().demand())),
        kernel(
            "pressure and bending at a cut",
            List.of(2000.0, 3000.0, 0.6),
            in -> combined(new Inputs(more(more(in.all(), 580_000.0), 8)), 0, 0, true),
            each -> List.of(each.bowingRatio(), each.check().demand())),
        kernel(
            "pressure at a cut off the middle both ways",
            List.of(2000.0, 3000.0, 0.6, 580_000.0, 8.0),
            in -> combined(in, 0, 0.5, true),
            each -> List.of(each.bowingRatio(), each.check().demand())));
  }

  private static List<Double> more(List<Double> inputs, double one) {
    List<Double> longer = new ArrayList<>(inputs);
    longer.add(one);
    return longer;
  }

  private static List<Kernel<?>> fasteners() {
    return List.of(
        kernel("single shear", TWO_PIECES, in -> single(in, 0), ToldNumbersTest::modes),
        kernel(
            "single shear across a gap",
            more(TWO_PIECES, 0.5),
            in -> single(in, in.at(6)),
            ToldNumbersTest::modes),
        kernel(
            "double shear",
            TWO_PIECES,
            in ->
                YieldLimit.doubleShear(
                    new Dowel(0.625, in.at(4), in.at(5)),
                    new DowelMember(in.at(0), in.at(1), 0),
                    new DowelMember(in.at(2), in.at(3), 90)),
            ToldNumbersTest::modes),
        kernel(
            "reduction of a thin shank",
            List.of(0.196),
            in ->
                YieldReduction.of(
                    new Dowel(0.242, in.at(0), 70_000),
                    new DowelMember(2, 2550, 90),
                    new DowelMember(1, 2550, 90)),
            each -> List.of(each.crushFactor())),
        kernel(
            "reduction of a thick shank",
            List.of(45.0),
            in ->
                YieldReduction.of(
                    new Dowel(0.5, 0.5, 45_000),
                    new DowelMember(2, 4000, in.at(0)),
                    new DowelMember(1, 4000, 0)),
            each -> List.of(each.crushFactor(), each.tiltFactor(), each.bendFactor())),
        kernel(
            "dowel bearing of a thin fastener",
            List.of(0.5),
            in -> member(2, in.at(0), 0.162, 90),
            each -> List.of()),
        kernel(
            "dowel bearing at a slant",
            List.of(0.5, 0.5, 45.0),
            in -> member(2, in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.bearingPsi())),
        kernel(
            "withdrawal of a nail",
            List.of(0.5, 0.162, 1.86),
            in -> Withdrawal.ofNail(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.perInchLb(), each.unadjusted().lb())),
        kernel(
            "withdrawal of a lag screw",
            List.of(0.5, 0.375, 3.0),
            in -> Withdrawal.ofLag(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.perInchLb(), each.unadjusted().lb())),
        kernel(
            "withdrawal of a wood screw",
            List.of(0.5, 0.242, 2.0),
            in -> Withdrawal.ofWoodScrew(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.perInchLb(), each.unadjusted().lb())),
        kernel(
            "toe-nail",
            List.of(3.5),
            in -> new ToeNail(in.at(0)),
            each -> List.of(each.sideIn(), each.penetrationIn())),
        kernel(
            "depth of a lag screw",
            List.of(8.0, 3.5, 0.22),
            in -> new LagDepth(in.at(0), in.at(1), in.at(2)),
            each -> List.of(each.intoIn())));
  }

  private static List<Kernel<?>> joints() {
    return List.of(
        kernel(
            "adjusted force",
            List.of(480.0, 1.6, 0.7, 0.9857, 0.7143),
            in -> force(in),
            each -> List.of(each.lb())),
        kernel(
            "connection",
            List.of(480.0, 1.6, 0.7, 0.9857, 0.7143),
            in -> new Connection(100, force(in), 2),
            each -> List.of(each.single().lb(), each.check().capacity())),
        kernel(
            "stretch",
            List.of(1.6e6, 0.9, 1.5, 5.5),
            in -> stretch(in.at(0), in.at(1), in.at(2), in.at(3)),
            each -> List.of(each.modulus().psi(), each.lb())),
        kernel(
            "group action",
            List.of(3.25, 0.5, 1.6e7, 6e6),
            in -> GroupAction.of(GroupAction.Row.inWood(2, in.at(0), in.at(1)), in.at(2), in.at(3)),
            each -> List.of(each.m(), each.stiffnessRatio(), each.asFactor().value())),
        kernel(
            "placement",
            List.of(2.5, 7.0, 0.5),
            in -> new PlacementRule("end distance", 3.5, in.at(1)).at(in.at(0), in.at(2)),
            each -> List.of(each.factor())),
        kernel(
            "geometry factor",
            List.of(2.5, 0.5),
            in ->
                new GeometryFactor(
                    List.of(
                        new PlacementRule("edge", 1.5, 1.5).at(2, in.at(1)),
                        new PlacementRule("end distance", 3.5, 7).at(in.at(0), in.at(1)))),
            each -> List.of(each.value(), each.asFactor().value())));
  }

  private static AdjustedForce force(Inputs in) {
    return new AdjustedForce("Z", in.at(0), List.of())
        .with(new Factor("C_D", in.at(1)))
        .with(new Factor("C_M", in.at(2)))
        .with(new Factor("C_g", in.at(3)))
        .with(new Factor("C_delta", in.at(4)));
  }

  private static AxialStiffness stretch(double psi, double wet, double breadth, double depth) {
    AdjustedStress modulus = new AdjustedStress("E", psi, List.of(new Factor("C_M", wet)));
    return new AxialStiffness(modulus, breadth, depth);
  }

  @ParameterizedTest
  @MethodSource("kernels")
  void the_number_that_is_used_and_the_number_that_is_told_move_together(Kernel<?> kernel) {
    Told base = kernel.told(kernel.inputs());
    assertThat(base.results()).as("told").containsAll(base.used());
    assertThat(base.lines()).isNotEmpty();
    for (int which = 0; which < kernel.inputs().size(); which++) {
      Told moved = kernel.told(kernel.nudged(which));
      assertThat(moved.results()).as("told, input " + which).containsAll(moved.used());
      assertThat(moved.lines())
          .as("input " + which + " is told by some line")
          .isNotEqualTo(base.lines());
    }
  }

  /** But for what the table rounds, no number that goes in may be lost on the way to the last. */
  @ParameterizedTest
  @MethodSource("kernels")
  void every_number_that_goes_in_moves_the_result(Kernel<?> kernel) {
    Told base = kernel.told(kernel.inputs());
    for (int which = 0; which < kernel.inputs().size(); which++) {
      Told moved = kernel.told(kernel.nudged(which));
      assertThat(moved.results()).as("input " + which).isNotEqualTo(base.results());
    }
  }

  @Test
  void every_kernel_that_tells_its_lines_is_among_those_that_are_nudged() throws IOException {
    Set<String> told = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("target/classes/org/scantling/timber"))) {
      files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.matches("\\w+\\.class"))
          .map(file -> file.substring(0, file.length() - ".class".length()))
          .filter(ToldNumbersTest::tells)
          .forEach(told::add);
    }
    Set<String> nudged = new TreeSet<>();
    kernels().forEach(each -> nudged.add(each.told(each.inputs()).kind().getSimpleName()));
    assertThat(told).isEqualTo(nudged).hasSizeGreaterThan(20);
  }

  private static boolean tells(String name) {
    try {
      Class<?> type = Class.forName("org.scantling.timber." + name);
      return Calculated.class.isAssignableFrom(type);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void what_cannot_roll_or_bow_tells_no_working_of_it() {
    assertThat(BeamStability.of(Sample.FOUR_BY_FOUR, 90, Sample.plain()).lines()).isEmpty();
    assertThat(BeamStability.of(Sample.TWO_BY_SIX, 0, Sample.plain()).lines()).isEmpty();
    assertThat(ColumnStability.of(0, 3.5, Sample.plain(), 0.8).lines())
        .extracting(FormulaLine::id)
        .containsExactly("compression-star");
    assertThat(GroupAction.of(GroupAction.Row.inWood(1, 2, 0.5), 1e7, 1e7).lines()).isEmpty();
  }
}
