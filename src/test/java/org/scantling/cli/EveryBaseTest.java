package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Every base that is shipped: it stands where it stands, and can be built anew elsewhere. */
class EveryBaseTest {
  private static final YAMLMapper YAML = new YAMLMapper();

  /** What a drawing without a place of its own is held against. */
  private static final String ANYWHERE =
      "{ frost-depth: 30 in, ground-snow: 20 psf, wind-speed: 110 mph, exposure: B }";

  /** Stands shallower than published, which is what its scenario is about. */
  private static final String BY_ITS_RECORD = "station-yard.yaml";

  /** Every one of them moves one or two demands away from the base's own. */
  private static final List<List<String>> DEMANDS =
      List.of(
          List.of("walkway.length=30 ft"),
          List.of("walkway.clear-width=8 ft"),
          List.of("site.climate.frost-depth=60 in"),
          List.of("site.climate.ground-snow=50 psf"),
          List.of("site.climate.wind-speed=125 mph", "site.climate.exposure=C"),
          List.of("site.slope=5 %"),
          List.of("planting=[ { vine: wisteria } ]"),
          List.of("preferences.footing=concrete", "walkway.length=18 ft"),
          List.of("materials.market=metric", "walkway.length=6 m"));

  @TempDir private Path folder;

  static Stream<Path> bases() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios/base"))) {
      return files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("bases")
  void a_base_passes_its_own_checks_at_its_own_place(Path base) throws IOException {
    if (base.endsWith(BY_ITS_RECORD)) {
      return;
    }
    Run run = Run.of("check", home(base), "--design", base.toString(), "--format", "json");
    JsonNode review = JsonMapper.shared().readTree(run.endedWith(0).out());

    assertThat(review.get("status").asString()).as(run.out()).isEqualTo("passes");
    assertThat(review.get("checks")).hasSizeGreaterThan(30);
    passes(base.toString(), review);
  }

  /** A third of the demands for each base, and all of them for all. */
  @ParameterizedTest
  @MethodSource("bases")
  void a_base_is_built_anew_for_a_demand_or_refused_with_a_reason(Path base) throws IOException {
    List<List<String>> some = new ArrayList<>();
    int first = bases().toList().indexOf(base) % 3;
    for (int demand = first; demand < DEMANDS.size(); demand += 3) {
      some.add(DEMANDS.get(demand));
    }
    isBuiltAnew(base, some);
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("bases")
  void a_base_is_built_anew_for_every_demand_or_refused_with_a_reason(Path base)
      throws IOException {
    isBuiltAnew(base, DEMANDS);
  }

  private void isBuiltAnew(Path base, List<List<String>> demands) throws IOException {
    String home = home(base);
    int proposed = 0;
    for (List<String> demand : demands) {
      Run run = Run.of(args(home, demand, "--format", "json"));
      assertThat(run.status()).as("%s %s %s", base, demand, run.err()).isIn(0, 3);
      if (run.status() == 0) {
        proposed++;
        String where = base + " " + demand;
        passes(where, JsonMapper.shared().readTree(run.out()));
        Run.of(args(home, demand, "--list", "cut-list")).endedWith(0);
        Run.of(args(home, demand, "--list", "buying")).endedWith(0);
        passesAsDesign(where, home, demand);
      }
    }
    assertThat(proposed).as(base.toString()).isGreaterThan(demands.size() / 2);
  }

  /** A proposal is a base again: as a design file it passes where it was proposed for. */
  private void passesAsDesign(String where, String home, List<String> demand) throws IOException {
    Path design = folder.resolve("design.yaml");
    Files.writeString(design, Run.of(args(home, demand, "--format", "yaml")).endedWith(0).out());
    String[] args = args(home, demand, "--format", "json", "--design", design.toString());
    args[0] = "check";
    passes(where, JsonMapper.shared().readTree(Run.of(args).endedWith(0).out()));
  }

  private static void passes(String where, JsonNode answer) {
    for (JsonNode each : answer.get("checks")) {
      assertThat(each.get("ratio").asDouble())
          .as("%s: %s", where, each.get("id"))
          .isLessThanOrEqualTo(each.get("limitRatio").asDouble() + 0.0005);
    }
  }

  private static String[] args(String site, List<String> demand, String... more) {
    Stream<String> sets = demand.stream().flatMap(each -> Stream.of("--set", each));
    return Stream.of(Stream.of("propose", site), sets, Stream.of(more))
        .flatMap(each -> each)
        .toArray(String[]::new);
  }

  /** A site file for the place where the base stands, as long as the base is. */
  private String home(Path base) throws IOException {
    JsonNode design = YAML.readTree(Files.readString(base));
    JsonNode proven = design.path("proven");
    JsonNode posts = design.get("posts");
    String[] bay = posts.get("bay").asString().split(" ");
    int bays = posts.get("bays").asInt();
    boolean metric = bay[1].equals("mm");
    String site =
        """
        title: At home
        base: %s
        site:
          climate: %s
          soil: %s
          slope: %s
        walkway: { length: %s %s }
        planting: [ { vine: %s } ]
        materials: { market: %s }
        """
            .formatted(
                base.toAbsolutePath(),
                proven.isMissingNode() ? ANYWHERE : proven.get("climate").toString(),
                proven.path("soil").asString("sandy-gravel"),
                proven.path("slope").asString("0 %"),
                Double.parseDouble(bay[0]) * bays,
                bay[1],
                proven.path("vine").asString("grape"),
                metric ? "metric" : "north-america");
    Path file = folder.resolve("home.yaml");
    Files.writeString(file, site);
    return file.toString();
  }
}
