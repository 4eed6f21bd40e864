package org.scantling.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Draws trials: each seed always the same one. */
final class Trials {
  /** What is changed. */
  enum Kind {
    /** Values alone, each for another that the reader takes: every such site has an answer. */
    VALID_SITE,
    SCRIBBLED_SITE,
    SCRIBBLED_YARD,
    HOUSE_ROWS
  }

  private static final Pattern BASE_OF = Pattern.compile("base: (base/\\S+)");
  private static final Path SCENARIOS = Path.of("scenarios");
  private static final String SITE = "site.paths";
  private static final String BASE = "base/base.paths";
  private static final String YARD = "yard.csv";
  private static final List<String> NAMES =
      List.of(
          "mower-lane",
          "metric-country",
          "everything-at-once",
          "sloping-path",
          "stone-terrace",
          "wisteria-court");
  private static final List<String> LISTS =
      List.of("cut-list", "buying", "set-out", "order", "climbers", "upkeep");

  private final Kind kind;
  private final long seed;
  private final Random random;
  private final Map<String, String> files = new LinkedHashMap<>();
  private final List<Edit> edits = new ArrayList<>();

  private Trials(Kind kind, long seed) {
    this.kind = kind;
    this.seed = seed;
    this.random = new Random(seed * 31 + kind.ordinal());
  }

  static Trial of(Kind kind, long seed) {
    return new Trials(kind, seed).draw();
  }

  private Trial draw() {
    switch (kind) {
      case VALID_SITE -> validSite(true);
      case SCRIBBLED_SITE -> scribbledSite();
      case SCRIBBLED_YARD -> scribbledYard();
      case HOUSE_ROWS -> houseRows();
    }
    return new Trial(seed, files, List.copyOf(edits), args());
  }

  private void validSite(boolean changed) {
    files.put(SITE, AnyValue.SITE);
    files.put(BASE, AnyValue.base(one(AnyValue.SHIPPED)));
    if (random.nextInt(3) == 0) {
      edits.add(new Leaf(SITE, "materials.market", "metric"));
    }
    int count = changed ? 1 + random.nextInt(7) : 0;
    for (int i = 0; i < count; i++) {
      boolean ofBase = random.nextInt(5) < 3;
      edits.add(new AnyValue(random).leaf(ofBase ? BASE : SITE, ofBase));
    }
  }

  private void scribbledSite() {
    String site = text(SCENARIOS.resolve(one(NAMES) + ".yaml"));
    Matcher base = BASE_OF.matcher(site);
    if (!base.find()) {
      throw new IllegalStateException("a scenario without a base: " + site);
    }
    files.put("site.yaml", site.replaceAll("base: base/\\S+", "base: base/base.yaml"));
    files.put("base/base.yaml", text(SCENARIOS.resolve(base.group(1))));
    slips(random.nextBoolean() ? "site.yaml" : "base/base.yaml");
  }

  private void scribbledYard() {
    validSite(false);
    files.put(
        YARD,
        "size,length,price\n4x4,12 ft,18.40\n2x4,10 ft,6.2\n2x6,12 ft,\n4x4,8 ft,11\n2x4,16 ft,9\n");
    slips(YARD);
  }

  private void slips(String file) {
    for (int i = random.nextInt(4); i >= 0; i--) {
      edits.add(Slip.any(file, random));
    }
  }

  private void houseRows() {
    validSite(false);
    for (int i = random.nextInt(3); i >= 0; i--) {
      HouseTable table = HouseTable.any(random);
      files.putIfAbsent("house/" + table.name(), table.heading() + "\n");
      edits.add(new Row("house/" + table.name(), table.row(random)));
    }
    if (random.nextInt(8) == 0) {
      slips(new ArrayList<>(files.keySet()).get(files.size() - 1));
    }
  }

  private List<String> args() {
    String site = "@site.yaml";
    List<String> args = new ArrayList<>(List.of("propose", site));
    if (random.nextInt(12) == 0) {
      args = new ArrayList<>(List.of("check", site, "--design", "@base/base.yaml"));
    } else if (kind == Kind.SCRIBBLED_YARD) {
      args.addAll(List.of("--yard", "@" + YARD, "--list", one(LISTS)));
    } else if (random.nextInt(2) == 0) {
      args.addAll(List.of("--list", one(LISTS)));
    } else if (random.nextInt(3) == 0) {
      args.addAll(List.of("--format", one(List.of("json", "markdown", "yaml"))));
    }
    if (kind == Kind.HOUSE_ROWS) {
      args.addAll(List.of("--house-rules", "@house"));
    }
    return args;
  }

  private String one(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
