package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.design.Geometry;
import org.scantling.design.KneeBraces;
import org.scantling.design.TopLine;
import org.scantling.reasons.Question;
import org.scantling.tables.ClimberRow;

/** One run of wire for one climber, clear of the bolts. */
final class Wiring {
  private static final double HAIR = 1e-6;

  private final Built built;
  private final Geometry geometry;
  private final TopLine top;
  private boolean moved;

  Wiring(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.top = built.top();
  }

  /** True where a wire that was worked out hangs elsewhere for the sake of a bolt. */
  boolean moved() {
    return moved;
  }

  /** A run in one bay, or along several; its place and number are still to be told. */
  Optional<Climbers.WireRun> run(ClimberRow way, String vine, int row, int fromBay, int bays) {
    return switch (way.run()) {
      case "upright" -> upright(way, vine, row, fromBay);
      case "level" -> level(way, vine, row, fromBay, bays);
      default -> Optional.empty();
    };
  }

  /**
   * From rail to header: one length of wire goes up through the rail, over an eye in the header,
   * down through the rail again, and so on. Pickets stand for wires where they are.
   */
  private Optional<Climbers.WireRun> upright(ClimberRow way, String vine, int row, int bay) {
    List<Double> places = uprightPlaces(way, bay);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    boolean railed = built.has("rail");
    double riseIn = upperIn(row) - lowerIn(way);
    double acrossIn = places.get(places.size() - 1) - places.get(0);
    double lengthIn = places.size() * riseIn + acrossIn + 2 * built.shop("wire.tail");
    return Optional.of(
        new Climbers.WireRun(
            "",
            vine,
            new Climbers.Parts(way.wire(), way.eye()),
            "upright",
            places.size(),
            places,
            built.tape().nearest(lengthIn),
            places.size() * (railed ? 1 : 2),
            railed ? places.size() : 0,
            1));
  }

  private List<Double> uprightPlaces(ClimberRow way, int bay) {
    List<Double> ends = new Pickets(built).dividing(bay);
    double gapIn = ends.get(1) - ends.get(0);
    int inAGap = (int) Math.ceil(gapIn / way.apartIn() - 1e-9) - 1;
    List<Double> places = new ArrayList<>();
    for (int gap = 0; gap < ends.size() - 1; gap++) {
      for (int wire = 1; wire <= inAGap; wire++) {
        double wantedIn = ends.get(gap) + gapIn * wire / (inAGap + 1);
        places.add(clear(wantedIn, headsIn(bay), ends.get(gap), ends.get(gap + 1)));
      }
    }
    return places;
  }

  /** Along the row, on the outer faces of the posts, in front of the pickets. */
  private Optional<Climbers.WireRun> level(
      ClimberRow way, String vine, int row, int fromBay, int bays) {
    List<Double> heights = new ArrayList<>();
    double roomIn = upperIn(row) - lowerIn(way);
    int count = (int) Math.floor(roomIn / way.apartIn() + 1e-9);
    for (int wire = 1; wire <= count; wire++) {
      double wantedIn = lowerIn(way) + wire * roomIn / (count + 1);
      heights.add(clear(wantedIn, feetIn(row, fromBay, bays), lowerIn(way), upperIn(row)));
    }
    if (heights.isEmpty()) {
      return Optional.empty();
    }
    // Level wires keep their height over the ground, so they fall with it.
    double stretch = Math.hypot(1, built.slopeRatio());
    double overIn = built.top().alongIn(fromBay + bays) - built.top().alongIn(fromBay);
    double lengthIn = overIn * stretch + 2 * built.shop("wire.tail");
    int between =
        IntStream.range(fromBay, fromBay + bays)
            .map(bay -> eyesBetween(geometry.plan().along().lengthIn(bay), way))
            .sum();
    return Optional.of(
        new Climbers.WireRun(
            "",
            vine,
            new Climbers.Parts(way.wire(), way.eye()),
            "level",
            1,
            heights,
            built.tape().nearest(lengthIn),
            bays + 1 + between,
            0,
            heights.size()));
  }

  private static int eyesBetween(double bayIn, ClimberRow way) {
    return (int) Math.ceil(bayIn / way.eyesApartIn() - 1e-9) - 1;
  }

  /** The nearest place to the one that is wanted that keeps clear of every bolt. */
  private double clear(double wantedIn, List<Double> boltsIn, double fromIn, double toIn) {
    double clearIn = built.shop("wire.clear-of-bolts");
    List<Double> tried = new ArrayList<>(List.of(wantedIn));
    for (double boltIn : boltsIn) {
      tried.add(boltIn - clearIn);
      tried.add(boltIn + clearIn);
    }
    double bestIn =
        tried.stream()
            .filter(each -> each > fromIn && each < toIn)
            .filter(each -> boltsIn.stream().allMatch(b -> Math.abs(b - each) > clearIn - HAIR))
            .min((a, b) -> Double.compare(Math.abs(a - wantedIn), Math.abs(b - wantedIn)))
            .orElse(wantedIn);
    moved |= bestIn != wantedIn;
    return built.tape().nearest(bestIn);
  }

  /** Bolts of brace heads in the header over a bay, from its first post. */
  private List<Double> headsIn(int bay) {
    List<Double> heads = new ArrayList<>();
    if (built.has("brace")) {
      for (KneeBraces.Along each : built.braces().along()) {
        int over = each.towards() > 0 ? each.post() : each.post() - 1;
        double headIn =
            built.top().alongIn(each.post())
                - built.top().alongIn(bay)
                + each.towards() * each.legIn();
        if (over == bay) {
          new Braces(built).offsUpIn().forEach(offIn -> heads.add(headIn + offIn));
        }
      }
    }
    return heads;
  }

  /** Bolts of brace feet in the posts of a stretch, over the ground at each. */
  private List<Double> feetIn(int row, int fromBay, int bays) {
    List<Double> feet = new ArrayList<>();
    if (built.has("brace")) {
      Braces braces = new Braces(built);
      for (int post = fromBay; post <= fromBay + bays; post++) {
        List<Double> middles = new ArrayList<>();
        middles.add(braces.headAcrossUpIn(post) - built.braces().legIn());
        for (KneeBraces.Along each : built.braces().along()) {
          if (each.post() == post) {
            middles.add(each.footUpIn());
          }
        }
        for (double middleIn : middles) {
          double overGroundIn = middleIn - top.groundIn(row, post);
          braces.offsUpIn().forEach(offIn -> feet.add(overGroundIn + offIn));
        }
      }
    }
    return feet;
  }

  private double lowerIn(ClimberRow way) {
    if (!built.has("rail")) {
      return way.lowestIn();
    }
    double railTopIn = built.number(Question.RAIL_HEIGHT) + built.member("rail").depthIn() / 2;
    return Math.max(way.run().equals("level") ? way.lowestIn() : 0, railTopIn);
  }

  /** Underside of the lowest header over the ground at any post of a row. */
  private double upperIn(int row) {
    double underIn = built.paired() ? geometry.headers().depthIn() : geometry.headers().notchIn();
    double shorterIn = row == top.lowRow() ? 0 : top.dropIn();
    return geometry.posts().heightIn() - top.stepIn() - shorterIn - underIn;
  }
}
