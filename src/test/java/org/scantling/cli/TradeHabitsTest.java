package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.Length;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * What the trade builds (facts of handbooks, building departments and common practice, each with
 * its source in {@code trade/habits.csv}) against what is proposed. Where it differs, the answer
 * names what keeps it from that: the base as it stands, a check, or a clause.
 */
class TradeHabitsTest {
  private static final Path FOLDER = Path.of("src/test/resources/trade");

  /** A reason of these kinds is no habit of our own. */
  private static final Set<String> OUTSIDE = Set.of("standard", "calculation", "handbook");

  private record Habit(
      String site, String question, String words, String least, String most, String source) {
    static Habit of(Map<String, String> row) {
      return new Habit(
          row.get("case"),
          row.get("question"),
          row.get("words"),
          row.get("least"),
          row.get("most"),
          row.get("source"));
    }

    boolean sized() {
      return least.contains("x");
    }

    String told(String value) {
      return sized() ? value : Length.inches(Double.parseDouble(value));
    }

    String range() {
      return least.equals(most) ? told(least) : told(least) + " to " + told(most);
    }

    boolean within(String value) {
      double found = amount(value);
      return found >= amount(least) && found <= amount(most);
    }

    /** Of a size what its timber bends at: breadth times depth squared, all plies together. */
    private double amount(String value) {
      if (!sized()) {
        return Double.parseDouble(value);
      }
      double plies = value.contains("-") ? Double.parseDouble(value.split("-")[0]) : 1;
      String[] sides = value.substring(value.indexOf('-') + 1).split("x");
      double depth = Double.parseDouble(sides[1]);
      return plies * Double.parseDouble(sides[0]) * depth * depth;
    }
  }

  private static Map<String, List<Habit>> habits() throws IOException {
    Map<String, List<Habit>> habits = new LinkedHashMap<>();
    new CsvMapper()
        .readerFor(Map.class)
        .with(CsvSchema.emptySchema().withHeader())
        .<Map<String, String>>readValues(Files.readString(FOLDER.resolve("habits.csv")))
        .forEachRemaining(
            row -> {
              Habit habit = Habit.of(row);
              habits.computeIfAbsent(habit.site(), it -> new ArrayList<>()).add(habit);
            });
    return habits;
  }

  @Test
  void what_is_proposed_is_what_the_trade_builds_or_the_answer_names_what_forces_it()
      throws IOException {
    StringBuilder page = new StringBuilder();
    for (Map.Entry<String, List<Habit>> each : habits().entrySet()) {
      String site = FOLDER.resolve(each.getKey() + ".yaml").toString();
      String text = flat(Run.of("propose", site).endedWith(ExitStatus.ANSWERED).out());
      JsonNode proposal =
          new JsonMapper().readTree(Run.of("propose", site, "--format", "json").out());
      page.append("## ").append(proposal.get("title").asString()).append("\n\n");
      page.append("| what | the trade | here | | source |\n| --- | --- | --- | --- | --- |\n");
      for (Habit habit : each.getValue()) {
        page.append(line(habit, decision(proposal, habit.question()), text));
      }
      page.append('\n');
    }
    Golden.compare("trade-habits.md", page.toString());
  }

  private static String line(Habit habit, JsonNode decision, String text) {
    String proposed = decision.get("proposed").asString();
    String verdict = habit.within(proposed) ? "as the trade" : forced(habit, decision, text);
    return String.format(
        "| %s | %s | %s | %s | %s |%n",
        habit.words(), habit.range(), habit.told(proposed), verdict, habit.source());
  }

  /** What the answer says of a value that the trade would not have by itself. */
  private static String forced(Habit habit, JsonNode decision, String text) {
    if (!decision.get("changed").asBoolean()) {
      return "as the base stands";
    }
    JsonNode governing = governing(decision);
    boolean rejected = !decision.get("rejected").isEmpty();
    assertThat(rejected || OUTSIDE.contains(governing.get("source").get("kind").asString()))
        .as("%s of %s: %s", habit.question(), habit.site(), decision)
        .isTrue();
    String why =
        rejected
            ? decision.get("rejected").get(0).get("text").asString()
            : governing.get("text").asString();
    assertThat(text).contains(flat(why).substring(0, Math.min(40, why.length())));
    return flat(why);
  }

  private static JsonNode governing(JsonNode decision) {
    return decision
        .get("reasons")
        .valueStream()
        .filter(each -> each.get("governing").asBoolean())
        .findFirst()
        .orElseThrow();
  }

  private static JsonNode decision(JsonNode proposal, String question) {
    return proposal
        .get("decisions")
        .valueStream()
        .filter(
            each ->
                (each.get("subject").asString() + "." + each.get("attribute").asString())
                    .equals(question))
        .findFirst()
        .orElseThrow();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /**
   * Posts of 4x4, crossbeams of 2x4, a light climber, 110 mph among houses, 25 psf: built like that
   * everywhere. One joint must hold more than nails do; no timber and no hole changes.
   */
  @Test
  void a_small_arbor_comes_out_as_it_stands_but_for_one_joint() {
    String site = FOLDER.resolve("small-arbor.yaml").toString();
    for (String snow : List.of("25 psf", "30 psf")) {
      String text =
          flat(Run.of("propose", site, "--set", "site.climate.ground-snow=" + snow).out());

      assertThat(text)
          .contains("One thing changes: crossbeam joints stronger than usual")
          .contains("All 38 checks pass")
          .contains("Crossbeams 4 2x4")
          .contains("Posts 4 4x4");
    }
  }
}
