package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.quantity.Length;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.PackRow;

/** Writes the buying list. */
final class Purchase {
  private static final double FOOT = 12;
  private static final double CU_FT_IN_A_CU_YD = 27;

  private final Built built;
  private final Pieces pieces;
  private final Climbers climbers;
  private final List<BuyingLine> lines = new ArrayList<>();
  private double bagsLb;

  Purchase(Built built, Pieces pieces, Climbers climbers) {
    this.built = built;
    this.pieces = pieces;
    this.climbers = climbers;
  }

  Buying buying() {
    List<TimberPlan> timber = Timbers.of(built, pieces);
    timber.forEach(this::timber);
    Fixings.of(built, pieces).forEach(this::fixing);
    ground();
    Sundries sundries = new Sundries(built, pieces);
    lines.addAll(sundries.lines());
    sundries.packed().forEach((each, unit) -> counted("work", each, unit));
    wires();
    List<Saving> savings = new Savings(built, pieces).of(timber);
    String aboveGround = built.tables().defaults().row("treatment.above-ground").word();
    boolean metricYard = built.tape() == Tape.MILLIMETRES;
    return new Buying(
        lines,
        timber,
        forOthersOnly(timber),
        savings,
        totals(timber),
        aboveGround,
        lasting(timber),
        metricYard,
        new MetricBolts(built, boltsIn()).told());
  }

  private void timber(TimberPlan plan) {
    TreeMap<Double, Integer> needed = new TreeMap<>();
    plan.cuts().forEach(cut -> needed.merge(cut.lengthIn(), cut.times(), Integer::sum));
    TreeMap<Double, Integer> spare = new TreeMap<>();
    plan.spare().forEach(each -> spare.merge(each.lengthIn(), each.count(), Integer::sum));
    TreeMap<Double, Integer> all = new TreeMap<>(needed);
    spare.forEach((length, count) -> all.merge(length, count, Integer::sum));
    for (Map.Entry<Double, Integer> each : all.entrySet()) {
      stick(plan, each, needed.getOrDefault(each.getKey(), 0));
    }
    specials(plan);
  }

  /** Pieces longer than anything listed; those of one length are ordered together. */
  private void specials(TimberPlan plan) {
    Map<String, List<TimberPlan.Special>> byItem = new LinkedHashMap<>();
    for (TimberPlan.Special each : plan.special()) {
      byItem.computeIfAbsent(item(plan, each.lengthIn()), item -> new ArrayList<>()).add(each);
    }
    byItem.forEach(
        (item, ordered) -> {
          int count = ordered.stream().mapToInt(TimberPlan.Special::count).sum();
          List<String> marks = ordered.stream().map(TimberPlan.Special::mark).toList();
          lines.add(
              new BuyingLine(
                      "timber",
                      item,
                      new BuyingLine.Quantity(count, "sticks"),
                      new BuyingLine.Quantity(0, "sticks"),
                      count,
                      "stick",
                      String.join(", ", marks) + ": longer than anything listed, a special order",
                      OptionalLong.empty())
                  .of(wood(plan)));
        });
  }

  private void stick(TimberPlan plan, Map.Entry<Double, Integer> each, int needed) {
    OptionalLong price = built.sold(plan.stock()).holding(each.getKey()).orElseThrow().cents();
    lines.add(
        new BuyingLine(
                "timber",
                item(plan, each.getKey()),
                new BuyingLine.Quantity(needed, "sticks"),
                new BuyingLine.Quantity(each.getValue() - needed, "sticks"),
                each.getValue(),
                "stick",
                use(plan),
                price.isPresent()
                    ? OptionalLong.of(price.getAsLong() * each.getValue())
                    : OptionalLong.empty())
            .of(wood(plan)));
  }

  /** What to ask for: the same size for the ground and above it are two different things. */
  private String item(TimberPlan plan, double lengthIn) {
    String stick = plan.stock().called() + " x " + length(lengthIn);
    String kind = lasts(plan) ? treatment(plan) : "treated";
    return plan.stock().forTheGround() ? stick + ", " + kind : stick;
  }

  private String use(TimberPlan plan) {
    String roles = plan.roles().stream().map(Purchase::many).collect(Collectors.joining(", "));
    return plan.stock().forTheGround()
        ? roles + ", for use in the ground (" + treatment(plan) + ")"
        : roles;
  }

