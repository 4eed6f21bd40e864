package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.mechanics.BeamLoad;

/**
 * The loads on one beam, by kind, without its own weight.
 *
 * @param dead weight of what it carries
 * @param vines climbers
 * @param liveBySpan live load on each span and overhang by itself, from the left
 * @param people one person, at each place worth trying
 * @param snowBySpan snow on each span and overhang by itself, from the left
 * @param windDown wind pressing down, strength level
 * @param windUp wind lifting, strength level
 * @param windUpAtCorner the same as hard as at a corner of the top: what supports are held against
 */
record BeamLoads(
    List<BeamLoad> dead,
    List<BeamLoad> vines,
    List<List<BeamLoad>> liveBySpan,
    List<BeamLoad> people,
    List<List<BeamLoad>> snowBySpan,
    List<BeamLoad> windDown,
    List<BeamLoad> windUp,
    List<BeamLoad> windUpAtCorner) {

  /** A beam whose supports are lifted no harder than the beam. */
  BeamLoads(
      List<BeamLoad> dead,
      List<BeamLoad> vines,
      List<List<BeamLoad>> liveBySpan,
      List<BeamLoad> people,
      List<List<BeamLoad>> snowBySpan,
      List<BeamLoad> windDown,
      List<BeamLoad> windUp) {
    this(dead, vines, liveBySpan, people, snowBySpan, windDown, windUp, windUp);
  }

  /** The same force at each of some places, from the left end. */
  static List<BeamLoad> points(List<Double> placesIn, double forceLb) {
    return placesIn.stream().<BeamLoad>map(place -> new BeamLoad.Point(place, forceLb)).toList();
  }

  /** All of it in numbers, each list after its length: equal where the loads are the same. */
  List<Double> numbers() {
    List<Double> numbers = new ArrayList<>();
    add(numbers, dead);
    add(numbers, vines);
    numbers.add((double) liveBySpan.size());
    liveBySpan.forEach(span -> add(numbers, span));
    add(numbers, people);
    numbers.add((double) snowBySpan.size());
    snowBySpan.forEach(span -> add(numbers, span));
    add(numbers, windDown);
    add(numbers, windUp);
    add(numbers, windUpAtCorner);
    return numbers;
  }

  private static void add(List<Double> numbers, List<BeamLoad> loads) {
    numbers.add((double) loads.size());
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Uniform uniform) {
        numbers.addAll(List.of(uniform.fromIn(), uniform.toIn(), uniform.forceLbPerIn()));
      } else if (load instanceof BeamLoad.Point point) {
        numbers.addAll(List.of(Double.NaN, point.atIn(), point.forceLb()));
      }
    }
  }
}
