package org.scantling.engine;

import static org.scantling.engine.WorkingSteps.pounds;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.scantling.confirm.BeamScene;
import org.scantling.engine.BeamBurden.Part;
import org.scantling.mechanics.BeamResult;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Working;

/**
 * The statics of one beam under one arrangement of loads, from what lies on it to the moments over
 * its supports, its shears and reactions. Moments that pull the top are positive here.
 */
final class BeamStatics {
  /** Filled into a part of a formula that is told only where its load is there. */
  private static final String HERE = "";

  private final BeamWorkings.Task task;
  private final BeamBurden burden;
  private final BeamScene scene;
  private final BeamResult result;
  private final Set<Working> lines = new LinkedHashSet<>();

  BeamStatics(BeamWorkings.Task task, BeamBurden burden) {
    this.task = task;
    this.burden = burden;
    this.scene = burden.scene();
    this.result =
        switch (burden.part()) {
          case ALL -> scene.all();
          case STILL -> scene.permanent();
          case PASSING -> scene.passing();
        };
    loads();
  }

  /** The lines so far, each once. */
  List<Working> lines() {
    return List.copyOf(lines);
  }

  private double add(String what, Measure amount, Evidence evidence) {
    lines.add(task.step(what, amount, evidence));
    return amount.amount();
  }

  private void loads() {
    for (List<Integer> group : burden.alike()) {
      String where = where(group);
      int region = group.get(0);
      Measure on = task.load(burden.on(region));
      switch (burden.part()) {
        case ALL -> add("load", on, factored(region).and("where", where));
        case STILL -> add("still", on, factored(region));
        case PASSING -> add("passing", on, comesAndGoes(region).and("where", where));
      }
    }
    if (task.onPosts() && burden.dead() > 0 && burden.dead() != 1) {
      add(
          "weight",
          perInch(burden.ownLbPerIn()),
          Evidence.saw("factor", Measure.ratio(burden.dead()))
              .and("own", perInch(burden.each().ownLbPerIn())));
    }
    burden.personAtIn().ifPresent(this::person);
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
    add("person", pounds(burden.personLb()), task.person(evidence));
  }

  private String where(List<Integer> group) {
    if (group.size() == burden.regions()) {
      return "all of it";
    }
    return String.join(", ", group.stream().map(this::name).toList());
  }

  private String name(int region) {
    int span = region - (burden.tailed() ? 1 : 0);
    if (span < 0) {
      return "the first tail";
    }
    if (span == scene.beam().spanCount()) {
      return "the last tail";
    }
    return task.onPosts() ? "bay " + (span + 1) : "the span";
  }

  /** Moment over a support, pulling the top. */
  double over(int support) {
    return -result.momentInLb(scene.beam().supportAtIn(support));
  }

  /** The moments over some supports and what they follow from. */
  void moments(Set<Integer> supports) {
    Set<Integer> told = new TreeSet<>(supports);
    supports.stream().filter(this::inner).forEach(each -> told.addAll(List.of(each - 1, each + 1)));
    tails(told);
    List<Integer> inner = supports.stream().filter(this::inner).sorted().toList();
    if (told.stream().filter(this::inner).count() > inner.size()) {
      list(inner.get(0));
    }
    inner.forEach(this::threeMoments);
  }

  private boolean inner(int support) {
    return support > 0 && support < scene.beam().supportCount() - 1;
  }

  private static final int LISTED = 16;

  /** A long row has more posts than need be told: those about the one that counts. */
  private void list(int about) {
    int count = scene.beam().supportCount();
    int from = Math.max(0, Math.min(about - LISTED / 2, count - LISTED));
    int to = Math.min(count, from + LISTED);
    Evidence evidence =
        Evidence.saw("first-post", Measure.count(from + 1)).and("last-post", Measure.count(to));
    for (int support = from; support < to; support++) {
      evidence = evidence.and("m-" + (char) ('a' + support - from), moment(over(support)));
    }
    add("moments", moment(over(about)), evidence);
  }

