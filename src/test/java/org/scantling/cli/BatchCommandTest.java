package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class BatchCommandTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Path ROSE = Path.of("scenarios/base/rose-gate.yaml");

  private static final String SITE =
      "{\"id\": \"%s\", \"title\": \"Lane\", \"site\": {\"soil\": \"sand\", \"climate\":"
          + " {\"frost-depth\": \"%s\", \"ground-snow\": \"%s\", \"wind-speed\": \"105 mph\","
          + " \"exposure\": \"B\"}}, \"walkway\": {\"length\": \"6 ft\"}}%n";

  /** One that is proposed, one for an engineer, one that is wrong, one outside the rules. */
  private static final String SITES =
      SITE.formatted("a", "36 in", "20 psf")
          + SITE.formatted("b", "36 in", "300 psf")
          + SITE.formatted("c", "36", "20 psf")
          + "{\"id\": \"d\", \"roof\": \"solid\"}\n";

  private static final String TABLE =
      """
      id,title,site.soil,site.climate.frost-depth,site.climate.ground-snow,\
      site.climate.wind-speed,site.climate.exposure,walkway.length
      a,Lane,sand,36 in,20 psf,105 mph,B,6 ft
      b,Lane,sand,36 in,300 psf,105 mph,B,6 ft
      """;

  @TempDir private Path folder;
  private Path sites;

  @BeforeEach
  void write() throws IOException {
    sites = Files.writeString(folder.resolve("sites.ndjson"), SITES.replace("\r\n", "\n"));
  }

  @Test
  void each_line_is_answered_and_a_wrong_one_stops_nothing() {
    Run run = batch(sites, "--cores", "1").endedWith(ExitStatus.WRONG_INPUT);

    List<JsonNode> answers = nodes(run);
    assertThat(answers)
        .extracting(each -> each.get("line").asInt() + each.get("id").asString() + status(each))
        .containsExactly("1aproposed", "2bneeds-engineer", "3cerror", "4dneeds-engineer");
    JsonNode proposal = answers.get(0).get("proposal");
    assertThat(proposal.get("footings").get("depthIn").asDouble()).isGreaterThanOrEqualTo(36);
    assertThat(proposal.get("changes").size()).isPositive();
    assertThat(proposal.has("workings")).isFalse();
    assertThat(answers.get(1).get("refusal").get("broken").get("demand").asString())
        .isEqualTo("site.climate.ground-snow");
    JsonNode wrong = answers.get(2).get("error");
    assertThat(wrong.get("field").asString()).isEqualTo("site.climate.frost-depth");
    assertThat(wrong.get("found").asString()).isNotEmpty();
    assertThat(wrong.get("accepted").asString()).isNotEmpty();
    assertThat(wrong.get("text").asString()).contains("sites.ndjson:3: site.climate.frost-depth");
    assertThat(answers.get(3).get("refusal").get("outside").get(0).get("field").asString())
        .isEqualTo("roof");
    assertThat(run.err())
        .contains("1 of 4 lines cannot be used; the answer to each says why.")
        .doesNotContain("\r");
    assertThat(batch(sites, "--cores", "2").out()).isEqualTo(run.out());
  }

  @Test
  void a_table_is_answered_as_objects_are() throws IOException {
    Path table = Files.writeString(folder.resolve("sites.csv"), TABLE);
    Path objects = Files.writeString(folder.resolve("two"), "\n" + firstLines(SITES, 2));

    String rows = batch(table).endedWith(ExitStatus.ANSWERED).out();

    assertThat(rows)
        .isEqualTo(batch(objects).endedWith(ExitStatus.ANSWERED).out())
        .startsWith("{\"line\":2,\"id\":\"a\",");
  }

  @Test
  void the_whole_proposal_is_the_one_that_propose_gives() throws IOException {
    Path one = Files.writeString(folder.resolve("one.json"), firstLines(SITES, 1));
    String based =
        firstLines(SITES, 1)
            .replace("{\"id\": \"a\",", "{\"base\": \"" + ROSE.toAbsolutePath() + "\",");
    Path site = Files.writeString(folder.resolve("site.json"), based);

    JsonNode whole = nodes(batch(one, "--full")).get(0).get("proposal");
    JsonNode proposed = JSON.readTree(Run.of("propose", site.toString(), "--format", "json").out());

    whole
        .propertyNames()
        .forEach(key -> assertThat(whole.get(key)).as(key).isEqualTo(proposed.get(key)));
    assertThat(whole.propertyNames()).contains("checks", "decisions", "workings");
  }

  @Test
  void what_all_sites_share_is_said_once() {
    Run run = batch(sites, "--set", "walkway.length=7 ft", "--set", "site.climate.frost-depth=4ft");

    List<JsonNode> answers = nodes(run.endedWith(ExitStatus.ANSWERED));
    assertThat(answers.get(0).get("proposal").get("layout").get("lengthIn").asDouble())
        .isEqualTo(84);
    assertThat(status(answers.get(2))).isEqualTo("proposed");
  }

  @Test
  void a_run_that_stopped_goes_on_and_ends_as_it_would_have() throws IOException {
    Path out = folder.resolve("answers.ndjson");
    batch(sites, "--out", out.toString()).endedWith(ExitStatus.WRONG_INPUT);
    String whole = Files.readString(out);
    assertThat(whole).isEqualTo(batch(sites).out());
    Files.writeString(out, whole.substring(0, whole.indexOf("\"line\":3") + 20));

    Run again = batch(sites, "--out", out.toString()).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(out).hasContent(whole);
    assertThat(again.out()).isEmpty();
    assertThat(again.err())
        .contains("line 2 was the last to be answered; going on after it.")
        .contains("1 of 4 lines cannot be used");
    assertThat(batch(sites, "--out", out.toString()).endedWith(ExitStatus.WRONG_INPUT).err())
        .contains("line 4 was the last");
    assertThat(out).hasContent(whole);
  }

  @Test
  void what_concerns_all_lines_is_refused_before_any_is_answered() throws IOException {
    Path table = Files.writeString(folder.resolve("x.csv"), "title,title\na,b\n");

    assertThat(refused("batch", folder.resolve("none").toString())).contains("cannot be read");
    assertThat(refused("batch", folder.toString())).contains("is a folder");
    assertThat(refused("batch", table.toString())).contains("x.csv:1: heading: title (a second");
    assertThat(refused("batch", sites.toString(), "--cores", "0"))
        .contains("--cores: found 0, accepted is a whole number of 1 or more");
    assertThat(refused("batch", sites.toString(), "--set", "x")).contains("path=value");
  }

  @Test
  void the_table_that_ships_is_answered_whole() {
    Run run = Run.of("batch", "scenarios/many-sites.csv").endedWith(ExitStatus.ANSWERED);

    assertThat(nodes(run))
        .extracting(each -> each.get("id").asInt() + " " + status(each))
        .containsExactly("1041 proposed", "1042 proposed", "1043 proposed");
    assertThat(nodes(run).get(1).get("proposal").get("bases").size()).isEqualTo(2);
  }

  @Test
  void no_sites_give_no_answers() throws IOException {
    Path none = Files.writeString(folder.resolve("none.ndjson"), "\n\n");

    assertThat(batch(none).endedWith(ExitStatus.ANSWERED).out()).isEmpty();
  }

  private static String refused(String... args) {
    Run run = Run.of(args).endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    return run.err().replaceAll("\\s+", " ");
  }

  private static Run batch(Path sites, String... more) {
    List<String> args =
        new java.util.ArrayList<>(List.of("batch", sites.toString(), "--base", ROSE.toString()));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  private static String firstLines(String text, int count) {
    return String.join("\n", text.lines().limit(count).toList()) + "\n";
  }

  private static List<JsonNode> nodes(Run run) {
    return run.out().lines().map(JSON::readTree).toList();
  }

  private static String status(JsonNode answer) {
    return answer.get("status").asString();
  }
}
