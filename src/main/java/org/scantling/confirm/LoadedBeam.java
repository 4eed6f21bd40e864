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
  private final BeamResult windDown;
  private final BeamResult windUp;
  private final List<BeamResult> live;
  private final List<BeamResult> people;
  private final List<BeamResult> snow;
  private final List<Passing> passing = new ArrayList<>();

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
    for (LoadCombination combination : LoadCombination.values()) {
      addPassing(combination);
    }
  }

  ContinuousBeam beam() {
    return beam;
  }

  BeamResult vines() {
    return vines;
  }

  /** Every combination worth checking for a beam of that weight. */
  List<BeamCase> cases(double ownWeightLbPerIn) {
    BeamResult permanent = permanent(ownWeightLbPerIn);
    BeamResult lifted = lifted(ownWeightLbPerIn);
    List<BeamCase> cases = new ArrayList<>();
    for (Passing each : passing) {
      BeamResult still = lifts(each) ? lifted : permanent;
      BeamResult all = BeamResult.combine(List.of(still, each.result()), 1, 1);
      cases.add(new BeamCase(all, still, each));
    }
    return cases;
  }

  /** The same combinations, only what they do to the supports. */
  List<SupportCase> onSupports(double ownWeightLbPerIn) {
    BeamResult permanent = permanent(ownWeightLbPerIn);
    BeamResult lifted = lifted(ownWeightLbPerIn);
    List<SupportCase> cases = new ArrayList<>();
    for (Passing each : passing) {
      BeamResult still = lifts(each) ? lifted : permanent;
      double[] allLb = BeamResult.combineReactionsLb(List.of(still, each.result()), 1, 1);
      cases.add(new SupportCase(each.combination(), allLb));
    }
    return cases;
  }

  private BeamResult permanent(double ownWeightLbPerIn) {
    return BeamResult.combine(List.of(ownWeight, dead, vines), ownWeightLbPerIn, 1, 1);
  }

  /** Vines hold the top down, so they are left out. */
  private BeamResult lifted(double ownWeightLbPerIn) {
    double deadFactor = LoadCombination.UPLIFT.factor(LoadKind.DEAD);
    return BeamResult.combine(List.of(ownWeight, dead), deadFactor * ownWeightLbPerIn, deadFactor);
  }

  private static boolean lifts(Passing passing) {
    return passing.combination() == LoadCombination.UPLIFT;
  }

  private void addPassing(LoadCombination combination) {
    double windFactor = combination.factor(LoadKind.WIND);
    double liveFactor = combination.factor(LoadKind.ROOF_LIVE);
    double snowFactor = combination.factor(LoadKind.SNOW);
    if (combination == LoadCombination.UPLIFT) {
      add(combination, BeamResult.combine(List.of(windUp), windFactor), true);
    } else if (liveFactor > 0) {
      live.forEach(pattern -> add(combination, withWind(windFactor, pattern, liveFactor), true));
      people.forEach(person -> add(combination, withWind(windFactor, person, liveFactor), false));
    } else if (snowFactor > 0) {
      snow.forEach(pattern -> add(combination, withWind(windFactor, pattern, snowFactor), true));
    } else {
      add(combination, BeamResult.combine(List.of(windDown), windFactor), true);
    }
  }

  private BeamResult withWind(double windFactor, BeamResult other, double factor) {
    return BeamResult.combine(List.of(windDown, other), windFactor, factor);
  }

  private void add(LoadCombination combination, BeamResult result, boolean spread) {
    passing.add(new Passing(combination, beam, result, spread));
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
}
