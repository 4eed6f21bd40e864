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
 * Every way in which the loads that come and go may lie on one beam, combination by combination.
 * The solved cases that they are added up from are needed no longer than that takes.
 */
final class TransientLoads {
  private final ContinuousBeam beam;
  private final PartLoad windDown;
  private final PartLoad windUp;
  private final PartLoad windUpAtCorner;
  private final List<Pattern> live;
  private final List<Pattern> snow;
  private final List<PartLoad> people;
  private final List<Double> peopleAtIn;
  private final int spans;

  /**
   * One way a load may lie.
   *
   * @param shares of the load on each overhang and span
   */
  private record Pattern(List<Double> shares, PartLoad part) {}

  /**
   * @param solved the {@link #cases} of the loads, solved
   */
  TransientLoads(ContinuousBeam beam, BeamLoads loads, List<BeamResult> solved) {
    this.beam = beam;
    this.spans = loads.snowBySpan().size();
    this.peopleAtIn = loads.people().stream().map(TransientLoads::placeIn).toList();
    this.windDown = part(solved.get(0));
    this.windUp = part(solved.get(1));
    this.windUpAtCorner = part(solved.get(2));
    this.live = livePatterns(solved.subList(3, 3 + spans));
    this.snow = snowPatterns(solved.subList(3 + spans, 3 + 2 * spans));
    this.people = solved.subList(3 + 2 * spans, solved.size()).stream().map(this::part).toList();
  }

  /** What has to be solved for them. */
  static List<List<BeamLoad>> cases(BeamLoads loads) {
    List<List<BeamLoad>> cases = new ArrayList<>();
    cases.add(loads.windDown());
    cases.add(loads.windUp());
    cases.add(loads.windUpAtCorner());
    cases.addAll(loads.liveBySpan());
    cases.addAll(loads.snowBySpan());
    loads.people().forEach(person -> cases.add(List.of(person)));
    return cases;
  }

  List<TransientLoad> list() {
    List<TransientLoad> list = new ArrayList<>();
    for (LoadCombination combination : LoadCombination.values()) {
      list.addAll(of(combination));
    }
    return list;
  }

  /** The wind that lifts as hard as at a corner of the top. */
  TransientLoad liftedAtCorner() {
    return lifted(windUpAtCorner);
  }

  private TransientLoad lifted(PartLoad wind) {
    LoadCombination lifting = LoadCombination.UPLIFT;
    return passing(Lying.none(lifting, spans), share(wind, lifting.factor(LoadKind.WIND)));
  }

  private List<TransientLoad> of(LoadCombination combination) {
    double windFactor = combination.factor(LoadKind.WIND);
    double liveFactor = combination.factor(LoadKind.ROOF_LIVE);
    double snowFactor = combination.factor(LoadKind.SNOW);
    TransientLoad.Share wind = share(windDown, windFactor);
    Lying none = Lying.none(combination, spans);
    List<TransientLoad> list = new ArrayList<>();
    if (combination == LoadCombination.UPLIFT) {
      list.add(lifted(windUp));
    } else if (liveFactor > 0) {
      for (Pattern each : live) {
        list.add(passing(none.live(each.shares()), wind, share(each.part(), liveFactor)));
      }
      for (int i = 0; i < people.size(); i++) {
        Lying person = none.person(peopleAtIn.get(i));
        list.add(passing(person, wind, share(people.get(i), liveFactor)));
      }
    } else if (snowFactor > 0) {
      for (Pattern each : snow) {
        list.add(passing(none.snow(each.shares()), wind, share(each.part(), snowFactor)));
      }
    } else {
      list.add(passing(none, wind));
    }
    return list;
  }

  private PartLoad part(BeamResult result) {
    return new PartLoad(result, beam);
  }

  private static TransientLoad.Share share(PartLoad part, double factor) {
    return new TransientLoad.Share(part, factor);
  }

  private TransientLoad passing(Lying lying, TransientLoad.Share... shares) {
    return new TransientLoad(lying, beam, List.of(shares));
  }

  private static double placeIn(BeamLoad person) {
    return person instanceof BeamLoad.Point point ? point.atIn() : 0;
  }

  /**
   * A loaded tail takes some of the sag out of the span beside it, and people do not stand
   * everywhere.
   */
  private List<Pattern> livePatterns(List<BeamResult> bySpan) {
    return LivePattern.forSpans(bySpan.size()).stream()
        .map(pattern -> pattern(pattern.spanFactors(), bySpan))
        .toList();
  }

  /** Each piece of a cut beam has end spans of its own. */
  private List<Pattern> snowPatterns(List<BeamResult> bySpan) {
    int first = bySpan.size() > beam.spanCount() ? 1 : 0;
    List<Integer> cuts = beam.cuts().stream().map(cut -> cut + first).toList();
    return SnowPattern.forPieces(bySpan.size(), cuts).stream()
        .map(pattern -> pattern(pattern.spanFactors(), bySpan))
        .toList();
  }

  private Pattern pattern(List<Double> shares, List<BeamResult> bySpan) {
    double[] factors = shares.stream().mapToDouble(each -> each).toArray();
    return new Pattern(shares, part(BeamResult.combine(bySpan, factors)));
  }
}
