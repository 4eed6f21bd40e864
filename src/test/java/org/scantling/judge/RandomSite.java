package org.scantling.judge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A site that a builder could meet, with a base of its own or one of those that ship.
 *
 * @param seed what it was drawn from
 * @param site the site file's text
 * @param base the base file's text; empty where a base that ships is used
 */
record RandomSite(long seed, String site, String base) {
  private static final JsonNode SCHEMA = schema();

  /** The longest bay that a file takes. */
  private static final int LONGEST_BAY_IN = 300;

  private static final List<String> SHIPPED =
      List.of(
          "rose-gate.yaml",
          "hop-walk.yaml",
          "kiwi-court.yaml",
          "station-yard.yaml",
          "vineyard-porch.yaml");
  private static final List<String> SPECIES =
      List.of(
          "southern-pine",
          "douglas-fir-larch",
          "hem-fir",
          "spruce-pine-fir",
          "western-cedars",
          "redwood");
  private static final List<String> VINES =
      List.of(
          "none",
          "clematis",
          "climbing-rose",
          "honeysuckle",
          "jasmine",
          "grape",
          "hops",
          "wisteria",
          "kiwi",
          "trumpet-creeper");
  private static final List<String> SOILS =
      List.of("sandy-gravel", "sandy-gravel", "sand", "sand", "clay", "foliated-rock");

  static RandomSite of(long seed) {
    Random random = new Random(seed * 7919 + 17);
    boolean metric = random.nextInt(8) == 0;
    int shipped = random.nextInt(2 * SHIPPED.size());
    boolean ours = !metric && shipped < SHIPPED.size();
    String base = ours ? SHIPPED.get(shipped) : "base.yaml";
    boolean gathered = random.nextInt(6) == 0;
    return new RandomSite(
        seed,
        site(random, new Random(seed + 71), seed, base, metric, gathered),
        ours ? "" : base(random, metric));
  }

  private static String site(
      Random random, Random more, long seed, String base, boolean metric, boolean gathered) {
    StringBuilder text = new StringBuilder("title: Drawn by lot\nbase: " + base + "\nsite:\n");
    text.append("  climate: { frost-depth: ").append(6 * random.nextInt(10));
    text.append(" in, ground-snow: ").append(random.nextInt(11) * 5);
    text.append(" psf, wind-speed: ").append(95 + random.nextInt(8) * 5);
    text.append(" mph, exposure: ").append(one(random, List.of("B", "B", "B", "C", "C", "D")));
    if (known("roof-live") && more.nextInt(6) == 0) {
      text.append(", roof-live: 20 psf");
    }
    text.append(" }\n  soil: ").append(one(random, SOILS)).append('\n');
    if (known("isolated-posts") && more.nextInt(2) == 0) {
      text.append("  isolated-posts: ").append(more.nextBoolean() ? "yes\n" : "no\n");
    }
    int slope = random.nextInt(5);
    if (slope == 0) {
      text.append("  slope: ").append(1 + random.nextInt(7)).append(" %\n");
    }
    across(mixed(seed, 1511)).ifPresent(text::append);
    if (known("rock-at") && mixed(seed, 3307).nextInt(6) == 0) {
      text.append("  rock-at: ").append(18 + mixed(seed, 4001).nextInt(54)).append(" in\n");
    }
    double length = 40 + 480 * Math.pow(random.nextDouble(), 2.2);
    text.append("walkway:\n  length: ").append(Math.round(length)).append(" in\n");
    Optional<String> bays = uneven(new Random(seed + 907), (int) Math.round(length));
    bays.or(() -> free(mixed(seed, 2203), (int) Math.round(length))).ifPresent(text::append);
    if (random.nextBoolean()) {
      text.append("  clear-width: ").append(36 + 3 * random.nextInt(24)).append(" in\n");
    }
    if (random.nextBoolean()) {
      text.append("  headroom: ").append(80 + 2 * random.nextInt(12)).append(" in\n");
    }
    text.append("planting: [ { vine: ").append(one(random, VINES)).append(" } ]\n");
    text.append("materials: { species: ").append(one(random, SPECIES)).append(", grade: ");
    text.append(one(random, List.of("No.2", "No.2", "No.1", "Select-Structural", "No.3")));
    if (known("materials.posts") && more.nextInt(4) == 0) {
      text.append(", posts: { grade: No.1 }, crossbeams: { grade: No.2 }");
    }
    text.append(metric ? ", market: metric }\n" : " }\n");
    text.append("preferences: { footing: ");
    String footing = one(random, List.of("auto", "auto", "embedded", "concrete", "bracket"));
    boolean onBase = footing.equals("bracket") && more.nextBoolean();
    text.append(onBase ? "moment-base" : filled(footing, mixed(seed, 5003)));
    text.append(", header: ").append(one(random, List.of("auto", "on-top", "paired")));
    text.append(", keep: ").append(one(random, List.of("look", "look", "cost", "members")));
    if (footing.equals("bracket") && more.nextInt(3) == 0) {
      text.append(", crossbeams-at-posts: doubled");
    }
    if (!metric) {
      largest(mixed(seed, 6007)).ifPresent(text::append);
    }
    return text.append(gathered ? ", risk-category: II }\n" : " }\n").toString();
  }

  /** Of posts that are asked for in the ground, some in a fill that is asked for too. */
  private static String filled(String footing, Random random) {
    return footing.equals("embedded") && known("largest-post")
        ? one(random, List.of("embedded", "gravel", "tamped-soil"))
        : footing;
  }

