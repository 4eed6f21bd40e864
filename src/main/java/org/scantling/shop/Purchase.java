package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.ClimberRow;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.PricedItems;

/** Writes the buying list. */
final class Purchase {
  private static final Sayings SAYINGS = Sayings.of("buying");
  private static final double FOOT = 12;

  private final Built built;
  private final Pieces pieces;
  private final Climbers climbers;
  private final CountedLines counted;
  private final List<BuyingLine> lines = new ArrayList<>();

  Purchase(Built built, Pieces pieces, Climbers climbers) {
    this.built = built;
    this.pieces = pieces;
    this.climbers = climbers;
    this.counted = new CountedLines(built);
  }

  Buying buying() {
    return buying(Timbers.of(built, pieces));
  }

  /**
   * @param timber how it is sawn
   */
  Buying buying(List<TimberPlan> timber) {
    timber.forEach(each -> lines.addAll(new TimberLines(built, each).lines()));
    Fixings.of(built, pieces).forEach(each -> lines.add(counted.steel(each)));
    GroundLines ground = new GroundLines(built);
    lines.addAll(ground.lines());
    Sundries sundries = new Sundries(built, pieces);
    lines.addAll(sundries.lines());
    sundries.packed().forEach((each, unit) -> lines.add(counted.line("work", each, unit)));
    wires();
    List<Saving> savings = new Savings(built, pieces).of(timber);
    String aboveGround = built.tables().defaults().row("treatment.above-ground").word();
    boolean metricYard = built.tape() == Tape.MILLIMETRES;
    return new Buying(
        lines,
        timber,
        ofOtherKind(timber),
        savings,
        totals(timber, ground.bagsLb()),
        aboveGround,
        lasting(timber),
        metricYard,
        new MetricBolts(built, boltsIn()).told());
  }

  /** Thickness of the bolts of headers and braces. */
  private List<Double> boltsIn() {
    return Stream.of(Question.HEADER_JOINT, Question.BRACE_JOINT)
        .map(built::findJoint)
        .flatMap(Optional::stream)
        .map(built::fastener)
        .flatMap(Optional::stream)
        .filter(each -> each.type().equals("bolt"))
        .map(FastenerRow::diameterIn)
        .distinct()
        .toList();
  }

  private List<String> ofOtherKind(List<TimberPlan> timber) {
    return timber.stream()
        .filter(plan -> built.listedForOthersOnly(plan.stock()))
        .map(plan -> new TimberLines(built, plan).ofOtherKind())
        .toList();
  }

  private Buying.Lasting lasting(List<TimberPlan> timber) {
    long lasting = timber.stream().filter(each -> new TimberLines(built, each).lasts()).count();
    if (lasting == timber.size()) {
      return Buying.Lasting.ALL;
    }
    return lasting > 0 ? Buying.Lasting.SOME : Buying.Lasting.NONE;
  }

  private void wires() {
    Map<String, Double> wireIn = new LinkedHashMap<>();
    Map<String, Integer> eyes = new LinkedHashMap<>();
    Map<String, Set<String>> vines = new LinkedHashMap<>();
    for (Climbers.WireRun run : climbers.runs()) {
      wireIn.merge(run.parts().wire(), run.times() * run.lengthIn(), Double::sum);
      eyes.merge(run.parts().eye(), run.times() * run.eyes(), Integer::sum);
      vines.computeIfAbsent(run.parts().wire(), wire -> new LinkedHashSet<>()).add(run.vine());
    }
    wireIn.forEach(
        (wire, inches) -> {
          String use = SAYINGS.say("wire.use", "climbers", String.join(", ", vines.get(wire)));
          int feet = (int) Math.ceil(inches / FOOT);
          Fixing bought = new Fixing("wire", wire, feet, use);
          climbing(bought.named(PricedItems.wire(first(ClimberRow::wire, wire))), "ft");
        });
    int tensioners = climbers.runs().stream().mapToInt(Climbers.WireRun::times).sum();
    if (tensioners > 0) {
      String name = built.tables().defaults().row("wire.tensioner").word();
      String use = SAYINGS.say("tensioner.use");
      climbing(new Fixing("tensioner", name, tensioners, use), "pieces");
    }
    String use = SAYINGS.say("eye.use");
    eyes.forEach(
        (eye, count) ->
            climbing(
                new Fixing("eye", eye, count, use)
                    .named(PricedItems.eye(first(ClimberRow::eye, eye))),
                "pieces"));
  }

  /** The first way of climbing that asks for it. */
  private String first(Function<ClimberRow, String> part, String kind) {
    return built.tables().climbers().rows().stream()
        .filter(row -> part.apply(row).equals(kind))
        .findFirst()
        .orElseThrow()
        .id();
  }

  private void climbing(Fixing fixing, String unit) {
    lines.add(counted.line("climbers", fixing, unit));
  }

  private Buying.Totals totals(List<TimberPlan> timber, double bagsLb) {
    double piecesIn = timber.stream().mapToDouble(each -> each.result().piecesIn()).sum();
    double boughtIn3 = 0;
    double piecesIn3 = 0;
    for (TimberPlan plan : timber) {
      double sectionIn2 = plan.stock().breadthIn() * plan.stock().depthIn();
      boughtIn3 += sectionIn2 * plan.result().boughtIn();
      piecesIn3 += sectionIn2 * plan.result().piecesIn();
    }
    double timberLb = timber.stream().mapToDouble(TimberPlan::weightLb).sum();
    boolean priced = timber.stream().allMatch(each -> each.result().cents().isPresent());
    return new Buying.Totals(
        pieces.all().stream().mapToInt(Piece::count).sum(),
        timber.stream().mapToInt(TimberPlan::sticks).sum(),
        piecesIn > 0 ? Math.max(0, 1 - piecesIn3 / boughtIn3) : 0,
        timberLb,
        timberLb + bagsLb,
        priced
            ? OptionalLong.of(
                timber.stream().mapToLong(each -> each.result().cents().getAsLong()).sum())
            : OptionalLong.empty());
  }
}
