package org.scantling.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scantling.design.Geometry;
import org.scantling.design.TopLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.JointRow;
import org.scantling.tables.StepRow;

/** Fills the numbers of this structure into the order of work. */
final class StepWords {
  private static final Sayings SAYINGS = Sayings.of("order");

  private static final Pattern BLANK = Pattern.compile("\\{([a-z-]+)}");

  private final Built built;
  private final Pieces pieces;
  private final UnitSystem units;
  private final InchSizes sizes;
  private final Map<String, String> words = new LinkedHashMap<>();

  StepWords(Built built, Pieces pieces, Climbers climbers, UnitSystem units) {
    this.built = built;
    this.pieces = pieces;
    this.units = units;
    this.sizes = new InchSizes(built);
    ground();
    frame();
    weights();
    joints();
    planting(climbers);
  }

  /**
   * @throws IllegalArgumentException for a blank that nothing fills
   */
  String fill(StepRow row) {
    Matcher blank = BLANK.matcher(row.text());
    StringBuilder text = new StringBuilder();
    while (blank.find()) {
      String word = words.get(blank.group(1));
      if (word == null) {
        throw new IllegalArgumentException(
            "steps.csv: " + row.id() + ": no number is called {" + blank.group(1) + "}");
      }
      blank.appendReplacement(text, Matcher.quoteReplacement(word));
    }
    return blank.appendTail(text).toString();
  }

  private String length(double inches) {
    return new Said(units).length(built.tape().nearest(inches));
  }

  /** Lengths of one kind, which differ where bays do: each once, the shortest first. */
  private String either(Stream<Double> lengthsIn) {
    return lengthsIn
        .sorted()
        .map(this::length)
        .distinct()
        .reduce((one, other) -> SAYINGS.say("either", "one", one, "other", other))
        .orElseThrow();
  }

  private void length(String name, double inches) {
    words.put(name, length(inches));
  }

  private void row(String name, String row) {
    Measure measure = built.shopMeasure(row);
    boolean length = measure.unit() == Unit.INCH && units == UnitSystem.METRIC;
    words.put(
        name,
        length ? new Said(units).length(measure.amount()) : MeasureText.print(measure, units));
  }

  private void ground() {
    Holes holes = new Holes(built);
    TopLine top = built.top();
    row("wait-days", "digging.wait-days");
    row("hand-strip", "digging.hand-strip");
    row("batter-boards", "setout.batter-boards");
    row("diagonal-within", "setout.diagonal-within");
    row("post-within", "setout.post-within");
    row("plumb-within", "setout.plumb-within");
    row("lean-within", "upkeep.lean-within");
    row("plumb-over", "setout.plumb-over");
    row("depth-within", "setout.depth-within");
    row("level-within", "setout.level-within");
    row("level-line", "setout.level-line");
    row("gravel-bed", "footing.gravel-bed");
    row("pad", "footing.pad-thickness");
    row("spoil-back", "digging.spoil-back");
    row("from-above", "digging.from-above");
    row("crown", "footing.crown");
    row("layer", "footing.lift");
    row("cure-days", "concrete.cure-days");
    row("temporary-braces", "brace.temporary");
    length("post-spare", pieces.of("post").get(0).shape().spareIn());
    length("hole-width", built.footings().diameterIn());
    length("dig-depth", holes.digIn(0, 0));
    length("fall", top.groundIn(0, 0) - top.groundIn(0, top.posts() - 1));
    length("drop", top.dropIn());
    words.put("low-row", Stakes.row(top.lowRow()));
    words.put("high-row", Stakes.row(1 - top.lowRow()));
    length("post-top", top.topIn(0) - built.shop("setout.level-line"));
    words.put("holes", Integer.toString(built.geometry().postCount()));
    words.put("slope-degrees", MeasureText.print(new Measure(top.degrees(), Unit.DEGREE), units));
  }

  private void frame() {
    Geometry geometry = built.geometry();
    length("row-spacing", geometry.plan().rowSpacingIn());
    length("overall-diagonal", geometry.overallDiagonalIn());
    double postIn = geometry.posts().breadthIn();
    words.put(
        "spacer-along",
        either(geometry.plan().along().lengthsIn().stream().map(bayIn -> bayIn - postIn)));
    length("spacer-across", geometry.plan().rowSpacingIn() - geometry.posts().breadthIn());
    words.put("crossbeams", Integer.toString(geometry.crossbeamCount()));
    if (geometry.crossbeams().doubled()) {
      pairs();
    }
    words.put("over-posts", Said.all(pieces.overPosts()));
    built.find(Question.RAIL_HEIGHT).ifPresent(height -> length("rail-height", height));
    if (built.railsFromLine() && built.railsLevel()) {
      double overIn = new RailLine(built, 0, 0).overLineIn(built);
      words.put(
          "rail-line",
          SAYINGS.say(
              overIn < 0 ? "rail-line.below" : "rail-line.above",
              "height",
              length(Math.abs(overIn))));
    }
  }

