package org.scantling.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Stretch;
import org.scantling.reasons.Threshold;

/**
 * Searches one demand for all questions at once: a proposal that was made for one of them serves
 * the others.
 *
 * <p>Values are tried sample by sample; between the last one with today's choice and the first one
 * with another, the search halves the gap until the two are neighbours. So both sides of a turning
 * point have been tried, and every value tried between today's and it has today's choice.
 */
final class DemandSweep {
  private final Demand demand;
  private final DemandScale scale;
  private final IntFunction<Proposal> propose;
  private final NavigableMap<Integer, Proposal> tried = new TreeMap<>();

  DemandSweep(Demand demand, DemandScale scale, IntFunction<Proposal> propose) {
    this.demand = demand;
    this.scale = scale;
    this.propose = propose;
  }

  Reach search(Collection<Question> questions) {
    scale.samples().forEach(this::at);
    Reach reach;
    int before;
    do {
      // What one question made it try may show another that its choice turns earlier.
      before = tried.size();
      reach = reach(questions);
    } while (tried.size() > before);
    return reach;
  }

  private Reach reach(Collection<Question> questions) {
    boolean words = scale.words();
    List<Threshold> points = new ArrayList<>();
    Map<Question, List<Stretch>> mixed = new EnumMap<>(Question.class);
    if (at(scale.today()).proposed()) {
      for (Question question : questions) {
        points.addAll(words ? everyWord(question) : turns(question));
        if (!words && comesBack(question)) {
          mixed.put(question, stretches(question));
        }
      }
    }
    List<Reach.End> ends = words ? endingWords() : ends();
    return new Reach(
        demand,
        scale.value(scale.today()),
        scale.value(scale.least()),
        scale.value(scale.most()),
        points,
        mixed,
        ends);
  }

  private Proposal at(int place) {
    Proposal proposal = tried.get(place);
    if (proposal == null) {
      proposal = propose.apply(place);
      tried.put(place, proposal);
    }
    return proposal;
  }

  private Choice choice(int place, Question question) {
    return Choice.of(at(place), question);
  }

  /** Words have no order that choices need follow: each that leads elsewhere is told by itself. */
  private List<Threshold> everyWord(Question question) {
    List<Threshold> points = new ArrayList<>();
    for (int place = scale.least(); place <= scale.most(); place++) {
      Choice there = choice(place, question);
      if (!there.refused() && !there.same(choice(scale.today(), question))) {
        points.add(point(question, scale.today(), place));
      }
    }
    return points;
  }

  private List<Threshold> turns(Question question) {
    List<Threshold> points = new ArrayList<>();
    for (boolean up : new boolean[] {false, true}) {
      Gap gap = close(up, (a, b) -> choice(a, question).same(choice(b, question)));
      if (gap != null) {
        points.add(point(question, gap.at(), gap.beyond()));
      }
    }
    return points;
  }

  private Threshold point(Question question, int at, int beyond) {
    return new Threshold(
        question,
        demand,
        beyond > at,
        scale.value(at),
        scale.value(beyond),
        choice(at, question),
        choice(beyond, question));
  }

  /** Where there stops being a structure, or starts, either way. */
  private List<Reach.End> ends() {
    List<Reach.End> ends = new ArrayList<>();
    for (boolean up : new boolean[] {false, true}) {
      Gap gap = close(up, (a, b) -> at(a).proposed() == at(b).proposed());
      if (gap != null) {
        ends.add(end(gap.at(), gap.beyond()));
      }
    }
    return ends;
  }

  private List<Reach.End> endingWords() {
    List<Reach.End> ends = new ArrayList<>();
    for (int place = scale.least(); place <= scale.most(); place++) {
      if (at(place).proposed() != at(scale.today()).proposed()) {
        ends.add(end(scale.today(), place));
      }
    }
    return ends;
  }

  private Reach.End end(int at, int beyond) {
    Proposal refused = at(at).proposed() ? at(beyond) : at(at);
    return new Reach.End(
        beyond > at, scale.value(at), scale.value(beyond), (NeedsEngineer) refused.result());
  }

  private record Gap(int at, int beyond) {}

  /** The first neighbours, seen from today, that are not alike; null where all are. */
  private @Nullable Gap close(boolean up, BiPredicate<Integer, Integer> alike) {
    while (true) {
      Gap gap = first(up, alike);
      if (gap == null || Math.abs(gap.beyond() - gap.at()) == 1) {
        return gap;
      }
      at(Math.floorDiv(gap.at() + gap.beyond(), 2));
    }
  }

  private @Nullable Gap first(boolean up, BiPredicate<Integer, Integer> alike) {
    int last = scale.today();
    for (int place : outward(up)) {
      if (!alike.test(scale.today(), place)) {
        return new Gap(last, place);
      }
      last = place;
    }
    return null;
  }

  /** What was tried on one side of today, the nearest first. */
  private Set<Integer> outward(boolean up) {
    int today = scale.today();
    return up
        ? tried.tailMap(today, false).keySet()
        : tried.headMap(today, false).descendingMap().keySet();
  }

  /** True where today's choice holds again somewhere beyond a threshold. */
  private boolean comesBack(Question question) {
    Choice today = choice(scale.today(), question);
    for (boolean up : new boolean[] {false, true}) {
      boolean turned = false;
      for (int place : outward(up)) {
        boolean same = choice(place, question).same(today);
        if (turned && same) {
          return true;
        }
        turned |= !same;
      }
    }
    return false;
  }

  /** Every stretch of one choice, its ends found as thresholds are. */
  private List<Stretch> stretches(Question question) {
    List<Stretch> stretches = new ArrayList<>();
    int first = scale.least();
    int place = first;
    while (place < scale.most()) {
      int next = tried.higherKey(place);
      if (choice(place, question).same(choice(next, question))) {
        place = next;
      } else if (next - place > 1) {
        at(Math.floorDiv(place + next, 2));
      } else {
        stretches.add(stretch(question, first, place));
        first = next;
        place = next;
      }
    }
    stretches.add(stretch(question, first, place));
    return Collections.unmodifiableList(stretches);
  }

  private Stretch stretch(Question question, int first, int last) {
    return new Stretch(scale.value(first), scale.value(last), choice(first, question));
  }
}
