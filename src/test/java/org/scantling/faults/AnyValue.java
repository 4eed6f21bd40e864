package org.scantling.faults;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Values that a site or a base may have, from one end of what the reader takes to the other. */
final class AnyValue {
  static final String SITE =
      """
      title = A walk between two beds
      base = base/base.yaml
      site.climate.frost-depth = 36 in
      site.climate.ground-snow = 25 psf
      site.climate.wind-speed = 110 mph
      site.climate.exposure = B
      site.soil = sandy-gravel
      walkway.length = 15 ft
      walkway.users = [ two-abreast ]
      planting = [ { vine: honeysuckle } ]
      """;
  static final List<String> SHIPPED =
      List.of("rose-gate", "hop-walk", "kiwi-court", "station-yard", "vineyard-porch");
  private static final Path BASES = Path.of("scenarios", "base");
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final String LENGTHS = "in|ft|m|mm";

  /** By path: the kinds of value, each {@code from..to unit}, or words with bars between them. */
  private static final Map<String, String> OF_SITE = new TreeMap<>();

  private static final Map<String, String> OF_BASE = new TreeMap<>();

  static {
    OF_SITE.put("site.climate.frost-depth", "0..110 in");
    OF_SITE.put("site.climate.ground-snow", "0..120 psf");
    OF_SITE.put("site.climate.wind-speed", "60..200 mph");
    OF_SITE.put("site.climate.exposure", "B|C|D");
    OF_SITE.put("site.soil", "bedrock|foliated-rock|sandy-gravel|sand|clay|");
    OF_SITE.put("site.slope", "0..30 %");
    OF_SITE.put("walkway.length", "24..4800 in");
    OF_SITE.put("walkway.bays", "1..60");
    OF_SITE.put("walkway.clear-width", "18..240 in");
    OF_SITE.put("walkway.headroom", "48..192 in");
    OF_SITE.put(
        "walkway.users",
        "[ one-person ]|[ wheelbarrow, two-abreast ]|[ { machine-width: 46 in } ]|"
            + "[ { machine-width: 6 in } ]|[ { machine-width: 240 in } ]|");
    OF_SITE.put(
        "planting",
        "[ { vine: none } ]|[ { vine: wisteria } ]|[ { vine: grape }, { vine: climbing-rose } ]|[]|"
            + "[ { vine: clematis }, { vine: wisteria } ]|");
    OF_SITE.put(
        "materials.species",
        "southern-pine|douglas-fir-larch|hem-fir|spruce-pine-fir|western-cedars|redwood|");
    OF_SITE.put("materials.grade", "Select-Structural|No.1|No.2|No.3|");
    OF_SITE.put("materials.market", "north-america|metric|");
    OF_SITE.put(
        "preferences.footing", "auto|embedded|concrete|gravel|tamped-soil|bracket|moment-base|");
    OF_SITE.put("preferences.header", "auto|on-top|paired|");
    OF_SITE.put("preferences.keep", "look|cost|members|");
    OF_SITE.put("preferences.basis", "published|proven|");
    OF_SITE.put("preferences.embedment-basis", "code|experience|");
    OF_SITE.put("preferences.risk-category", "I|II|");
    OF_SITE.put("preferences.snow-share", "open|full|");
    OF_SITE.put("preferences.largest-post", "4x4|6x6|8x8|95x95|2x6|");
    OF_SITE.put("preferences.largest-header", "2x6|2x8|4x6|4x10|45x145|");
    OF_SITE.put("preferences.largest-crossbeam", "2x4|2x6|2x10|4x6|");
    OF_SITE.put("preferences.crossbeams-at-posts", "auto|single|doubled|");
    String sizes =
        "2x4|2x6|2x8|2x10|2x12|4x4|4x6|4x8|6x6|8x8|45x95|45x145|45x195|95x95|45x220|120x120|95x145";
    OF_BASE.put("proven.slope", "0..30 %");
    OF_BASE.put("posts.size", sizes);
    OF_BASE.put("posts.row-spacing", "20..300 in");
    OF_BASE.put("posts.bay", "12..300 in");
    OF_BASE.put("posts.bays", "1..60");
    OF_BASE.put("posts.height", "36..240 in");
    OF_BASE.put("posts.embedment", "0..180 in");
    OF_BASE.put("posts.footing", "embedded|concrete|bracket|moment-base");
    OF_BASE.put("posts.backfill", "tamped-soil|gravel|concrete|");
    OF_BASE.put("posts.hole-diameter", "4..72 in");
    OF_BASE.put("headers.style", "on-top|paired");
    OF_BASE.put("headers.size", sizes);
    OF_BASE.put("headers.overhang", "0..120 in");
    OF_BASE.put("headers.notch", "0..12 in");
    OF_BASE.put("crossbeams.size", sizes);
    OF_BASE.put("crossbeams.count", "2..200");
    OF_BASE.put("crossbeams.overhang", "0..120 in");
    OF_BASE.put("crossbeams.notch", "0..12 in");
    OF_BASE.put(
        "crossbeams.end-cut",
        "{ kind: plumb, drop: 0 in, run: 0 in }|{ kind: curve, drop: 16 in, run: 48 in }|"
            + "{ kind: slant, drop: 0 in, run: 48 in }|");
    OF_BASE.put(
        "side-panels",
        "none|{ rail: 2x4, rail-height: 2 in, pickets: 0 }|{ rail: 4x4, rail-height: 75 in, pickets: 9 }|"
            + "{ rail: 2x6, rail-height: 40 in, pickets: 30 }|"
            + "{ rail: 45x95, rail-height: 81 in, pickets: 2 }|");
    OF_BASE.put(
        "braces",
        "none|{ size: 4x4, leg: 24 in }|{ size: 2x4, leg: 4 in }|{ size: 4x6, leg: 96 in }|");
  }

