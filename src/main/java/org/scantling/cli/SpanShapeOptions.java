package org.scantling.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.scantling.quantity.Measure;
import org.scantling.quantity.QuantityKind;
import org.scantling.quantity.Unit;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.tables.Tables;
import picocli.CommandLine.Option;

/** What a span table goes by, and how its members are held. */
final class SpanShapeOptions {
  private static final String ONLY_BEAMS = "spans.only.beams";
  private static final String ONLY_POSTS = "spans.only.posts";

  static final String SPACINGS = "12 in,16 in,24 in";
  static final String WIDTHS = "3 ft,4 ft,5 ft,6 ft";
  static final String AREAS = "20 sq ft,40 sq ft,60 sq ft,80 sq ft";

  @Option(names = "--spacing", split = ",", paramLabel = "LENGTHS")
  private @Nullable List<String> spacings;

  @Option(names = "--tributary", split = ",", paramLabel = "LENGTHS|AREAS")
  private @Nullable List<String> tributaries;

  @Option(names = "--height", split = ",", paramLabel = "LENGTHS")
  private @Nullable List<String> heights;

  @Option(names = "--notch", paramLabel = "LENGTH")
  private @Nullable String notch;

  @Option(names = "--support", paramLabel = "LENGTH")
  private @Nullable String support;

  @Option(names = "--top-edge", paramLabel = "held|free")
  private @Nullable String topEdge;

  @Option(names = "--spans", paramLabel = "NUMBER")
  private @Nullable String spans;

  @Option(names = "--shear", paramLabel = "support|depth")
  private @Nullable String shear;

  @Option(names = "--plies", paramLabel = "apart|together")
  private @Nullable String plies;

  @Option(names = "--top", paramLabel = "free|held")
  private @Nullable String top;

  @Option(names = "--eccentricity", paramLabel = "SHARE|none")
  private @Nullable String eccentricity;

  @Option(names = "--push", paramLabel = "FORCE")
  private @Nullable String push;

  /** Complains of options that the role has no use for. */
  void refuseOthers(OptionReader reader, Role role) {
    refuse(reader, role == Role.CROSSBEAMS, "--spacing", spacings, "spans.only.crossbeams");
    refuse(reader, role != Role.CROSSBEAMS, "--tributary", tributaries, "spans.only.carriers");
    refuse(reader, role == Role.POSTS, "--height", heights, ONLY_POSTS);
    boolean beams = role != Role.POSTS;
    refuse(reader, beams, "--notch", notch, ONLY_BEAMS);
    refuse(reader, beams, "--support", support, ONLY_BEAMS);
    refuse(reader, beams, "--top-edge", topEdge, ONLY_BEAMS);
    refuse(reader, beams, "--spans", spans, ONLY_BEAMS);
    refuse(reader, beams, "--shear", shear, ONLY_BEAMS);
    refuse(reader, role == Role.HEADERS, "--plies", plies, "spans.only.headers");
    refuse(reader, role == Role.POSTS, "--top", top, ONLY_POSTS);
    refuse(reader, role == Role.POSTS, "--eccentricity", eccentricity, ONLY_POSTS);
    refuse(reader, role == Role.POSTS, "--push", push, ONLY_POSTS);
    if (heights != null && tributaries != null) {
      reader.misplaced("--height", CommandWords.say("spans.height-or-tributary"));
    }
  }

  private static void refuse(
      OptionReader reader, boolean fits, String option, @Nullable Object given, String only) {
    if (!fits && given != null) {
      reader.misplaced(option, CommandWords.say(only));
    }
  }

  /** True where no option is given that is for other roles. */
  boolean fits(Role role) {
    OptionReader reader = new OptionReader();
    refuseOthers(reader, role);
    return reader.clear();
  }

  /**
   * @param asked lengths that stand before the options; those of the options where there are none
   */
  List<Measure> steps(OptionReader reader, Role role, List<String> asked) {
    if (!asked.isEmpty()) {
      if (spacings != null || tributaries != null || heights != null) {
        reader.misplaced(option(role), CommandWords.say("spans.length-twice"));
      }
      return lengths(reader, option(role), asked);
    }
    return switch (role) {
      case CROSSBEAMS -> lengths(reader, "--spacing", or(spacings, SPACINGS));
      case HEADERS -> lengths(reader, "--tributary", or(tributaries, WIDTHS));
      case POSTS ->
          heights == null
              ? areas(reader, or(tributaries, AREAS))
              : lengths(reader, "--height", heights);
    };
  }

  private static String option(Role role) {
    return switch (role) {
      case CROSSBEAMS -> "--spacing";
      case HEADERS -> "--tributary";
      case POSTS -> "--height";
    };
  }

  /**
   * @param open true where nothing lies on the beams that could hold their top edge
   */
  Assumptions.Beam beam(OptionReader reader, boolean open) {
    return new Assumptions.Beam(
        reader.amount("--notch", QuantityKind.LENGTH, or(notch, "0 in")),
        reader.amount("--support", QuantityKind.LENGTH, or(support, "0 in")),
        chosen(reader, "--top-edge", or(topEdge, open ? "free" : "held"), "held", "free"),
        reader.count("--spans", or(spans, "1")),
        chosen(reader, "--shear", or(shear, "support"), "depth", "support"),
        chosen(reader, "--plies", or(plies, "apart"), "apart", "together"));
  }

  private static boolean chosen(
      OptionReader reader, String option, String text, String yes, String no) {
    return reader.word(option, text, Set.of(yes, no)).equals(yes);
  }

  /** Where the standard does not let the load near a support be left out. */
  static void refuseEasedShear(OptionReader reader, Assumptions assumed) {
    Assumptions.Beam beam = assumed.beam();
    boolean fits = beam.spanCount() == 1 && !(beam.notchIn() + assumed.loads().personLb() > 0);
    if (beam.shearOneDepthAway() && !fits) {
      reader.misplaced("--shear", CommandWords.say("spans.shear"));
    }
  }

  Assumptions.Post post(OptionReader reader, Tables tables) {
    boolean held = chosen(reader, "--top", or(top, "free"), "held", "free");
    double pushLb = reader.amount("--push", QuantityKind.FORCE, or(push, "0 lb"));
    if (held && pushLb > 0) {
      reader.misplaced("--push", CommandWords.say("spans.push"));
    }
    return new Assumptions.Post(held, offCentre(reader, tables), pushLb);
  }

  private double offCentre(OptionReader reader, Tables tables) {
    if (eccentricity == null) {
      return tables.thumb("post.eccentricity-share").amount();
    }
    return eccentricity.equals("none") ? 0 : reader.bare("--eccentricity", eccentricity, 0);
  }

  private static List<Measure> lengths(OptionReader reader, String option, List<String> texts) {
    return each(reader, option, QuantityKind.LENGTH, Unit.INCH, texts);
  }

  private static List<Measure> areas(OptionReader reader, List<String> texts) {
    return each(reader, "--tributary", QuantityKind.AREA, Unit.SQUARE_FOOT, texts);
  }

  private static List<Measure> each(
      OptionReader reader, String option, QuantityKind kind, Unit unit, List<String> texts) {
    List<Measure> measures = new ArrayList<>();
    for (String text : texts) {
      measures.add(new Measure(reader.positive(option, kind, text), unit));
    }
    return measures;
  }

  private static String or(@Nullable String given, String otherwise) {
    return given == null ? otherwise : given;
  }

  private static List<String> or(@Nullable List<String> given, String otherwise) {
    return given == null ? List.of(otherwise.split(",", -1)) : given;
  }
}
