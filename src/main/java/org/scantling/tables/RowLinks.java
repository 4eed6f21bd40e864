package org.scantling.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.scantling.reasons.Question;

/** Holds the rows of a house against the rows that they point to, and those that point to them. */
final class RowLinks {
  private static final List<String> SERVED =
      List.of("post", "header", "board", "crossbeam", "rail", "brace");

  private final Tables tables;
  private final Tables ours;
  private final HouseLines lines;

  private RowLinks(Tables tables, Tables ours, HouseLines lines) {
    this.tables = tables;
    this.ours = ours;
    this.lines = lines;
  }

  /**
   * @param tables with the house's rows
   * @param ours without them
   * @param house as it was written
   * @throws TableException at the row of the house that breaks a link
   */
  static void check(Tables tables, Tables ours, HouseRules house) {
    RowLinks links = new RowLinks(tables, ours, new HouseLines(house));
    new JointLinks(tables, ours, links.lines).check();
    links.sizes();
    FactorLinks.check(tables, ours, links.lines);
    links.words();
    WindBands.check(tables, ours, links.lines);
    StepLinks.check(tables, ours, links.lines);
    links.read();
    links.places();
  }

  private void sizes() {
    for (SizeRow size : tables.sizes().rows()) {
      List<String> families =
          tables.stockLengths().rows().stream()
              .filter(each -> each.market().equals(size.market()))
              .map(StockLengthRow::stockFamily)
              .toList();
      if (!families.contains(size.stockFamily())) {
        throw lines.refuse(
            TableFile.SIZES,
            size.id(),
            "stock_family",
            size.stockFamily(),
            RefusalWords.say("sizes.family", "families", String.join(", ", families)));
      }
      if (size.serves("post") && size.thicknessIn() != size.widthIn()) {
        throw lines.refuse(
            TableFile.SIZES, size.id(), "roles", "post", RefusalWords.say("sizes.square"));
      }
    }
    for (String market : Market.ALL) {
      for (String role : SERVED) {
        if (tables.sizes(role, market).isEmpty()) {
          throw lines.refuse(
              TableFile.SIZES,
              "roles",
              RefusalWords.say("found.no-role", "role", role),
              RefusalWords.say("sizes.market", "role", role, "market", market));
        }
      }
    }
  }

  private void words() {
    word("exposure", HouseLines.ids(tables.exposures(), all()));
    word("soil", HouseLines.ids(tables.soils(), all()));
    word("vine", HouseLines.ids(tables.vines(), all()));
    word("species", texts(DesignValueRow::species));
    word("grade", texts(DesignValueRow::grade));
    ranked(texts(DesignValueRow::grade));
    word("market", Market.ALL);
    word("backfill", List.of("tamped-soil", "gravel", "concrete"));
    word(
        "blocking.joint",
        HouseLines.ids(
            tables.joints(),
            each -> each.question() == Question.CROSSBEAM_JOINT && each.way().startsWith("toe-")));
    word("isolated-posts", List.of("yes", "no"));
    word("picket.screw", HouseLines.ids(tables.fasteners(), each -> each.type().equals("screw")));
    word(
        "brace.temporary-screw",
        HouseLines.ids(tables.fasteners(), each -> each.type().equals("screw")));
    // A word that every market has its own for is matched like a base's size.
    word("brace", HouseLines.ids(tables.sizes(), each -> each.serves("brace")));
    for (String market : Market.ALL) {
      word(
          "picket." + market, HouseLines.ids(tables.sizes(), each -> each.market().equals(market)));
      word(
          "brace.temporary." + market,
          HouseLines.ids(tables.sizes(), each -> each.market().equals(market)));
    }
    for (String species : texts(DesignValueRow::species)) {
      word("incised." + species, List.of("yes", "no"));
    }
  }

  /** Every grade once, in whatever order a house ranks them. */
  private void ranked(List<String> grades) {
    String ranked = tables.defaults().row("grades-upward").word();
    List<String> each = List.of(ranked.split(";", -1));
    if (each.size() != grades.size() || !each.containsAll(grades)) {
      throw lines.refuse(
          TableFile.DEFAULTS,
          "grades-upward",
          "word",
          ranked,
          RefusalWords.say("defaults.grades", "grades", String.join(", ", grades)));
    }
  }

  private List<String> texts(Function<DesignValueRow, String> text) {
    return tables.designValues().rows().stream().map(text).distinct().toList();
  }

  private void word(String id, List<String> accepted) {
    String word = tables.defaults().row(id).word();
    if (!accepted.contains(word)) {
      throw lines.refuse(
          TableFile.DEFAULTS,
          id,
          "word",
          word,
          RefusalWords.say("cells.one-of", "words", String.join(", ", accepted)));
    }
  }

  /** A row that is right by itself and that nothing would ever look up. */
  private void read() {
    List<String> fixed = new ArrayList<>();
    tables.joints().rows().forEach(each -> fixed.add(each.fastener()));
    fixed.add(tables.defaults().row("picket.screw").word());
    for (FastenerRow each : tables.fasteners().rows()) {
      // Any bolt may be the one that is long enough.
      if (lines.has(TableFile.FASTENERS, each.id())
          && !each.type().equals("bolt")
          && !fixed.contains(each.id())) {
        throw lines.refuse(
            TableFile.FASTENERS,
            each.id(),
            "id",
            each.id(),
            RefusalWords.say(
                "fasteners.named",
                "fasteners",
                fixed.stream()
                    .filter(id -> !id.isEmpty())
                    .distinct()
                    .sorted()
                    .toList()
                    .toString()));
      }
    }
    for (PackRow each : tables.packs().rows()) {
      if (lines.has(TableFile.PACKS, each.id())
          && ours.packs().find(each.id()).isEmpty()
          && tables.fasteners().find(each.id()).isEmpty()) {
        throw lines.refuse(
            TableFile.PACKS,
            each.id(),
            "id",
            each.id(),
            RefusalWords.say(
                "packs.fastener", "packs", String.join(", ", HouseLines.ids(ours.packs(), all()))));
      }
    }
    for (StockLengthRow each : tables.stockLengths().rows()) {
      if (lines.has(TableFile.STOCK_LENGTHS, each.id())
          && tables.sizes().rows().stream()
              .noneMatch(
                  size ->
                      size.market().equals(each.market())
                          && size.stockFamily().equals(each.stockFamily()))) {
        throw lines.refuse(
            TableFile.STOCK_LENGTHS,
            each.id(),
            "stock_family",
            each.stockFamily(),
            RefusalWords.say("lengths.family"));
      }
    }
  }

  private void places() {
    for (ExposureRow each : tables.exposures().rows()) {
      if (each.leastHeightFt() > each.gradientHeightFt()) {
        throw lines.refuse(
            TableFile.EXPOSURE,
            each.id(),
            "kz_least_height_ft",
            HouseLines.number(each.leastHeightFt()),
            RefusalWords.say(
                "exposure.gradient", "height", HouseLines.number(each.gradientHeightFt())));
      }
    }
  }

  private static <T> Predicate<T> all() {
    return each -> true;
  }
}