  private final Random random;

  AnyValue(Random random) {
    this.random = random;
  }

  /** A base that ships, one value a line by its path. */
  static String base(String name) {
    StringBuilder lines = new StringBuilder();
    lay(YAML.readTree(Trials.text(BASES.resolve(name + ".yaml"))), "", lines);
    return lines.toString();
  }

  private static void lay(JsonNode node, String path, StringBuilder lines) {
    if (node.isObject() && !OF_BASE.containsKey(path)) {
      node.propertyStream()
          .forEach(each -> lay(each.getValue(), below(path, each.getKey()), lines));
    } else {
      lines.append(path).append(" = ");
      lines.append(node.isString() ? node.asString() : node.toString()).append('\n');
    }
  }

  private static String below(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  Leaf leaf(String file, boolean ofBase) {
    Map<String, String> all = ofBase ? OF_BASE : OF_SITE;
    List<String> paths = List.copyOf(all.keySet());
    String path = paths.get(random.nextInt(paths.size()));
    return new Leaf(file, path, value(all.get(path)));
  }

  private String value(String kind) {
    if (kind.contains("..")) {
      return number(kind);
    }
    String[] words = kind.split("\\|", -1);
    return words[random.nextInt(words.length)];
  }

  /** Evenly by size of number, so that small ones come as often as large ones; and both ends. */
  private String number(String kind) {
    String[] parts = kind.split(" ");
    String[] ends = parts[0].split("\\.\\.");
    double low = Double.parseDouble(ends[0]);
    double high = Double.parseDouble(ends[1]);
    double amount =
        switch (random.nextInt(12)) {
          case 0 -> low;
          case 1 -> high;
          case 2, 3, 4, 5 -> low + (high - low) * random.nextDouble();
          default ->
              Math.max(low, Math.exp(random.nextDouble() * Math.log(1 + high - low)) + low - 1);
        };
    if (parts.length == 1) {
      return Long.toString(Math.round(amount));
    }
    return parts[1].equals("in") ? length(amount) : written(amount) + " " + parts[1];
  }

  private String length(double amountIn) {
    String[] units = LENGTHS.split("\\|");
    String unit = units[random.nextInt(units.length)];
    double perIn =
        switch (unit) {
          case "ft" -> 1 / 12.0;
          case "m" -> 0.0254;
          case "mm" -> 25.4;
          default -> 1;
        };
    return written(amountIn * perIn) + " " + unit;
  }

  private static String written(double amount) {
    return String.format(Locale.ROOT, "%.3f", amount);
  }
}
