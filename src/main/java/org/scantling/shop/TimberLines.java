package org.scantling.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.scantling.quantity.Length;
import org.scantling.sayings.Sayings;
import org.scantling.tables.ItemKey;
import org.scantling.tables.Yard;

/** The timber of one stock as it is asked for at the yard. */
final class TimberLines {
  private static final Sayings SAYINGS = Sayings.of("buying");
  private static final String TIMBER = "timber";
  private static final String STICK = "stick";
  private static final String STICKS = "sticks";

  private final Built built;
  private final TimberPlan plan;

  TimberLines(Built built, TimberPlan plan) {
    this.built = built;
    this.plan = plan;
  }

  /** Length by length, then what is longer than anything listed. */
  List<BuyingLine> lines() {
    TreeMap<Double, Integer> needed = new TreeMap<>();
    plan.cuts().forEach(cut -> needed.merge(cut.lengthIn(), cut.times(), Integer::sum));
    TreeMap<Double, Integer> all = new TreeMap<>(needed);
    plan.spare().forEach(each -> all.merge(each.lengthIn(), each.count(), Integer::sum));
    List<BuyingLine> lines = new ArrayList<>();
    all.forEach(
        (lengthIn, count) -> lines.add(sticks(lengthIn, count, needed.getOrDefault(lengthIn, 0))));
    specials(lines);
    return lines;
  }

  private BuyingLine sticks(double lengthIn, int count, int needed) {
    OptionalLong price = built.sold(plan.stock()).holding(lengthIn).orElseThrow().cents();
    return new BuyingLine(
            key(lengthIn),
            TIMBER,
            item(lengthIn),
            new BuyingLine.Quantity(needed, STICKS),
            new BuyingLine.Quantity(count - needed, STICKS),
            count,
            STICK,
            use(),
            price.isPresent() ? OptionalLong.of(price.getAsLong() * count) : OptionalLong.empty())
        .of(kind());
  }

  /** Pieces longer than anything listed; those of one length are ordered together. */
  private void specials(List<BuyingLine> lines) {
    Map<String, List<TimberPlan.Special>> byItem = new LinkedHashMap<>();
    for (TimberPlan.Special each : plan.special()) {
      byItem.computeIfAbsent(item(each.lengthIn()), item -> new ArrayList<>()).add(each);
    }
    byItem.forEach((item, ordered) -> lines.add(special(item, ordered)));
  }

  private BuyingLine special(String item, List<TimberPlan.Special> ordered) {
    int count = ordered.stream().mapToInt(TimberPlan.Special::count).sum();
    String marks = ordered.stream().map(TimberPlan.Special::mark).collect(Collectors.joining(", "));
    return new BuyingLine(
            key(ordered.get(0).lengthIn()),
            TIMBER,
            item,
            new BuyingLine.Quantity(count, STICKS),
            new BuyingLine.Quantity(0, STICKS),
            count,
            STICK,
            SAYINGS.say("stick.special", "marks", marks),
            OptionalLong.empty())
        .of(kind());
  }

  private ItemKey key(double lengthIn) {
    PieceTimber timber = plan.stock().timber();
    return ItemKey.stick(
        built.tables().size(plan.stock().size()),
        lengthIn,
        new Yard.Made(
            Optional.of(treatment()), Optional.of(timber.species()), Optional.of(timber.grade())));
  }

  /** What to ask for: the same size for the ground and above it are two different things. */
  private String item(double lengthIn) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("stock", plan.stock().called());
    blanks.put("length", length(lengthIn));
    if (plan.stock().forTheGround()) {
      blanks.put("treatment", lasts() ? treatment() : SAYINGS.say("stick.treated"));
    }
    return SAYINGS.say("stick", blanks);
  }

  private String length(double lengthIn) {
    return built.tape() == Tape.MILLIMETRES
        ? Length.millimetres(lengthIn)
        : Length.feetAndInches(lengthIn);
  }

  private String use() {
    String pieces =
        plan.roles().stream()
            .map(role -> SAYINGS.say("pieces." + role))
            .collect(Collectors.joining(", "));
    return plan.stock().forTheGround()
        ? SAYINGS.say("stick.for-the-ground", "pieces", pieces, "treatment", treatment())
        : pieces;
  }

  private String treatment() {
    return plan.stock().use().treatment(built.tables());
  }

  /** True for a species that lasts untreated. */
  boolean lasts() {
    return plan.stock().use().lasts(built.tables());
  }

  BuyingLine.Kind kind() {
    return BuyingLine.Kind.wood(plan.stock().timber().words(), treatment());
  }

  /** A stock that the yard lists for other uses alone, as it is asked for. */
  String ofOtherKind() {
    return SAYINGS.say(
        "other-kind.timber",
        "size",
        plan.stock().size(),
        "timber",
        kind().timber(),
        "treatment",
        kind().treatment());
  }
}