  private void pairs() {
    words.put("crossbeam-pieces", Integer.toString(pieces.count("crossbeam")));
    Plies plies = new Plies(built);
    words.put(
        "ply-fastener",
        plies.nail().map(sizes::told).orElseGet(() -> sizes.bolt(plies.bolt().diameterIn())));
    row("ply-apart", plies.apartRow());
  }

  private void weights() {
    for (String role : new String[] {"post", "header", "crossbeam"}) {
      weight(role + "-weight", Weights.heaviest(built, pieces, role));
    }
    words.put(
        "header-hands", SAYINGS.say(two("header") ? "header-hands.two" : "header-hands.more"));
    words.put(
        "crossbeam-hands",
        SAYINGS.say(two("crossbeam") ? "crossbeam-hands.two" : "crossbeam-hands.more"));
    weight("one-person", built.tables().thumb("lift.one-person").amount());
    weight("two-person", built.shop("lift.two-person"));
  }

  /** True where two people lift the heaviest piece of a role. */
  private boolean two(String role) {
    return Weights.heaviest(built, pieces, role) <= built.shop("lift.two-person");
  }

  private void weight(String name, double pounds) {
    words.put(name, MeasureText.print(new Measure(pounds, Unit.POUND_WEIGHT), units));
  }

  private void joints() {
    words.put("crossbeam-fastening", fasteners(built.joint(Question.CROSSBEAM_JOINT)));
    JointRow block = built.blockJoint();
    words.put("block-screws", Integer.toString(block.count()));
    words.put("block-screw", built.fastener(block).map(sizes::told).orElse(block.id()));
    words.put("header-fastening", fasteners(built.joint(Question.HEADER_JOINT)));
    built
        .findJoint(Question.HEADER_STEP)
        .ifPresent(joint -> words.put("step-fastening", fasteners(joint)));
    List<Double> stepsIn = built.top().stepsIn();
    double notchIn = built.geometry().headers().notchIn();
    if (!stepsIn.isEmpty()) {
      words.put("step", either(stepsIn.stream()));
      words.put("step-seat", either(stepsIn.stream().map(each -> each + notchIn)));
    }
    boolean lagged = built.joint(Question.HEADER_JOINT).way().equals("lagged");
    if (built.paired()) {
      length("bolt-hole", new HeaderBolts(built).holeIn());
    } else if (lagged) {
      lags();
    }
    if (built.has("brace")) {
      braces();
    }
    words.put("tightened", SAYINGS.say(tightened(built.paired() || built.has("brace"), lagged)));
  }

  private static String tightened(boolean bolts, boolean lags) {
    if (bolts) {
      return lags ? "tightened.both" : "tightened.bolts";
    }
    return lags ? "tightened.lags" : "tightened.screws";
  }

  private void lags() {
    double lagIn = built.fastener(built.joint(Question.HEADER_JOINT)).orElseThrow().diameterIn();
    length("lag-sunk", built.shop("lag.head-sunk-share") * lagIn);
    length("lag-wide", built.shop("lag.head-wide-share") * lagIn);
    length("lag-lead", built.shop("lag.lead-share") * lagIn);
  }

  private void braces() {
    Braces braces = new Braces(built);
    words.put("brace-fastening", fasteners(built.joint(Question.BRACE_JOINT)));
    length("brace-hole", braces.holeIn());
  }

  private String fasteners(JointRow joint) {
    return sizes.beside(joint.fasteners());
  }

  private void planting(Climbers climbers) {
    words.put("plants", Integer.toString(climbers.plants().size()));
    words.put("eyes", Integer.toString(climbers.eyes()));
    words.put("wire-holes", Integer.toString(climbers.holes()));
    row("planting-distance", "planting.from-post");
    load("climber-load", Question.VINE_LOAD);
    load("ground-snow", Question.GROUND_SNOW);
  }

  private void load(String name, Question question) {
    words.put(name, PlainLoad.of(built.number(question), units));
  }
}
