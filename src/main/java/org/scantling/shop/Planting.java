package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.tables.ClimberRow;
import org.scantling.tables.VineRow;

/** Works out where climbers are planted and how their wires run. */
final class Planting {
  private static final String NOTHING = "none";

  private final Built built;
  private final Geometry geometry;

  Planting(Built built) {
    this.built = built;
    this.geometry = built.geometry();
  }

  Climbers climbers() {
    List<Climbers.WireRun> runs = new ArrayList<>();
    ClimberRow way = wiring();
    if (way.run().equals("upright")) {
      uprightWires(way, runs);
    } else if (way.run().equals("level")) {
      levelWires(way, runs);
    }
    return new Climbers(plants(), runs, words());
  }

  /**
   * Climbers in the order of the site file; the one the proposal was sized for where it has none.
   */
  private List<VineRow> vines() {
    List<VineRow> vines = new ArrayList<>();
    for (Site.Planting planting : built.planting()) {
      vines.add(built.tables().vine(planting.vine()));
    }
    if (vines.isEmpty()) {
      vines.add(built.tables().vine(built.vine()));
    }
    vines.removeIf(vine -> vine.id().equals(NOTHING));
    return vines;
  }

  private ClimberRow row(VineRow vine) {
    return built.tables().climbers().row(vine.climbsBy());
  }

  /** The wires are those of the climber that wants them closest. */
  private ClimberRow wiring() {
    return vines().stream()
        .map(this::row)
        .filter(row -> !row.run().equals("none"))
        .min(java.util.Comparator.comparingDouble(ClimberRow::apartIn))
        .orElse(built.tables().climbers().row("nothing"));
  }

  private List<String> words() {
    Set<String> words = new LinkedHashSet<>();
    for (VineRow vine : vines()) {
      words.add(name(vine) + ": " + row(vine).words() + ".");
    }
    return List.copyOf(words);
  }

  static String name(VineRow vine) {
    return vine.id().replace('-', ' ');
  }

  /** One at a post, in turn, no closer along a row than the heaviest of them asks. */
  private List<Climbers.Plant> plants() {
    List<Climbers.Plant> plants = new ArrayList<>();
    List<VineRow> vines = vines();
    if (vines.isEmpty()) {
      return plants;
    }
    int step = vines.stream().mapToInt(this::postsApart).max().orElseThrow();
    for (int row = 0; row < 2; row++) {
      for (int post = 0; post <= geometry.plan().bays(); post += step) {
        VineRow vine = vines.get(plants.size() % vines.size());
        plants.add(
            new Climbers.Plant(
                Stakes.name(row, post), name(vine), built.shop("planting.from-post")));
      }
    }
    return plants;
  }

  private int postsApart(VineRow vine) {
    double apartIn = built.shop("plants.apart-" + vine.weightClass());
    return Math.max(1, (int) Math.ceil(apartIn / geometry.plan().bayIn() - 1e-9));
  }

  /**
   * From rail to header in every bay: one length of wire goes up through the rail, over an eye in
   * the header, down through the rail again, and so on. Pickets stand for wires where they are.
   */
  private void uprightWires(ClimberRow way, List<Climbers.WireRun> runs) {
    List<Double> places = uprightPlaces(way);
    if (places.isEmpty()) {
      return;
    }
    boolean railed = built.has("rail");
    double riseIn = upperIn() - lowerIn(way);
    double acrossIn = places.get(places.size() - 1) - places.get(0);
    double lengthIn = places.size() * riseIn + acrossIn + 2 * built.shop("wire.tail");
    int each = railed ? 1 : 2;
    runs.add(
        new Climbers.WireRun(
            "each bay of each row",
            "upright",
            places.size(),
            places,
            built.tape().nearest(lengthIn),
            places.size() * each,
            railed ? places.size() : 0,
            2 * geometry.plan().bays()));
  }

  private List<Double> uprightPlaces(ClimberRow way) {
    int pickets = Pickets.inABay(built);
    double gapIn = geometry.plan().bayIn() / (pickets + 1);
    int inAGap = (int) Math.ceil(gapIn / way.apartIn() - 1e-9) - 1;
    List<Double> places = new ArrayList<>();
    for (int gap = 0; gap <= pickets; gap++) {
      for (int wire = 1; wire <= inAGap; wire++) {
        places.add(built.tape().nearest(gapIn * (gap + (double) wire / (inAGap + 1))));
      }
    }
    return places;
  }

  /** Along the whole row, on the outer faces of the posts, in front of the pickets. */
  private void levelWires(ClimberRow way, List<Climbers.WireRun> runs) {
    List<Double> heights = new ArrayList<>();
    double roomIn = upperIn() - lowerIn(way);
    int count = (int) Math.floor(roomIn / way.apartIn() + 1e-9);
    for (int wire = 1; wire <= count; wire++) {
      double stepIn = roomIn / (count + 1);
      heights.add(built.tape().nearest(lowerIn(way) + wire * stepIn));
    }
    if (heights.isEmpty()) {
      return;
    }
    int bays = geometry.plan().bays();
    // Level wires keep their height over the ground, so they fall with it.
    double stretch = Math.hypot(1, built.slopeRatio());
    double lengthIn = geometry.lengthIn() * stretch + 2 * built.shop("wire.tail");
    int between = (int) Math.ceil(geometry.plan().bayIn() / way.eyesApartIn() - 1e-9) - 1;
    runs.add(
        new Climbers.WireRun(
            "each row",
            "level",
            1,
            heights,
            built.tape().nearest(lengthIn),
            bays + 1 + bays * between,
            0,
            2 * heights.size()));
  }

  private double lowerIn(ClimberRow way) {
    if (!built.has("rail")) {
      return way.lowestIn();
    }
    double railTopIn =
        built.number(org.scantling.reasons.Question.RAIL_HEIGHT)
            + built.member("rail").depthIn() / 2;
    return Math.max(way.run().equals("level") ? way.lowestIn() : 0, railTopIn);
  }

  /** Underside of the header over the ground. */
  private double upperIn() {
    return built.paired()
        ? geometry.posts().heightIn() - geometry.headers().depthIn()
        : geometry.posts().heightIn() - geometry.headers().notchIn();
  }
}
