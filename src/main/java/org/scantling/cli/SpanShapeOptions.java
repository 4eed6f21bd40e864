package org.scantling.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.quantity.Measure;
import org.scantling.quantity.QuantityKind;
import org.scantling.quantity.Unit;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.tables.Tables;
import picocli.CommandLine.Option;

/** What a span table goes by, and how its members are held. */
final class SpanShapeOptions {
  private static final String SPACINGS = "12 in,16 in,24 in";
  private static final String WIDTHS = "3 ft,4 ft,5 ft,6 ft";
  private static final String AREAS = "20 sq ft,40 sq ft,60 sq ft,80 sq ft";

  @Option(
      names = "--spacing",
      split = ",",
      paramLabel = "LENGTHS",
      description = "Crossbeams: center to center; " + SPACINGS + " if not given.")
  private List<String> spacings;

  @Option(
      names = "--tributary",
      split = ",",
      paramLabel = "LENGTHS|AREAS",
      description =
          "Headers: widths of top carried, "
              + WIDTHS
              + " if not given. Posts: areas, "
              + AREAS
              + " if not given.")
  private List<String> tributaries;

  @Option(
      names = "--height",
      split = ",",
      paramLabel = "LENGTHS",
      description = "Posts: heights, to find the greatest area instead of the greatest height.")
  private List<String> heights;

  @Option(
      names = "--notch",
      paramLabel = "LENGTH",
      description = "Beams: depth of the recess over each support; 0 in if not given.")
  private String notch;

  @Option(
      names = "--support",
      paramLabel = "LENGTH",
      description = "Beams: length of bearing, to check crushing; not checked if not given.")
  private String support;

  @Option(
      names = "--top-edge",
      paramLabel = "held|free",
      description =
          "Beams: whether decking or the like stops them rolling over; free if not given, as on an"
              + " open top, but held with --repetitive, whose factor is for decked beams only.")
  private String topEdge;

  @Option(
      names = "--spans",
      paramLabel = "NUMBER",
      description = "Beams: equal spans in a row; 1 if not given.")
  private String spans;

  @Option(
      names = "--shear",
      paramLabel = "support|depth",
      description =
          "Beams: where shear is checked, at the support or one depth from it, as the standard"
              + " allows for an even load; support if not given.")
  private String shear;

  @Option(
      names = "--plies",
      paramLabel = "apart|together",
      description =
          "Headers of several boards: apart on both sides of the posts (one board is checked for"
              + " all), or together; apart if not given.")
  private String plies;

  @Option(
      names = "--top",
      paramLabel = "free|held",
      description = "Posts: whether the top may sway; free if not given.")
  private String top;

  @Option(
      names = "--eccentricity",
      paramLabel = "SHARE|none",
      description = "Posts: share of the depth by which the load is off center; 1/6 if not given.")
  private String eccentricity;

  @Option(
      names = "--push",
      paramLabel = "FORCE",
      description = "Posts: wind on the top, strength level; none if not given.")
  private String push;

  /** Complains of options that the role has no use for. */
  void refuseOthers(OptionReader reader, Role role) {
    refuse(reader, role == Role.CROSSBEAMS, "--spacing", spacings, "crossbeams");
    refuse(reader, role != Role.CROSSBEAMS, "--tributary", tributaries, "headers and posts");
    refuse(reader, role == Role.POSTS, "--height", heights, "posts");
    boolean beams = role != Role.POSTS;
    refuse(reader, beams, "--notch", notch, "crossbeams and headers");
    refuse(reader, beams, "--support", support, "crossbeams and headers");
    refuse(reader, beams, "--top-edge", topEdge, "crossbeams and headers");
    refuse(reader, beams, "--spans", spans, "crossbeams and headers");
    refuse(reader, beams, "--shear", shear, "crossbeams and headers");
    refuse(reader, role == Role.HEADERS, "--plies", plies, "headers");
    refuse(reader, role == Role.POSTS, "--top", top, "posts");
    refuse(reader, role == Role.POSTS, "--eccentricity", eccentricity, "posts");
    refuse(reader, role == Role.POSTS, "--push", push, "posts");
    if (heights != null && tributaries != null) {
      reader.misplaced(
          "--height", "leave it or --tributary out: one of them is what is looked for");
    }
  }

  private static void refuse(
      OptionReader reader, boolean fits, String option, Object given, String roles) {
    if (!fits && given != null) {
      reader.misplaced(option, "is for " + roles + " only");
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
        reader.misplaced(option(role), "a length is named before it already: leave one out");
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
      reader.misplaced(
          "--shear", "depth is for one span under even load without notch, not for a person");
    }
  }

  Assumptions.Post post(OptionReader reader, Tables tables) {
    boolean held = chosen(reader, "--top", or(top, "free"), "held", "free");
    double pushLb = reader.amount("--push", QuantityKind.FORCE, or(push, "0 lb"));
    if (held && pushLb > 0) {
      reader.misplaced(
          "--push", "a post whose top is held is not pushed: leave it or --top held out");
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

  private static String or(String given, String otherwise) {
    return given == null ? otherwise : given;
  }

  private static List<String> or(List<String> given, String otherwise) {
    return given == null ? List.of(otherwise.split(",", -1)) : given;
  }
}
