package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LivePattern;
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
  private final List<Pattern> live;
  private final List<BeamResult> people;
  private final List<Double> peopleAtIn;
  private final List<Pattern> snow;
  private final List<Passing> passing = new ArrayList<>();

  /**
   * One way a load may lie.
   *
   * @param shares of the load on each overhang and span
   */
  private record Pattern(List<Double> shares, BeamResult result) {
    static Pattern of(List<Double> shares, List<BeamResult> bySpan) {
      double[] factors = shares.stream().mapToDouble(each -> each).toArray();
      return new Pattern(shares, BeamResult.combine(bySpan, factors));
    }
  }

  LoadedBeam(ContinuousBeam beam, BeamLoads loads) {
    this.beam = beam;
    this.peopleAtIn = loads.people().stream().map(LoadedBeam::placeIn).toList();
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
    live = livePatterns(solved.subList(5, 5 + spans));
    snow = snowPatterns(beam, solved.subList(5 + spans, 5 + 2 * spans));
    people = solved.subList(5 + 2 * spans, solved.size());
    for (LoadCombination combination : LoadCombination.values()) {
      addPassing(combination);
    }
  }

  ContinuousBeam beam() {
    return beam;
  }

  /** Under 1 lb on every inch of it. */
  BeamResult everywhere() {
    return ownWeight;
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
      cases.add(
          new SupportCase(
              each.combination(),
              BeamResult.combineOnSupports(List.of(still, each.result()), 1, 1)));
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

  private static double placeIn(BeamLoad person) {
    return person instanceof BeamLoad.Point point ? point.atIn() : 0;
  }

  private void addPassing(LoadCombination combination) {
    double windFactor = combination.factor(LoadKind.WIND);
    double liveFactor = combination.factor(LoadKind.ROOF_LIVE);
    double snowFactor = combination.factor(LoadKind.SNOW);
    Lying none = Lying.none(combination, live.get(0).shares().size());
    if (combination == LoadCombination.UPLIFT) {
      add(none, BeamResult.combine(List.of(windUp), windFactor));
    } else if (liveFactor > 0) {
      for (Pattern each : live) {
        add(none.live(each.shares()), withWind(windFactor, each.result(), liveFactor));
      }
      for (int i = 0; i < people.size(); i++) {
        add(none.person(peopleAtIn.get(i)), withWind(windFactor, people.get(i), liveFactor));
      }
    } else if (snowFactor > 0) {
      for (Pattern each : snow) {
        add(none.snow(each.shares()), withWind(windFactor, each.result(), snowFactor));
      }
    } else {
      add(none, BeamResult.combine(List.of(windDown), windFactor));
    }
  }

  private BeamResult withWind(double windFactor, BeamResult other, double factor) {
    return BeamResult.combine(List.of(windDown, other), windFactor, factor);
  }

  private void add(Lying lying, BeamResult result) {
    passing.add(new Passing(lying, beam, result));
  }

  /**
   * A loaded tail takes some of the sag out of the span beside it, and people do not stand
   * everywhere.
   */
  private static List<Pattern> livePatterns(List<BeamResult> bySpan) {
    return LivePattern.forSpans(bySpan.size()).stream()
        .map(pattern -> Pattern.of(pattern.spanFactors(), bySpan))
        .toList();
  }

  /** Each piece of a cut beam has end spans of its own. */
  private static List<Pattern> snowPatterns(ContinuousBeam beam, List<BeamResult> bySpan) {
    int first = bySpan.size() > beam.spanCount() ? 1 : 0;
    List<Integer> cuts = beam.cuts().stream().map(cut -> cut + first).toList();
    return SnowPattern.forPieces(bySpan.size(), cuts).stream()
        .map(pattern -> Pattern.of(pattern.spanFactors(), bySpan))
        .toList();
  }
}