  /** Where both ends are alike one line tells both. */
  private void tails(Set<Integer> told) {
    int last = scene.beam().supportCount() - 1;
    boolean alike = Math.abs(over(0) - over(last)) < ALIKE_IN_LB;
    if (told.contains(0)) {
      tail(0, alike && told.contains(last) ? "first and last" : "first");
    }
    if (told.contains(last) && !(alike && told.contains(0))) {
      tail(last, "last");
    }
  }

  private static final double ALIKE_IN_LB = 1e-6;

  private void tail(int support, String side) {
    boolean left = support == 0;
    double tailIn = left ? scene.leftTailIn() : scene.rightTailIn();
    if (!(tailIn > 0)) {
      return;
    }
    int region = left ? 0 : burden.regions() - 1;
    Evidence evidence =
        Evidence.saw("side", side)
            .and("load", lineLoad(region))
            .and("tail", Measure.inches(tailIn));
    if (task.onPosts() && task.crossbeamsOnTail() > 0) {
      evidence =
          evidence
              .and("t", HERE)
              .and("point", pounds(burden.on(region)))
              .and("spacing", Measure.inches(task.spacingIn()))
              .and("count", Measure.count(task.crossbeamsOnTail()));
    }
    double supportIn = scene.beam().supportAtIn(support);
    OptionalDouble person = burden.personAtIn();
    if (person.isPresent() && outside(person.getAsDouble(), supportIn, left)) {
      evidence =
          evidence
              .and("p", HERE)
              .and("person", pounds(burden.personLb()))
              .and("arm", Measure.inches(Math.abs(supportIn - person.getAsDouble())));
    }
    add("tail", moment(over(support)), evidence);
  }

  private static boolean outside(double atIn, double supportIn, boolean left) {
    return left ? atIn < supportIn : atIn > supportIn;
  }

  private void threeMoments(int support) {
    double left = fixed(support - 1);
    double right = fixed(support);
    Evidence evidence =
        Evidence.saw("post", Measure.count(support + 1))
            .and("f-left", moment(left))
            .and("f-right", moment(right))
            .and("left", moment(over(support - 1)))
            .and("right", moment(over(support + 1)));
    OptionalDouble person = burden.personAtIn();
    double hereIn = scene.beam().supportAtIn(support);
    if (person.isPresent()) {
      double awayIn = Math.abs(person.getAsDouble() - hereIn);
      double spanIn = scene.spanIn(person.getAsDouble() < hereIn ? support - 1 : support);
      if (awayIn > 0 && awayIn < spanIn) {
        evidence =
            evidence
                .and("p", HERE)
                .and("person", pounds(burden.personLb()))
                .and("far-off", Measure.inches(spanIn - awayIn))
                .and("span", Measure.inches(spanIn));
      }
    }
    add("over-post", moment(over(support)), evidence);
  }

  /** The end moments of a span held stiff at both ends, under the crossbeams and its own weight. */
  private double fixed(int span) {
    double spanIn = scene.spanIn(span);
    double pointLb = burden.on(burden.region(span));
    int spaces = task.spaces();
    double amount =
        pointLb * spanIn * (spaces * spaces - 1) / (12.0 * spaces)
            + burden.ownLbPerIn() * spanIn * spanIn / 12;
    List<Integer> group =
        burden.alike().stream()
            .filter(each -> each.contains(burden.region(span)))
            .findFirst()
            .orElseThrow();
    return add(
        "fixed",
        moment(amount),
        Evidence.saw("where", spansOf(group))
            .and("point", pounds(pointLb))
            .and("span", Measure.inches(spanIn))
            .and("spaces", Measure.count(spaces))
            .and("load", perInch(burden.ownLbPerIn())));
  }

