package org.scantling.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scantling.cli.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Random sites before the outside judge: nothing unsafe is proposed, every check is within three
 * hundredths of the judge's or its difference is a line of differences.csv, and what is proposed
 * adds up. {@code -Djudge=5000} draws 5,000 sites, {@code -Djudge.from=N} begins with another.
 */
class JudgeTest {
  private static final double AGREES_RATIO = 0.03;

  /** Ratios are printed to three places and sags to a thousandth of an inch. */
  private static final double ROUNDING_RATIO = 0.003;

  private static final int SITES = Integer.getInteger("judge", 5);

  /** Lists are worked for one site in so many. */
  private static final int LISTED_EVERY = 7;

  private static final int FROM = Integer.getInteger("judge.from", 0);

  private final Differences differences = new Differences();
  private final List<String> faults = new ArrayList<>();
  private final Map<String, Integer> counts = new TreeMap<>();

  @TempDir Path folder;

  @Test
  void no_random_site_is_answered_unsafely_or_otherwise_than_the_judge_says() {
    for (int seed = FROM; seed < FROM + SITES; seed++) {
      RandomSite site = RandomSite.of(seed);
      Run run = Run.of("propose", site.writtenTo(folder).toString(), "--format", "json");
      counts.merge("exit " + run.status(), 1, Integer::sum);
      if (run.status() == 0) {
        JsonNode proposal = JsonMapper.shared().readTree(run.out());
        judge("seed " + seed, proposal, Asked.of(site.site()));
        if (seed % LISTED_EVERY == 0) {
          lists("seed " + seed, proposal);
        }
      } else if (run.status() != 3) {
        faults.add("seed " + seed + ": exit " + run.status() + " " + run.err());
      }
    }
    assertThat(String.join("\n", faults)).as("%s sites: %s", SITES, counts).isEmpty();
    assertThat(counts.get("exit 0")).isGreaterThan(SITES / 3);
  }

  @Test
  void no_shipped_scenario_is_answered_unsafely_or_otherwise_than_the_judge_says()
      throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        Run run = Run.of("propose", file.toString(), "--format", "json");
        if (run.status() == 0) {
          judge(
              file.getFileName().toString(),
              JsonMapper.shared().readTree(run.out()),
              Asked.of(Files.readString(file)));
        }
      }
    }
    assertThat(String.join("\n", faults)).isEmpty();
  }

  @Test
  void no_walk_with_doubled_crossbeams_is_answered_unsafely_or_otherwise_than_the_judge_says() {
    String doubled = "src/test/resources/rulecases/sites/doubled-at-the-posts.yaml";
    judgePairs(doubled);
    judgePairs("src/test/resources/rulecases/sites/roses-on-paving.yaml");
    judgePairs("scenarios/stone-terrace.yaml", "preferences.crossbeams-at-posts=doubled");
    judgePairs(
        "scenarios/heavy-snow.yaml",
        "preferences.crossbeams-at-posts=doubled",
        "preferences.snow-share=open");
    assertThat(String.join("\n", faults)).isEmpty();
    assertThat(counts.get("pairs")).isEqualTo(4);
  }

  private void judgePairs(String site, String... settings) {
    List<String> asked = new ArrayList<>(List.of("propose", site, "--format", "json"));
    for (String setting : settings) {
      asked.addAll(List.of("--set", setting));
    }
    Run run = Run.of(asked.toArray(String[]::new)).endedWith(0);
    judge(
        site + " " + List.of(settings),
        JsonMapper.shared().readTree(run.out()),
        Asked.nothingMore());
  }

  @Test
  void every_explained_difference_names_its_cause_and_where_to_look_it_up() {
    assertThat(differences.lines())
        .isNotEmpty()
        .allSatisfy(
            line -> {
              assertThat(line.cause()).as(line.check()).isNotBlank();
              assertThat(line.source()).as(line.check()).isNotBlank();
              assertThat(line.from()).as(line.check()).isLessThan(line.to());
            });
  }

  private void lists(String where, JsonNode proposal) {
    new ListJudge(new Design(proposal), list("cut-list"))
        .faults(list("buying"), list("set-out"))
        .forEach(fault -> faults.add(where + ": " + fault));
  }

  private JsonNode list(String name) {
    String site = folder.resolve("site.yaml").toString();
    Run run = Run.of("propose", site, "--list", name, "--format", "json").endedWith(0);
    return JsonMapper.shared().readTree(run.out());
  }

  private void judge(String where, JsonNode proposal, Asked asked) {
    Judged judged = Judged.of(proposal, asked);
    judged.tags().forEach(tag -> counts.merge(tag, 1, Integer::sum));
    Design design = judged.design();
    double fallIn = asked.fallIn(design.layout("rowSpacingIn"));
    if (Math.abs(design.fallAcrossIn() - fallIn) > 0.01) {
      faults.add(where + ": the rows are apart by " + design.fallAcrossIn() + ", not " + fallIn);
    }
    HoleJudge.faults(design, asked).forEach(fault -> faults.add(where + ": " + fault));
    if (asked.rockIn() < Double.POSITIVE_INFINITY) {
      counts.merge(design.onRock() ? "on-rock" : "above-rock", 1, Integer::sum);
    }
    LayoutJudge.faults(judged.design()).forEach(fault -> faults.add(where + ": " + fault));
    judged
        .findings()
        .forEach(
            (check, worst) -> {
              if (worst.ratio() > 1 + AGREES_RATIO) {
                faults.add(where + ": unsafe, " + check + " " + worst + " " + judged.tags());
              }
              if (!agrees(judged, check, worst.ratio())) {
                faults.add(
                    "%s: %s is printed %.4f, the judge has %s %s"
                        .formatted(where, check, judged.printed(check), worst, judged.tags()));
              }
            });
  }

  private boolean agrees(Judged judged, String check, double judge) {
    double printed = check.startsWith("criteria.") ? 1 : judged.printed(check);
    if (Double.isNaN(printed)) {
      return judge < AGREES_RATIO || differences.explain(check, judged.tags(check), 0);
    }
    return Math.abs(printed - judge) <= Math.max(ROUNDING_RATIO, AGREES_RATIO * judge)
        || differences.explain(check, judged.tags(check), printed / judge);
  }
}
