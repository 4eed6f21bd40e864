package org.scantling.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.answers.Answers;
import org.scantling.design.Bays;
import org.scantling.design.FreeStretch;
import org.scantling.design.Site;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.reasons.Worked;

/** Where posts and holes stand against the stretches of the walk in which none may. */
final class FreeStretches {
  /** Less than anybody sets a post by. */
  private static final double HAIR_IN = 1.0 / 64;

  private final Site.Walkway walkway;
  private final List<FreeStretch> free;

  FreeStretches(DesignProblem problem) {
    this.walkway = problem.site().walkway();
    this.free = walkway.free();
  }

  /** The last post, where it stands in one; the first cannot, since they are measured from it. */
  List<Fact> ends() {
    return deepest(walkway.lengthIn())
        .<List<Fact>>map(
            stretch ->
                List.of(
                    worked(
                        "post.last-not-free",
                        Question.BAYS,
                        stretch.insideIn(walkway.lengthIn()),
                        span(stretch).and("length", Measure.inches(walkway.lengthIn())))))
        .orElse(List.of());
  }

  /** The bay that timbers are worked for, where posts stand elsewhere than alike bays have them. */
  Worked moved(Bays bays) {
    double evenIn = walkway.lengthIn() / bays.count();
    FreeStretch first =
        IntStream.range(1, bays.count())
            .mapToObj(post -> deepest(post * evenIn))
            .flatMap(Optional::stream)
            .findFirst()
            .orElseGet(() -> free.get(0));
    return worked(
        "bay.moved",
        Question.BAY,
        bays.longestIn(),
        span(first)
            .and("shortest", Measure.inches(bays.shortestIn()))
            .and("bays", Measure.count(bays.count()))
            .and("length", Measure.inches(walkway.lengthIn())));
  }

  /** The post that stands farthest in and the hole that reaches farthest in, if any do. */
  List<Fact> notFree(Bays bays, Answers answers) {
    List<Fact> facts = new ArrayList<>();
    for (int post = 0; post <= bays.count() && facts.isEmpty(); post++) {
      double alongIn = bays.alongIn(post);
      Measure at = Measure.inches(alongIn);
      deepest(alongIn)
          .map(
              stretch ->
                  worked(
                      "post.not-free",
                      Question.BAYS,
                      stretch.insideIn(alongIn),
                      span(stretch).and("at", at)))
          .ifPresent(facts::add);
    }
    double holeIn = answers.number(Question.HOLE_DIAMETER);
    if (facts.isEmpty()) {
      hole(bays, holeIn / 2)
          .map(
              stretch ->
                  worked(
                      "hole.not-free",
                      Question.HOLE_DIAMETER,
                      holeIn,
                      span(stretch).and("wide", Measure.inches(holeIn))))
          .ifPresent(facts::add);
    }
    return facts;
  }

  private Optional<FreeStretch> hole(Bays bays, double halfIn) {
    return free.stream()
        .filter(
            stretch ->
                IntStream.rangeClosed(0, bays.count())
                    .mapToDouble(bays::alongIn)
                    .anyMatch(at -> stretch.outsideIn(at) < halfIn - HAIR_IN))
        .findFirst();
  }

  private Optional<FreeStretch> deepest(double alongIn) {
    return free.stream()
        .filter(stretch -> stretch.insideIn(alongIn) > HAIR_IN)
        .max(Comparator.comparingDouble(stretch -> stretch.insideIn(alongIn)));
  }

  private static Evidence span(FreeStretch stretch) {
    return Evidence.saw("from", Measure.inches(stretch.fromIn()))
        .and("to", Measure.inches(stretch.toIn()));
  }

  private static Worked worked(String id, Question question, double number, Evidence evidence) {
    return ByGeometry.worked(id, question, number, evidence);
  }
}
