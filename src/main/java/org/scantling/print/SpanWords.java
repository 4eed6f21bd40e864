package org.scantling.print;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Source;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.spans.SpanTable;
import org.scantling.words.Voice;

/** Everything that a span table rests on, in words: who knows it can match the table. */
final class SpanWords {
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
    return switch (table.request().role()) {
      case CROSSBEAMS -> "Longest clear span by size and spacing, rounded down.";
      case HEADERS -> "Longest clear span by size and width of top carried, rounded down.";
      case POSTS ->
          table.request().byHeight()
              ? "Greatest area of top carried, by size and height, rounded down."
              : "Greatest height by size and area of top carried, rounded down.";
    };
  }

  List<Block.Item> items() {
    List<Block.Item> items = new ArrayList<>();
    items.add(new Block.Item("Loads", loads()));
    boolean post = table.request().role() == Role.POSTS;
    if (!post) {
      items.add(new Block.Item("Sag", sag()));
    }
    items.add(new Block.Item("Timber", timber()));
    if (post) {
      items.add(new Block.Item("Post", post()));
    } else {
      items.add(new Block.Item("Span", span()));
      items.add(new Block.Item("Top edge", edge()));
      items.add(new Block.Item("Notches", notches()));
      plies().ifPresent(text -> items.add(new Block.Item("Boards side by side", text)));
    }
    items.add(
        new Block.Item(
            "Design values",
            table.values().stream().map(Source::text).collect(Collectors.joining("; ")) + "."));
    return items;
  }

  /** What else an open top is checked for, and how milder conditions are asked for. */
  Optional<String> openTop() {
    if (table.request().role() == Role.POSTS) {
      return Optional.empty();
    }
    return Optional.of(
        assumed.beam().heldAlong()
            ? "These are the spans of a decked top. An open top has nothing that holds its timbers"
                + " from rolling, and somebody climbs on it: leave --repetitive and --top-edge out,"
                + " and the spans are those of an open top, shorter by far."
            : "These are the spans of an open top, where one person may stand at the worst place."
                + " propose also checks the tails, the notches and the joints of this walk."
                + " For a decked top: --top-edge held --person \"0 lb\" --own-weight included.");
  }

  private String loads() {
    Assumptions.Loads loads = assumed.loads();
    String person =
        loads.personLb() > 0
            ? "; or one person of " + voice.say(new Measure(loads.personLb(), Unit.POUND))
            : "";
    return psf(loads.deadPsf())
        + " dead, the timber's own weight "
        + (loads.ownWeightAdded() ? "added, wet" : "in it")
        + "; "
        + psf(loads.livePsf())
        + " live, load duration factor "
        + plain(loads.durationFactor())
        + person
        + ".";
  }

  private static String creep(String times) {
    return times.equals("2") ? "doubled" : "counted " + times + " times";
  }

  private String sag() {
    return "under live load alone "
        + share(assumed.sag().liveDivisor())
        + "; under everything "
        + share(assumed.sag().totalDivisor())
        + (assumed.sag().totalDivisor().isPresent()
            ? ", the permanent part " + creep(plain(assumed.sag().creepFactor())) + " for creep."
            : ".");
  }

  private static String share(OptionalDouble divisor) {
    return divisor.isPresent()
        ? "at most 1/" + plain(divisor.getAsDouble()) + " of the span"
        : "no limit";
  }

  private String timber() {
    double shared = assumed.use().repetitiveFactor();
    return (assumed.use().wet() ? "wet service" : "dry service: not for timber in the open")
        + "; "
        + (assumed.use().incised() ? "incised" : "not incised")
        + "; "
        + (shared > 1
            ? "repetitive factor " + plain(shared) + " on dimension lumber."
            : "every piece by itself, no repetitive factor.");
  }

  private String span() {
    Assumptions.Beam beam = assumed.beam();
    String spans =
        beam.spanCount() == 1 ? "one simple span" : beam.spanCount() + " equal spans in a row";
    return "clear, between the faces of the supports; "
        + spans
        + "; "
        + (beam.supportIn() > 0
            ? "bearing " + inches(beam.supportIn()) + " long on each support"
            : "crushing on the supports not checked")
        + "; shear checked "
        + (beam.shearOneDepthAway() ? "one depth from the supports." : "at the supports.");
  }

  private String edge() {
    return assumed.beam().heldAlong()
        ? "held from rolling over all along, as decking holds it."
        : "free from support to support.";
  }

  private String notches() {
    return assumed.beam().notchIn() > 0
        ? inches(assumed.beam().notchIn()) + " over each support."
        : "none.";
  }

  private Optional<String> plies() {
    boolean several = table.request().sizes().stream().anyMatch(size -> size.plies() > 1);
    if (!several) {
      return Optional.empty();
    }
    return Optional.of(
        assumed.beam().apart()
            ? "on either side of the posts; one board is checked for the whole load, as this"
                + " program builds them."
            : "fastened to each other so that they share the load.");
  }

  private String post() {
    Assumptions.Post post = assumed.post();
    String push =
        post.pushLb() > 0
            ? "wind pushes its top with "
                + voice.say(new Measure(post.pushLb(), Unit.POUND))
                + " at strength level"
            : "no wind";
    return (post.topHeld()
            ? "both ends held from swaying, free to turn"
            : "held by the ground, free at the top")
        + "; load "
        + (post.eccentricityRatio() > 0
            ? "1/" + plain(1 / post.eccentricityRatio()) + " of the depth off center"
            : "on the center")
        + "; "
        + push
        + ".";
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
