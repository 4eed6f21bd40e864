package org.scantling.print;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Source;
import org.scantling.sayings.Sayings;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.spans.SpanTable;
import org.scantling.words.Voice;

/** Everything that a span table rests on, in words: who knows it can match the table. */
final class SpanWords {
  private static final Sayings SAYINGS = Sayings.of("span-table");

  private final SpanTable table;
  private final Assumptions assumed;
  private final Voice voice;
  private final UnitSystem units;

  SpanWords(SpanTable table, Voice voice, UnitSystem units) {
    this.table = table;
    this.assumed = table.request().assumptions();
    this.voice = voice;
    this.units = units;
  }

  /** What the columns go by. */
  String step(Measure step) {
    boolean spacing = table.request().role() == Role.CROSSBEAMS;
    return spacing && units == UnitSystem.IMPERIAL ? Length.inches(step.amount()) : voice.say(step);
  }

  /** Rounded down, to the inch or the centimetre, the square foot or a tenth of a square metre. */
  String reach(Measure reach) {
    boolean metric = units == UnitSystem.METRIC;
    double stepSize =
        reach.unit() == Unit.SQUARE_FOOT ? metric ? 0.1 : 1 : metric ? CENTIMETRE_IN : 1;
    boolean area = reach.unit() == Unit.SQUARE_FOOT && metric;
    double amount = area ? reach.unit().toMetric(reach.amount()) : reach.amount();
    double down = Math.floor(amount / stepSize + LAST_BITS) * stepSize;
    return area
        ? String.format(Locale.ROOT, "%.1f m²", down)
        : voice.say(new Measure(down, reach.unit()));
  }

  String found() {
    return SAYINGS.say(
        switch (table.request().role()) {
          case CROSSBEAMS -> "found.crossbeams";
          case HEADERS -> "found.headers";
          case POSTS -> table.request().byHeight() ? "found.posts.by-height" : "found.posts";
        });
  }

  List<Block.Item> items() {
    List<Block.Item> items = new ArrayList<>();
    items.add(item("loads.lead", loads()));
    boolean post = table.request().role() == Role.POSTS;
    if (!post) {
      items.add(item("sag.lead", sag()));
    }
    items.add(item("timber.lead", timber()));
    if (post) {
      items.add(item("post.lead", post()));
    } else {
      items.add(item("span.lead", span()));
      items.add(item("edge.lead", edge()));
      items.add(item("notches.lead", notches()));
      plies().ifPresent(text -> items.add(item("plies.lead", text)));
    }
    items.add(item("values.lead", phrases(table.values().stream().map(Source::text).toList())));
    return items;
  }

  private static Block.Item item(String lead, String text) {
    return new Block.Item(SAYINGS.say(lead), text);
  }

  private static String phrases(List<String> phrases) {
    return String.join("; ", phrases) + ".";
  }

  /** What else an open top is checked for, and how milder conditions are asked for. */
  Optional<String> openTop() {
    if (table.request().role() == Role.POSTS) {
      return Optional.empty();
    }
    return Optional.of(SAYINGS.say(assumed.beam().heldAlong() ? "top.decked" : "top.open"));
  }

  private String loads() {
    Assumptions.Loads loads = assumed.loads();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("dead", psf(loads.deadPsf()));
    blanks.put("live", psf(loads.livePsf()));
    blanks.put("factor", plain(loads.durationFactor()));
    if (loads.personLb() > 0) {
      blanks.put("person", pounds(loads.personLb()));
    }
    return SAYINGS.say(loads.ownWeightAdded() ? "loads.weight-added" : "loads", blanks);
  }

  private String sag() {
    Assumptions.Sag sag = assumed.sag();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("live", share(sag.liveDivisor()));
    blanks.put("all", share(sag.totalDivisor()));
    if (sag.totalDivisor().isPresent()) {
      blanks.put("creep", creep(plain(sag.creepFactor())));
    }
    return SAYINGS.say("sag", blanks);
  }

  private static String creep(String times) {
    return times.equals("2") ? SAYINGS.say("creep.doubled") : SAYINGS.say("creep", "times", times);
  }

  private static String share(OptionalDouble divisor) {
    return divisor.isPresent()
        ? SAYINGS.say("share", "divisor", plain(divisor.getAsDouble()))
        : SAYINGS.say("share.none");
  }

  private String timber() {
    Assumptions.Use use = assumed.use();
    return phrases(
        List.of(
            SAYINGS.say(use.wet() ? "service.wet" : "service.dry"),
            SAYINGS.say(use.incised() ? "incised" : "incised.not"),
            use.repetitiveFactor() > 1
                ? SAYINGS.say("repetitive", "factor", plain(use.repetitiveFactor()))
                : SAYINGS.say("repetitive.not")));
  }

  private String span() {
    Assumptions.Beam beam = assumed.beam();
    return phrases(
        List.of(
            SAYINGS.say("span.clear"),
            SAYINGS.say("span.count", "spans", Integer.toString(beam.spanCount())),
            beam.supportIn() > 0
                ? SAYINGS.say("bearing", "length", inches(beam.supportIn()))
                : SAYINGS.say("bearing.not"),
            SAYINGS.say(beam.shearOneDepthAway() ? "shear.away" : "shear")));
  }

  private String edge() {
    return SAYINGS.say(assumed.beam().heldAlong() ? "edge.held" : "edge.free");
  }

  private String notches() {
    return assumed.beam().notchIn() > 0
        ? SAYINGS.say("notches", "depth", inches(assumed.beam().notchIn()))
        : SAYINGS.say("notches.none");
  }

  private Optional<String> plies() {
    boolean several = table.request().sizes().stream().anyMatch(size -> size.plies() > 1);
    return several
        ? Optional.of(SAYINGS.say(assumed.beam().apart() ? "plies.apart" : "plies"))
        : Optional.empty();
  }

  private String post() {
    Assumptions.Post post = assumed.post();
    return phrases(
        List.of(
            SAYINGS.say(post.topHeld() ? "post.held" : "post.free"),
            post.eccentricityRatio() > 0
                ? SAYINGS.say("load.off-center", "part", plain(1 / post.eccentricityRatio()))
                : SAYINGS.say("load.centered"),
            post.pushLb() > 0
                ? SAYINGS.say("wind", "push", pounds(post.pushLb()))
                : SAYINGS.say("wind.none")));
  }

  private String pounds(double amount) {
    return voice.say(new Measure(amount, Unit.POUND));
  }

  private String psf(double amount) {
    return voice.say(Measure.psf(amount));
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }

  static String plain(double number) {
    return BigDecimal.valueOf(JsonText.rounded(number)).stripTrailingZeros().toPlainString();
  }

  private static final double CENTIMETRE_IN = 1 / 2.54;
  private static final double LAST_BITS = 1e-9;
}
