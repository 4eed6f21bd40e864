package org.scantling.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which items a price list may name, and for one of what each is priced. */
public final class PricedItems {
  public static final String EACH = "each";
  public static final String JOB = "job";
  public static final String HOUR = "hour";
  public static final String PERCENT = "percent";

  /** Of what is ordered loose, too. */
  public static final List<String> VOLUMES = List.of("cu yd", "cu ft", "m3");

  public static final List<String> WEIGHTS = List.of("lb", "kg");

  private static final Pattern STICK =
      Pattern.compile("(\\d{1,4}x\\d{1,4})x(\\d{1,5}(?:\\.\\d{1,3})?)(in)?");

  /** Cut or chosen by what they hold, so that their sizes are not known beforehand. */
  private static final Pattern BY_THE_BOLT = Pattern.compile("(?:nut|washer|rod)\\.[0-9]+[0-9.-]*");

  /** The climber of a walk that nothing grows on. */
  private static final String NOTHING = "none";

  private final Tables tables;

  public PricedItems(Tables tables) {
    this.tables = tables;
  }

  /** Wire or eyes for the way of climbing that first asks for them. */
  public static String wire(String climberRow) {
    return "wire-" + climberRow;
  }

  public static String eye(String climberRow) {
    return "eye-" + climberRow;
  }

  public static String plant(String vine) {
    return "plant-" + vine;
  }

  /** The units that an item may be priced in; none for a word that is no item. */
  public List<String> units(String item) {
    if (stick(item)) {
      return List.of(EACH);
    }
    Optional<PricedItem> known = PricedItem.find(item);
    if (known.isPresent()) {
      return units(known.get());
    }
    if (item.startsWith(wire(""))) {
      return named(item) ? packs("wire") : List.of();
    }
    if (item.startsWith(eye(""))) {
      return named(item) ? packs("eye") : List.of();
    }
    return named(item) || BY_THE_BOLT.matcher(item).matches() ? packs(item) : List.of();
  }

  /** True for a size that the tables have, with a length. */
  boolean stick(String item) {
    Matcher stick = STICK.matcher(item);
    return stick.matches() && tables.sizes().find(stick.group(1)).isPresent();
  }

  /** Of every size one stick, as long as the shortest that is sold of it. */
  public List<String> sticks() {
    return tables.sizes().rows().stream()
        .map(
            size ->
                ItemKey.stick(size, tables.stockLengths(size).lengthsIn().get(0), Yard.Made.ANY)
                    .item())
        .toList();
  }

  private boolean named(String item) {
    return names().anyMatch(item::equals);
  }

  /** Every item but the sticks, and what is chosen by the bolt. */
  public Stream<String> names() {
    return Stream.of(
            Arrays.stream(PricedItem.values()).map(PricedItem::word),
            tables.fasteners().rows().stream().map(FastenerRow::id),
            tables.joints().rows().stream()
                .filter(row -> row.fastener().isEmpty())
                .map(JointRow::id),
            firstOfEach(ClimberRow::wire).map(PricedItems::wire),
            firstOfEach(ClimberRow::eye).map(PricedItems::eye),
            tables.vines().rows().stream()
                .map(VineRow::id)
                .filter(vine -> !vine.equals(NOTHING))
                .map(PricedItems::plant))
        .flatMap(each -> each);
  }

  /** Of ways of climbing that ask for the same, the first. */
  private Stream<String> firstOfEach(Function<ClimberRow, String> kind) {
    Map<String, String> first = new LinkedHashMap<>();
    for (ClimberRow row : tables.climbers().rows()) {
      if (!kind.apply(row).isEmpty()) {
        first.putIfAbsent(kind.apply(row), row.id());
      }
    }
    return first.values().stream();
  }

  private List<String> units(PricedItem item) {
    List<String> units = new ArrayList<>();
    for (PricedItem.Unit unit : item.units()) {
      units.addAll(
          switch (unit) {
            case EACH -> List.of(EACH);
            case PACK -> packs(item.word());
            case BAG -> bags(item.word());
            case VOLUME -> VOLUMES;
            case WEIGHT -> WEIGHTS;
            case JOB -> List.of(JOB);
            case HOUR -> List.of(HOUR);
            case PERCENT -> List.of(PERCENT);
          });
    }
    return units;
  }

  private List<String> packs(String item) {
    return tables
        .packs()
        .find(item)
        .map(row -> Stream.of(row.words(), row.metricWords()).distinct().toList())
        .orElse(List.of(EACH));
  }

  private List<String> bags(String item) {
    return Stream.of("", "-metric")
        .map(kind -> tables.defaults().row("stock." + item + "-bag" + kind).word())
        .distinct()
        .toList();
  }
}
