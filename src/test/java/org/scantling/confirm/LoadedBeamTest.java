package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.ContinuousBeam;

/**
 * Cases whose bound is low are not added up. What is left must be what adding up every case of
 * every combination gives (statics: the whole sum, done the long way here).
 */
class LoadedBeamTest {
  private static final double CLOSE = 1e-6;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void the_most_of_each_combination_is_that_of_all_its_cases_added_up(int seed) {
    Random random = new Random(seed);
    LoadedBeam beam = beam(random, 1 + random.nextInt(6));
    double weightLbPerIn = 0.2 + random.nextDouble();

    Map<LoadCombination, BeamDemand> all = new EnumMap<>(LoadCombination.class);
    for (BeamCase each : beam.cases(weightLbPerIn)) {
      BeamDemand demand = BeamDemand.of(each.all(), beam.beam().cuts());
      all.merge(each.combination(), demand, BeamDemand::most);
    }

    Map<LoadCombination, BeamDemand> most = beam.demands(weightLbPerIn);
    assertThat(most).containsOnlyKeys(all.keySet());
    all.forEach((combination, demand) -> same(most.get(combination), demand));
  }

  @ParameterizedTest
  @ValueSource(ints = {31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45})
  void the_furthest_sags_of_each_combination_are_those_of_all_its_cases(int seed) {
    Random random = new Random(seed);
    LoadedBeam beam = beam(random, 1 + random.nextInt(6));

    Map<LoadCombination, Sags> all = new EnumMap<>(LoadCombination.class);
    for (BeamCase each : beam.cases(1)) {
      if (each.passing().spread()) {
        all.merge(each.combination(), each.passing().sags(), Sags::most);
      }
    }

    Map<LoadCombination, Sags> most = beam.passingSags();
    assertThat(most).containsOnlyKeys(all.keySet());
    all.forEach((combination, sags) -> same(most.get(combination), sags, beam.beam()));
  }

  private static void same(BeamDemand found, BeamDemand asked) {
    assertThat(found.saggingInLb()).isCloseTo(asked.saggingInLb(), within(CLOSE));
    assertThat(found.hoggingInLb()).isCloseTo(asked.hoggingInLb(), within(CLOSE));
    assertThat(found.shearLb()).isCloseTo(asked.shearLb(), within(CLOSE));
    assertThat(found.seatLb()).isCloseTo(asked.seatLb(), within(CLOSE));
    assertThat(found.cutSeatLb()).isCloseTo(asked.cutSeatLb(), within(CLOSE));
  }

  private static void same(Sags found, Sags asked, ContinuousBeam beam) {
    for (int span = 0; span < beam.spanCount(); span++) {
      double largest = Math.max(1, asked.span(span));
      assertThat(found.span(span) / largest).isCloseTo(asked.span(span) / largest, within(CLOSE));
    }
    double largest = Math.max(1, asked.tip());
    for (int end = 0; end < Sags.TIPS; end++) {
      assertThat(found.tip(end) / largest).isCloseTo(asked.tip(end) / largest, within(CLOSE));
    }
  }

  /** Overhangs at both ends, unequal spans, loads of any size, now and then a cut. */
  private static LoadedBeam beam(Random random, int spans) {
    double tailIn = 4 + 20 * random.nextDouble();
    double[] supportsIn = new double[spans + 1];
    double atIn = tailIn;
    for (int i = 0; i <= spans; i++) {
      supportsIn[i] = atIn;
      atIn += 24 + 60 * random.nextDouble();
    }
    double lengthIn = supportsIn[spans] + tailIn;
    ContinuousBeam whole = ContinuousBeam.of(lengthIn, supportsIn);
    boolean cut = spans > 2 && random.nextBoolean();
    ContinuousBeam beam = cut ? whole.cutOver(Set.of(1 + random.nextInt(spans - 1))) : whole;
    return new LoadedBeam(beam, loads(random, lengthIn, supportsIn));
  }

  private static BeamLoads loads(Random random, double lengthIn, double[] supportsIn) {
    List<Double> marks = new ArrayList<>(List.of(0.0));
    for (double supportIn : supportsIn) {
      marks.add(supportIn);
    }
    marks.add(lengthIn);
    List<BeamLoad> people = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      people.add(new BeamLoad.Point(lengthIn * random.nextDouble(), 200));
    }
    return new BeamLoads(
        points(random, 0, lengthIn, 20),
        points(random, 0, lengthIn, 40),
        bySpan(random, marks, 60),
        people,
        bySpan(random, marks, 80),
        points(random, 0, lengthIn, 70),
        points(random, 0, lengthIn, -90),
        points(random, 0, lengthIn, -120));
  }

  private static List<List<BeamLoad>> bySpan(Random random, List<Double> marks, double mostLb) {
    List<List<BeamLoad>> loads = new ArrayList<>();
    for (int i = 0; i + 1 < marks.size(); i++) {
      loads.add(points(random, marks.get(i), marks.get(i + 1), mostLb));
    }
    return loads;
  }

  private static List<BeamLoad> points(Random random, double fromIn, double toIn, double mostLb) {
    List<BeamLoad> points = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double atIn = fromIn + (toIn - fromIn) * random.nextDouble();
      points.add(new BeamLoad.Point(atIn, mostLb * random.nextDouble()));
    }
    return points;
  }
}
