package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.perInch;
import static org.scantling.workings.CalculationSteps.pounds;

import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/** What lies on a beam, load by load with its factor in the combination. */
final class BurdenLines {
  private final BeamLines lines;
  private final BeamTask task;
  private final BeamBurden burden;
  private final BeamRegions regions;

  BurdenLines(BeamLines lines) {
    this.lines = lines;
    this.task = lines.task();
    this.burden = lines.burden();
    this.regions = new BeamRegions(task, burden);
  }

  void write() {
    burden.alike().forEach(this::load);
    if (task.onPosts() && burden.dead() > 0 && burden.dead() != 1) {
      lines.add(
          "weight",
          perInch(burden.ownLbPerIn()),
          Evidence.saw("factor", Measure.ratio(burden.dead()))
              .and("own", perInch(burden.each().ownLbPerIn())));
    }
    burden.personAtIn().ifPresent(this::person);
  }

  private void load(List<Integer> group) {
    String where = regions.names(group);
    int region = group.get(0);
    Measure on = task.load(burden.on(region));
    switch (burden.part()) {
      case ALL -> lines.add("load", on, shared(factored(region).and("where", where)));
      case STILL -> lines.add("still", on, shared(factored(region)));
      case PASSING -> lines.add("passing", on, shared(comesAndGoes(region).and("where", where)));
    }
  }

  private Evidence shared(Evidence evidence) {
    return task.uneven() ? BeamLines.turnedOn(evidence, "u") : evidence;
  }

  private Evidence factored(int region) {
    Evidence evidence =
        Evidence.saw("dead-factor", Measure.ratio(burden.dead()))
            .and("dead", task.load(burden.each().deadLb()));
    evidence = some(evidence, "vine-factor", burden.vines(), "vines", burden.each().vinesLb());
    evidence = some(evidence, "live-factor", burden.live(region), "live", burden.each().liveLb());
    evidence = some(evidence, "snow-factor", burden.snow(region), "snow", burden.each().snowLb());
    evidence = some(evidence, "wind-factor", burden.press(), "press", burden.each().pressLb());
    return some(evidence, "lift-factor", burden.lift(), "lift", burden.each().liftLb());
  }

  /** Live load, snow, or wind alone; the share on a region may be none. */
  private Evidence comesAndGoes(int region) {
    BeamBurden.Each each = burden.each();
    if (burden.lift() > 0) {
      return first(-burden.lift(), each.liftLb());
    }
    boolean snows = burden.combination().id().contains("S");
    boolean people = burden.combination().id().contains("Lr");
    if (!snows && !people) {
      return first(burden.press(), each.pressLb());
    }
    Evidence evidence =
        snows
            ? first(burden.snow(region), each.snowLb())
            : first(burden.live(region), each.liveLb());
    return some(evidence, "wind-factor", burden.press(), "press", each.pressLb());
  }

  private Evidence first(double factor, double load) {
    return Evidence.saw("first-factor", Measure.ratio(factor)).and("first", task.load(load));
  }

  private Evidence some(Evidence evidence, String factor, double by, String name, double load) {
    return by > 0 ? evidence.and(factor, Measure.ratio(by)).and(name, task.load(load)) : evidence;
  }

  private void person(double atIn) {
    Evidence evidence =
        Evidence.saw("at", Measure.inches(atIn)).and("factor", Measure.ratio(burden.person()));
    lines.add("person", pounds(burden.personLb()), task.person(evidence));
  }
}
