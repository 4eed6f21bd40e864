package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.loads.SnowPattern;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/**
 * A beam with its loads solved once, from which every combination for every candidate size follows
 * by addition.
 *
 * <p>Reactions, shears and moments of a beam of one size on firm supports do not depend on the
 * size.
 */
final class LoadedBeam {
  private final ContinuousBeam beam;
  private final BeamResult ownWeight;
  private final BeamResult dead;
  private final BeamResult vines;
  private final List<BeamResult> live;
  private final BeamResult windDown;
  private final BeamResult windUp;
  private final List<BeamResult> people;
  private final List<BeamResult> snow;

  LoadedBeam(ContinuousBeam beam, BeamLoads loads) {
    this.beam = beam;
    List<List<BeamLoad>> cases = new ArrayList<>();
    cases.add(List.of(beam.everywhere(1)));
    cases.add(loads.dead());
    cases.add(loads.vines());
    cases.add(loads.windDown());
    cases.add(loads.windUp());
    cases.addAll(loads.liveBySpan());
    cases.addAll(loads.snowBySpan());
    loads.people().forEach(person -> cases.add(List.of(person)));
    List<BeamResult> solved = beam.solve(cases);
    ownWeight = solved.get(0);
    dead = solved.get(1);
    vines = solved.get(2);
    windDown = solved.get(3);
    windUp = solved.get(4);
    int spans = loads.snowBySpan().size();
    live = alternating(solved.subList(5, 5 + spans));
    snow = patterns(solved.subList(5 + spans, 5 + 2 * spans));
    people = solved.subList(5 + 2 * spans, solved.size());
  }

  ContinuousBeam beam() {
    return beam;
  }

  BeamResult vines() {
    return vines;
  }

  /** Every combination worth checking for a beam of that weight. */
  List<BeamCase> cases(double ownWeightLbPerIn) {
    List<BeamCase> cases = new ArrayList<>();
    BeamResult permanent = sum(List.of(ownWeight, dead, vines), ownWeightLbPerIn, 1, 1);
    for (LoadCombination combination : LoadCombination.values()) {
      if (combination == LoadCombination.UPLIFT) {
        cases.add(uplift(ownWeightLbPerIn));
      } else {
        passing(combination).forEach(each -> cases.add(together(combination, permanent, each)));
      }
    }
    return cases;
  }

  private record Passing(BeamResult result, boolean spread) {}

  private List<Passing> passing(LoadCombination combination) {
    double windFactor = combination.factor(LoadKind.WIND);
    double liveFactor = combination.factor(LoadKind.ROOF_LIVE);
    double snowFactor = combination.factor(LoadKind.SNOW);
    List<Passing> all = new ArrayList<>();
    if (liveFactor > 0) {
      live.forEach(
          pattern ->
              all.add(new Passing(sum(List.of(windDown, pattern), windFactor, liveFactor), true)));
      people.forEach(
          person ->
              all.add(new Passing(sum(List.of(windDown, person), windFactor, liveFactor), false)));
    } else if (snowFactor > 0) {
      snow.forEach(
          pattern ->
              all.add(new Passing(sum(List.of(windDown, pattern), windFactor, snowFactor), true)));
    } else {
      all.add(new Passing(sum(List.of(windDown), windFactor), true));
    }
    return all;
  }

  private BeamCase uplift(double ownWeightLbPerIn) {
    LoadCombination combination = LoadCombination.UPLIFT;
    double deadFactor = combination.factor(LoadKind.DEAD);
    // Vines hold the top down, so they are left out.
    BeamResult permanent = sum(List.of(ownWeight, dead), deadFactor * ownWeightLbPerIn, deadFactor);
    BeamResult wind = sum(List.of(windUp), combination.factor(LoadKind.WIND));
    return together(combination, permanent, new Passing(wind, true));
  }

  private static BeamCase together(
      LoadCombination combination, BeamResult permanent, Passing passing) {
    BeamResult all = sum(List.of(permanent, passing.result()), 1, 1);
    return new BeamCase(combination, all, permanent, passing.result(), passing.spread());
  }

  /**
   * Live load everywhere, on every other span, and on the rest: a loaded tail takes some of the sag
   * out of the span beside it, and people do not stand everywhere. Source: ASCE 7-16, 4.8.1, from
   * memory.
   */
  private static List<BeamResult> alternating(List<BeamResult> bySpan) {
    int count = bySpan.size();
    double[] everywhere = new double[count];
    double[] odd = new double[count];
    double[] even = new double[count];
    for (int i = 0; i < count; i++) {
      everywhere[i] = 1;
      odd[i] = i % 2;
      even[i] = 1 - odd[i];
    }
    return List.of(
        BeamResult.combine(bySpan, everywhere),
        BeamResult.combine(bySpan, odd),
        BeamResult.combine(bySpan, even));
  }

  private static List<BeamResult> patterns(List<BeamResult> bySpan) {
    List<BeamResult> patterns = new ArrayList<>();
    for (SnowPattern pattern : SnowPattern.forSpans(bySpan.size())) {
      double[] factors = pattern.spanFactors().stream().mapToDouble(each -> each).toArray();
      patterns.add(BeamResult.combine(bySpan, factors));
    }
    return patterns;
  }

  private static BeamResult sum(List<BeamResult> results, double... factors) {
    return BeamResult.combine(results, factors);
  }
}
