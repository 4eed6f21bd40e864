package org.scantling.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.scantling.reasons.Question;

/** Holds the rows of a house against the rows that they point to, and those that point to them. */
final class RowLinks {
  private static final Map<String, String> FASTENED_BY =
      Map.of(
          "bolted",
          "bolt",
          "lagged",
          "lag",
          "toe-nailed",
          "nail",
          "toe-screwed",
          "screw",
          "housed",
          "screw");
  private static final List<String> THREADED = List.of("lagged", "toe-screwed", "housed");
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
    links.joints();
    links.sizes();
    FactorLinks.check(tables, ours, links.lines);
    links.words();
    WindBands.check(tables, ours, links.lines);
    StepLinks.check(tables, ours, links.lines);
    links.read();
    links.places();
  }

  private void joints() {
    for (JointRow joint : tables.joints().rows()) {
      fastener(joint);
      pairs(joint);
      faces(joint);
      boolean goes =
          ours.joints().rows().stream()
              .anyMatch(
                  each ->
                      each.question() == joint.question()
                          && each.way().equals(joint.way())
                          && each.style().equals(joint.style()));
      if (!goes) {
        throw lines.refuse(
            TableFile.JOINTS,
            joint.id(),
            "way",
            joint.way(),
            RefusalWords.say(
                "joints.way", "ways", ways(joint.question()), "question", joint.question().id()));
      }
    }
    for (Question question : questions()) {
      for (String style : List.of("on-top", "paired")) {
        usual(question, style);
      }
    }
  }

  /** Bolts through paired headers stand one over the other, in one row or in two. */
  private void pairs(JointRow joint) {
    boolean paired = joint.way().equals("bolted") && joint.question() == Question.HEADER_JOINT;
    if (paired && joint.count() != 2 && joint.count() != 4) {
      throw lines.refuse(
          TableFile.JOINTS,
          joint.id(),
          "count",
          Integer.toString(joint.count()),
          RefusalWords.say("joints.pairs"));
    }
  }

  /** A steel part on one face alone lets the crossbeam roll away from it. */
  private void faces(JointRow joint) {
    boolean rated = joint.way().equals("rated") && joint.question() == Question.CROSSBEAM_JOINT;
    if (rated && joint.count() < 2) {
      throw lines.refuse(
          TableFile.JOINTS,
          joint.id(),
          "count",
          Integer.toString(joint.count()),
          RefusalWords.say("joints.faces"));
    }
  }

  private Set<Question> questions() {
    return ours.joints().rows().stream().map(JointRow::question).collect(Collectors.toSet());
  }

  private void usual(Question question, String style) {
    boolean any =
        tables.joints().rows().stream()
            .anyMatch(each -> each.question() == question && each.fits(style));
    // A joint that one way of laying headers does not have has no usual way there.
    if (any && tables.usualJoint(question, style).isEmpty()) {
      throw lines.refuse(
          TableFile.JOINTS,
          "usual",
          "no",
          RefusalWords.say("joints.usual", "question", question.id(), "style", style));
    }
  }

  private String ways(Question question) {
    Set<String> ways = new TreeSet<>();
    for (JointRow each : ours.joints().rows()) {
      if (each.question() == question) {
        ways.add(each.way() + " (style " + each.style() + ")");
      }
    }
    return String.join(", ", ways);
  }

  private void fastener(JointRow joint) {
    String type = FASTENED_BY.get(joint.way());
    if (type == null) {
      if (joint.ratedLiftLb().isEmpty() || joint.ratedSideLb().isEmpty()) {
        throw lines.refuse(
            TableFile.JOINTS, joint.id(), "rated_lift_lb", "", RefusalWords.say("joints.rated"));
      }
      return;
    }
    FastenerRow fastener = tables.fasteners().find(joint.fastener()).orElse(null);
    if (fastener == null || !fastener.type().equals(type)) {
      throw lines.refuse(
          TableFile.JOINTS,
          joint.id(),
          "fastener",
          joint.fastener(),
          RefusalWords.say(
              "joints.fastener",
              "type",
              type,
              "fasteners",
              String.join(", ", ids(tables.fasteners(), each -> each.type().equals(type)))));
    }
    threads(joint, fastener);
  }

  private void threads(JointRow joint, FastenerRow fastener) {
    if (fastener.rootDiameterIn() > fastener.diameterIn()) {
      throw lines.refuse(
          TableFile.FASTENERS,
          fastener.id(),
          "root_diameter_in",
          number(fastener.rootDiameterIn()),
          RefusalWords.say("fasteners.shank", "shank", number(fastener.diameterIn())));
    }
    if (THREADED.contains(joint.way())) {
      double gripIn = joint.threadIn().orElse(0) + joint.tipIn().orElse(0);
      if (joint.threadIn().isEmpty() || joint.tipIn().isEmpty() || gripIn > fastener.lengthIn()) {
        throw lines.refuse(
            TableFile.JOINTS,
            joint.id(),
            "thread_in",
            joint.threadIn().isPresent() ? number(joint.threadIn().getAsDouble()) : "",
            RefusalWords.say(
                "joints.thread", "length", number(fastener.lengthIn()), "fastener", fastener.id()));
      }
    }
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
    word("exposure", ids(tables.exposures(), all()));
    word("soil", ids(tables.soils(), all()));
    word("vine", ids(tables.vines(), all()));
    word("species", texts(DesignValueRow::species));
    word("grade", texts(DesignValueRow::grade));
    ranked(texts(DesignValueRow::grade));
    word("market", Market.ALL);
    word("backfill", List.of("tamped-soil", "gravel", "concrete"));
    word(
        "blocking.joint",
        ids(
            tables.joints(),
            each -> each.question() == Question.CROSSBEAM_JOINT && each.way().startsWith("toe-")));
    word("isolated-posts", List.of("yes", "no"));
    word("picket.screw", ids(tables.fasteners(), each -> each.type().equals("screw")));
    word("brace.temporary-screw", ids(tables.fasteners(), each -> each.type().equals("screw")));
    // A word that every market has its own for is matched like a base's size.
    word("brace", ids(tables.sizes(), each -> each.serves("brace")));
    for (String market : Market.ALL) {
      word("picket." + market, ids(tables.sizes(), each -> each.market().equals(market)));
      word("brace.temporary." + market, ids(tables.sizes(), each -> each.market().equals(market)));
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
                "packs.fastener", "packs", String.join(", ", ids(ours.packs(), all()))));
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
            number(each.leastHeightFt()),
            RefusalWords.say("exposure.gradient", "height", number(each.gradientHeightFt())));
      }
    }
  }

  private static <T extends TableRow> List<String> ids(Table<T> table, Predicate<T> which) {
    return table.rows().stream().filter(which).map(TableRow::id).toList();
  }

  private static <T> Predicate<T> all() {
    return each -> true;
  }

  private static String number(double amount) {
    return Double.toString(amount).replaceAll("\\.0$", "");
  }
}