  private String treatment(TimberPlan plan) {
    return plan.stock().use().treatment(built.tables());
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

  private List<String> forOthersOnly(List<TimberPlan> timber) {
    return timber.stream()
        .filter(plan -> built.listedForOthersOnly(plan.stock()))
        .map(plan -> plan.stock().size() + " of " + wood(plan).words())
        .toList();
  }

  private Buying.Lasting lasting(List<TimberPlan> timber) {
    if (timber.stream().allMatch(this::lasts)) {
      return Buying.Lasting.ALL;
    }
    return timber.stream().anyMatch(this::lasts) ? Buying.Lasting.SOME : Buying.Lasting.NONE;
  }

  private boolean lasts(TimberPlan plan) {
    return built.tables().defaults().find("lasting." + plan.stock().timber().species()).isPresent();
  }

  private BuyingLine.Kind wood(TimberPlan plan) {
    return BuyingLine.Kind.wood(plan.stock().timber().words(), treatment(plan));
  }

  private String length(double lengthIn) {
    return built.tape() == Tape.MILLIMETRES
        ? Length.millimetres(lengthIn)
        : Length.feetAndInches(lengthIn);
  }

  private void fixing(Fixing fixing) {
    counted("fixings", fixing, "pieces");
  }

  /** Bolts, screws and nails are dipped; parts of a maker's are of coated sheet. */
  private BuyingLine.Kind steel(Fixing fixing) {
    String what = fixing.rating().isPresent() ? "finish.parts" : "finish.fasteners";
    String row = built.tape() == Tape.MILLIMETRES ? what + "-metric" : what;
    return BuyingLine.Kind.steel(built.tables().defaults().row(row).word(), fixing.rating());
  }

  private void counted(String section, Fixing fixing, String unit) {
    int more = (int) Math.ceil(fixing.count() * built.shop("stock.fastener-spare-share") - 1e-9);
    Optional<PackRow> pack = built.tables().packs().find(fixing.id());
    boolean metric = built.tape() == Tape.MILLIMETRES;
    int inAPack = pack.map(metric ? PackRow::metricCount : PackRow::count).orElse(1);
    int bought = (fixing.count() + more + inAPack - 1) / inAPack;
    lines.add(
        new BuyingLine(
                section,
                fixing.name(),
                new BuyingLine.Quantity(fixing.count(), unit),
                new BuyingLine.Quantity(more, unit),
                bought,
                pack.map(metric ? PackRow::metricWords : PackRow::words).orElse("piece"),
                fixing.use(),
                OptionalLong.empty())
            .of(section.equals("fixings") ? steel(fixing) : BuyingLine.Kind.ANY));
  }

  private void ground() {
    Holes holes = new Holes(built);
    if (holes.padded()) {
      int posts = built.geometry().postCount();
      lines.add(
          new BuyingLine(
              "ground",
              "flat stone or precast pad, nearly "
                  + length(built.footings().diameterIn())
                  + " wide",
              new BuyingLine.Quantity(posts, "pieces"),
              new BuyingLine.Quantity(0, "pieces"),
              posts,
              "piece",
              "under each post",
              OptionalLong.empty()));
    }
    bags("gravel", holes.gravelCuFt(), "stock.gravel-bag", gravelUse());
    bags("concrete mix", holes.concreteCuFt(), "stock.concrete-bag", "in the holes");
    soil(holes);
  }

  private String gravelUse() {
    boolean filled = built.inTheGround() && built.footings().backfill().equals("gravel");
    return filled ? "under the posts and round them" : "in the bottom of the holes";
  }

  private void bags(String what, double cuFt, String bag, String use) {
    if (!(cuFt > 0)) {
      return;
    }
    String row = built.tape() == Tape.MILLIMETRES ? bag + "-metric" : bag;
    double moreCuFt = cuFt * built.shop("stock.concrete-spare-share");
    int bags = (int) Math.ceil((cuFt + moreCuFt) / built.shop(row) - 1e-9);
    bagsLb += bags * built.shop(row + ".weight");
    lines.add(
        new BuyingLine(
            "ground",
            what,
            new BuyingLine.Quantity(cuFt, "cu ft"),
            new BuyingLine.Quantity(moreCuFt, "cu ft"),
            bags,
            built.tables().defaults().row(row).word(),
            use + bulk(cuFt + moreCuFt),
            OptionalLong.empty()));
  }

  /** Where there is much of it, it comes loose and not in bags. */
  private String bulk(double cuFt) {
    if (cuFt < built.shop("stock.bulk-from")) {
      return "";
    }
    return built.tape() == Tape.MILLIMETRES
        ? "; or " + new Said(UnitSystem.METRIC).volume(cuFt) + " in bulk"
        : "; or " + Said.decimals(cuFt / CU_FT_IN_A_CU_YD, 1) + " cu yd in bulk";
  }

  private void soil(Holes holes) {
    lines.add(
        new BuyingLine(
            "ground",
            "soil to take away, loose",
            new BuyingLine.Quantity(holes.toRemoveCuFt(), "cu ft"),
            new BuyingLine.Quantity(0, "cu ft"),
            0,
            "",
            "left over from the holes",
            OptionalLong.empty()));
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
        (wire, inches) ->
            counted(
                "climbers",
                new Fixing(
                    item("wire", wireIn.keySet(), wire),
                    wire,
                    (int) Math.ceil(inches / FOOT),
                    "for the " + String.join(", ", vines.get(wire))),
                "ft"));
    int tensioners = climbers.runs().stream().mapToInt(Climbers.WireRun::times).sum();
    if (tensioners > 0) {
      String finish = built.tables().defaults().row("wire.tensioner").word();
      counted(
          "climbers",
          new Fixing("tensioner", finish, tensioners, "one to a run of wire"),
          "pieces");
    }
    eyes.forEach(
        (eye, count) ->
            counted(
                "climbers",
                new Fixing(item("eye", eyes.keySet(), eye), eye, count, "for the wires"),
                "pieces"));
  }

  /** The first kind has the plain name, any other its number. */
  private static String item(String plain, Set<String> kinds, String kind) {
    int place = new ArrayList<>(kinds).indexOf(kind);
    return place == 0 ? plain : plain + "-" + (place + 1);
  }

  private Buying.Totals totals(List<TimberPlan> timber) {
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

  private static String many(String role) {
    return role.equals(Blocking.ROLE) ? "blocks between crossbeams" : role + "s";
  }
}