  private String spansOf(List<Integer> group) {
    List<String> names = new ArrayList<>();
    for (int region : group) {
      int span = region - (burden.tailed() ? 1 : 0);
      if (span >= 0 && span < scene.beam().spanCount()) {
        names.add(name(region));
      }
    }
    return String.join(", ", names);
  }

  /**
   * Shear beside a support, pushing the support down.
   *
   * @param other the support at the other end of the span; outside the row for a tail
   */
  double shear(int support, int other) {
    boolean tail = other < 0 || other >= scene.beam().supportCount();
    return tail ? tailShear(support) : spanShear(support, other);
  }

  private double spanShear(int support, int other) {
    int span = Math.min(support, other);
    double spanIn = scene.spanIn(span);
    double far = over(other);
    double near = over(support);
    double even = lineLoadOf(burden.region(span)) * spanIn / 2;
    double points = task.onPosts() ? burden.on(burden.region(span)) * (task.spaces() - 1) / 2 : 0;
    double sum = even + points + (near - far) / spanIn;
    Evidence evidence =
        places(support, other)
            .and("load", lineLoad(burden.region(span)))
            .and("span", Measure.inches(spanIn))
            .and("near", moment(near))
            .and("far", moment(far));
    evidence = pointLoad(evidence, span);
    OptionalDouble person = burden.personAtIn();
    double hereIn = scene.beam().supportAtIn(support);
    double thereIn = scene.beam().supportAtIn(other);
    if (person.isPresent() && between(person.getAsDouble(), hereIn, thereIn)) {
      double beyondIn = Math.abs(thereIn - person.getAsDouble());
      sum += burden.personLb() * beyondIn / spanIn;
      evidence =
          evidence
              .and("p", HERE)
              .and("person", pounds(burden.personLb()))
              .and("beyond", Measure.inches(beyondIn));
    }
    return add("shear", pounds(sum), evidence);
  }

  /** Of a header the crossbeams on a span; of a crossbeam nothing. */
  Evidence pointLoad(Evidence evidence, int span) {
    return task.onPosts()
        ? evidence
            .and("point", pounds(burden.on(burden.region(span))))
            .and("spaces", Measure.count(task.spaces()))
        : evidence;
  }

  private Evidence places(int support, int other) {
    return task.onPosts()
        ? Evidence.saw("post", Measure.count(support + 1)).and("other", Measure.count(other + 1))
        : Evidence.saw("side", support == 0 ? "first" : "last");
  }

  private static boolean between(double atIn, double oneIn, double otherIn) {
    return atIn > Math.min(oneIn, otherIn) && atIn < Math.max(oneIn, otherIn);
  }

  private double tailShear(int support) {
    boolean left = support == 0;
    double tailIn = left ? scene.leftTailIn() : scene.rightTailIn();
    if (!(tailIn > 0)) {
      return 0;
    }
    int region = left ? 0 : burden.regions() - 1;
    double sum = lineLoadOf(region) * tailIn;
    Evidence evidence =
        (task.onPosts()
                ? Evidence.saw("post", Measure.count(support + 1))
                : Evidence.saw("side", left ? "first" : "last"))
            .and("load", lineLoad(region))
            .and("tail", Measure.inches(tailIn));
    if (task.onPosts() && task.crossbeamsOnTail() > 0) {
      sum += burden.on(region) * task.crossbeamsOnTail();
      evidence =
          evidence
              .and("t", HERE)
              .and("point", pounds(burden.on(region)))
              .and("count", Measure.count(task.crossbeamsOnTail()));
    }
    OptionalDouble person = burden.personAtIn();
    if (person.isPresent()
        && outside(person.getAsDouble(), scene.beam().supportAtIn(support), left)) {
      sum += burden.personLb();
      evidence = evidence.and("p", HERE).and("person", pounds(burden.personLb()));
    }
    return add("tail-shear", pounds(sum), evidence);
  }