  /** On every eighth site one member is held down. */
  private static Optional<String> largest(Random random) {
    List<String> wishes =
        List.of(
            "post: 4x4",
            "post: 6x6",
            "header: 2x10",
            "header: 4x8",
            "crossbeam: 2x6",
            "crossbeam: 2x8");
    return known("largest-post") && random.nextInt(8) == 0
        ? Optional.of(", largest-" + one(random, wishes))
        : Optional.empty();
  }

  /** Of neighboring seeds the first number drawn is nearly the same: these are far apart. */
  private static Random mixed(long seed, int of) {
    return new Random((seed * 31 + of) * 0x9E3779B97F4A7C15L);
  }

  /** On every fourth site one row lower than the other, by a share or by inches. */
  private static Optional<String> across(Random random) {
    if (!known("cross-slope") || random.nextInt(4) > 0) {
      return Optional.empty();
    }
    int sign = random.nextInt(3) == 0 ? -1 : 1;
    return Optional.of(
        random.nextInt(3) == 0
            ? "  cross-slope: " + sign * (1 + random.nextInt(24)) + " in\n"
            : "  cross-slope: " + sign * (1 + random.nextInt(20)) + " %\n");
  }

  /** On one walk in eight a stretch in which no post may stand. */
  private static Optional<String> free(Random random, int lengthIn) {
    if (!known("no-post") || random.nextInt(8) > 0 || lengthIn < 120) {
      return Optional.empty();
    }
    int from = 24 + random.nextInt(lengthIn - 84);
    int to = Math.min(lengthIn - 24, from + 12 + random.nextInt(48));
    return Optional.of("  no-post: [ { from: " + from + " in, to: " + to + " in } ]\n");
  }

  /** Of every fifth walk that is long enough, bays of which no two need be alike. */
  private static Optional<String> uneven(Random random, int lengthIn) {
    int bays = 2 + random.nextInt(4);
    if (random.nextInt(5) > 0 || lengthIn < bays * 40) {
      return Optional.empty();
    }
    List<Integer> each = new ArrayList<>();
    int left = lengthIn;
    for (int i = bays; i > 1; i--) {
      int even = left / i;
      int bay = Math.max(30, (int) (even * (0.7 + 0.6 * random.nextDouble())));
      each.add(bay);
      left -= bay;
    }
    each.add(left);
    if (each.stream().anyMatch(bay -> bay > LONGEST_BAY_IN)) {
      return Optional.empty();
    }
    String told = each.stream().map(bay -> bay + " in").collect(Collectors.joining(", "));
    return Optional.of("  bays: [ " + told + " ]\n");
  }

  private static String base(Random random, boolean metric) {
    boolean paired = random.nextInt(3) == 0;
    String post = metric ? "95x95" : paired || random.nextInt(3) == 0 ? "6x6" : "4x4";
    if (metric && paired) {
      post = "145x145";
    }
    int bays = 1 + random.nextInt(2);
    int perBay = 3 + random.nextInt(3);
    int bay = 40 + 2 * random.nextInt(16);
    String header =
        metric
            ? paired ? "45x195" : "95x95"
            : paired ? one(random, List.of("2x6", "2x8")) : post.equals("6x6") ? "6x6" : "4x4";
    String crossbeam = metric ? "45x95" : one(random, List.of("2x4", "2x4", "2x6", "2x6", "2x8"));
    double notch = one(random, List.of(0.375, 0.5, 0.5));
    return String.format(
        Locale.ROOT,
        """
        title: A base drawn by lot
        proven:
          built: 2014
          climate: { frost-depth: 36 in, ground-snow: 25 psf, wind-speed: 110 mph, exposure: B }
          soil: sandy-gravel
          vine: honeysuckle
        posts:
          size: %s
          row-spacing: %d in
          bay: %d in
          bays: %d
          height: %d in
          embedment: %d in
          footing: embedded
          backfill: %s
          hole-diameter: %d in
        headers: { style: %s, size: %s, overhang: %d in, notch: %s in }
        crossbeams:
          size: %s
          count: %d
          overhang: %d in
          notch: %s in
          end-cut: { kind: plumb, drop: 2 in, run: 2 in }
        side-panels: { rail: %s, rail-height: %d in, pickets: %d }
        braces: none
        """,
        post,
        52 + 2 * random.nextInt(16),
        bay,
        bays,
        80 + random.nextInt(10),
        30 + 2 * random.nextInt(8),
        one(random, List.of("tamped-soil", "gravel", "concrete")),
        16 + 2 * random.nextInt(4),
        paired ? "paired" : "on-top",
        header,
        8 + random.nextInt(7),
        paired ? "0" : "0.5",
        crossbeam,
        bays * perBay + 1 + (random.nextBoolean() ? 2 : 0),
        8 + random.nextInt(7),
        notch,
        metric ? "95x95" : one(random, List.of("2x4", "4x4")),
        20 + 2 * random.nextInt(6),
        random.nextInt(4));
  }

  /** Whether the site file has this key by its published schema. */
  private static boolean known(String key) {
    JsonNode at = SCHEMA;
    for (String part : key.split("\\.")) {
      at = at.findValue(part);
      if (at == null) {
        return false;
      }
    }
    return true;
  }

  private static JsonNode schema() {
    try {
      String file = "src/main/resources/org/scantling/schema/site.schema.json";
      return JsonMapper.shared().readTree(Files.readString(Path.of(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <T> T one(Random random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Writes it down beside its base; returns the site file. */
  Path writtenTo(Path folder) {
    try {
      Path file = folder.resolve("site.yaml");
      for (String name : SHIPPED) {
        if (!Files.exists(folder.resolve(name))) {
          Files.copy(Path.of("scenarios", "base", name), folder.resolve(name));
        }
      }
      if (!base.isEmpty()) {
        Files.writeString(folder.resolve("base.yaml"), base);
      }
      return Files.writeString(file, site);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
