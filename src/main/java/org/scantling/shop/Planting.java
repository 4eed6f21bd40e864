package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.sayings.Sayings;
import org.scantling.tables.ClimberRow;
import org.scantling.tables.VineRow;

/** Works out where climbers are planted and how the wires of each run. */
final class Planting {
  private static final Sayings SAYINGS = Sayings.of("climbers");

  private static final String NOTHING = "none";

  private final Built built;
  private final Geometry geometry;
  private final Wiring wiring;

  /** Bays of one row, side by side, under one climber. */
  private record Stretch(int row, int fromBay, int toBay, VineRow vine) {
    int bays() {
      return toBay - fromBay + 1;
    }

    String name() {
      return SAYINGS.say(
          "where.stretch", "from", Stakes.name(row, fromBay), "to", Stakes.name(row, toBay + 1));
    }
  }

  Planting(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.wiring = new Wiring(built);
  }

  Climbers climbers() {
    List<Climbers.Plant> plants = plants();
    return new Climbers(plants, runs(), words());
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

  private List<String> words() {
    Set<String> words = new LinkedHashSet<>();
    for (VineRow vine : vines()) {
      words.add(SAYINGS.say("how", "climber", name(vine), "words", row(vine).words()));
    }
    if (vines().stream().map(this::row).distinct().count() > 1) {
      words.add(SAYINGS.say("how.apart"));
    }
    if (wiring.moved()) {
      words.add(SAYINGS.say("how.moved"));
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
    for (int row = 0; row < 2 && !vines.isEmpty(); row++) {
      for (int post = 0; post <= geometry.plan().bays(); post += step()) {
        plants.add(
            new Climbers.Plant(
                Stakes.name(row, post),
                name(planted(row, post)),
                built.shop("planting.from-post")));
      }
    }
    return plants;
  }

  /** Posts from one plant to the next. */
  private int step() {
    return vines().stream().mapToInt(this::postsApart).max().orElseThrow();
  }

  /** What grows at a post at which something is planted. */
  private VineRow planted(int row, int post) {
    int inARow = geometry.plan().bays() / step() + 1;
    List<VineRow> vines = vines();
    return vines.get((row * inARow + post / step()) % vines.size());
  }

  private int postsApart(VineRow vine) {
    double apartIn = built.shop("plants.apart-" + vine.weightClass());
    double bayIn = geometry.lengthIn() / geometry.plan().bays();
    return Math.max(1, (int) Math.ceil(apartIn / bayIn - 1e-9));
  }

  /** Every bay belongs to the plant at its first post, or to the one before. */
  private List<Stretch> stretches() {
    List<Stretch> stretches = new ArrayList<>();
    if (vines().isEmpty()) {
      return stretches;
    }
    for (int row = 0; row < 2; row++) {
      for (int bay = 0; bay < geometry.plan().bays(); bay++) {
        VineRow vine = planted(row, bay / step() * step());
        Stretch before = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
        if (before != null && before.row() == row && before.vine().equals(vine)) {
          stretches.set(stretches.size() - 1, new Stretch(row, before.fromBay(), bay, vine));
        } else {
          stretches.add(new Stretch(row, bay, bay, vine));
        }
      }
    }
    return stretches;
  }

  /** Stretches in which one run is like the next: where bays differ, each bay for itself. */
  private List<Stretch> alike() {
    return geometry.plan().along().even()
        ? stretches()
        : stretches().stream().flatMap(this::bayByBay).toList();
  }

  private Stream<Stretch> bayByBay(Stretch all) {
    return row(all.vine()).run().equals("upright")
        ? IntStream.rangeClosed(all.fromBay(), all.toBay())
            .mapToObj(bay -> new Stretch(all.row(), bay, bay, all.vine()))
        : Stream.of(all);
  }

  /** Runs alike are told once, with the places where they hang. */
  private List<Climbers.WireRun> runs() {
    Map<Climbers.WireRun, List<Stretch>> alike = new LinkedHashMap<>();
    for (Stretch each : alike()) {
      ClimberRow way = row(each.vine());
      int bays = way.run().equals("upright") ? 1 : each.bays();
      wiring
          .run(way, name(each.vine()), each.row(), each.fromBay(), bays)
          .ifPresent(run -> alike.computeIfAbsent(run, key -> new ArrayList<>()).add(each));
    }
    List<Climbers.WireRun> runs = new ArrayList<>();
    alike.forEach(
        (run, places) -> {
          boolean upright = run.way().equals("upright");
          int times = places.stream().mapToInt(each -> upright ? each.bays() : 1).sum();
          runs.add(run.hung(where(places, upright), run.times() * times));
        });
    return runs;
  }

  private String where(List<Stretch> places, boolean upright) {
    int bays = places.stream().mapToInt(Stretch::bays).sum();
    if (bays == 2 * geometry.plan().bays()) {
      return SAYINGS.say(upright ? "where.each-bay" : "where.each-row");
    }
    return String.join(", ", places.stream().map(Stretch::name).toList());
  }
}