  /** Load on a support, from the shears on both sides and what lies right over it. */
  double reaction(int support) {
    double first = shear(support, support - 1);
    double second = shear(support, support + 1);
    if (!task.onPosts()) {
      return add(
          "reaction",
          pounds(first + second),
          Evidence.saw("side", support == 0 ? "first" : "last")
              .and("first", pounds(first))
              .and("second", pounds(second)));
    }
    int region = Math.min(burden.region(support), burden.regions() - 1);
    double pointLb = burden.on(region);
    Evidence evidence =
        Evidence.saw("post", Measure.count(support + 1))
            .and("point", pounds(pointLb))
            .and("first", pounds(first))
            .and("second", pounds(second));
    double supportIn = scene.beam().supportAtIn(support);
    OptionalDouble person = burden.personAtIn();
    boolean stands = person.isPresent() && person.getAsDouble() == supportIn;
    double sum = pointLb + first + second + (stands ? burden.personLb() : 0);
    return stands
        ? add("reaction-person", pounds(sum), evidence.and("person", pounds(burden.personLb())))
        : add("reaction", pounds(sum), evidence);
  }

  /**
   * Moment in a span, pulling the underside.
   *
   * @param fromIn from its first support
   */
  double moment(int span, double fromIn) {
    double shear = shear(span, span + 1);
    double load = lineLoadOf(burden.region(span));
    double sum = shear * fromIn - load * fromIn * fromIn / 2 - over(span);
    Evidence evidence =
        Evidence.saw("at", Measure.inches(fromIn))
            .and("shear", pounds(shear))
            .and("load", lineLoad(burden.region(span)))
            .and("near", moment(over(span)));
    if (task.onPosts()) {
      int passed = passed(fromIn);
      evidence = evidence.and("post", Measure.count(span + 1)).and("passed", Measure.count(passed));
      if (passed > 0) {
        double pointLb = burden.on(burden.region(span));
        sum -= pointLb * (passed * fromIn - task.spacingIn() * passed * (passed + 1) / 2);
        evidence =
            evidence
                .and("j", HERE)
                .and("point", pounds(pointLb))
                .and("spacing", Measure.inches(task.spacingIn()));
      }
    }
    OptionalDouble person = burden.personAtIn();
    double standsIn = person.orElse(-1) - scene.beam().supportAtIn(span);
    if (person.isPresent() && standsIn > 0 && standsIn < fromIn) {
      sum -= burden.personLb() * (fromIn - standsIn);
      evidence =
          evidence
              .and("p", HERE)
              .and("person", pounds(burden.personLb()))
              .and("stands", Measure.inches(standsIn));
    }
    return add("moment", moment(sum), evidence);
  }

  /** Crossbeams between a post and a place in its bay. */
  int passed(double fromIn) {
    int passed = 0;
    while (passed + 1 < task.spaces() && (passed + 1) * task.spacingIn() < fromIn - 1e-6) {
      passed++;
    }
    return passed;
  }

  double spacingIn() {
    return task.spacingIn();
  }

  BeamResult result() {
    return result;
  }

  boolean still() {
    return burden.part() == Part.STILL;
  }

  /** One more line of another kind. */
  double add(Working line) {
    lines.add(line);
    return line.result().amount();
  }

  /** The even load of a region by the inch: of a header its own weight alone. */
  private double lineLoadOf(int region) {
    return task.onPosts() ? burden.ownLbPerIn() : burden.on(region);
  }

  Measure lineLoad(int region) {
    return perInch(lineLoadOf(region));
  }

  int region(int span) {
    return burden.region(span);
  }

  static Measure perInch(double amount) {
    return new Measure(amount, Unit.POUND_PER_INCH);
  }

  /** What is left where moments cancel out is nothing. */
  static Measure moment(double amount) {
    return new Measure(Math.abs(amount) < ALIKE_IN_LB ? 0 : amount, Unit.INCH_POUND);
  }
}
