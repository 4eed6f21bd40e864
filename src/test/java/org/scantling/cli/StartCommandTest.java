package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartCommandTest {
  @TempDir private Path folder;
  private Path file;
  private Path kept;

  @BeforeEach
  void name() {
    file = folder.resolve("walk.yaml");
    kept = folder.resolve("walk.yaml.visit");
  }

  /** The visit to the gate on the bluff, whose base lies elsewhere. */
  private static List<String> hill() throws IOException {
    List<String> lines =
        new ArrayList<>(Files.readAllLines(Path.of("src/test/resources/visits/hill.txt")));
    lines.set(lines.size() - 1, "1");
    return lines;
  }

  private Run answering(List<String> lines) {
    return Run.answering(text(lines), "start", file.toString(), "--from", bases());
  }

  private Run typing(String... lines) {
    return Run.typing(text(List.of(lines)), "start", file.toString(), "--from", bases());
  }

  private static String bases() {
    return Path.of("scenarios/base").toAbsolutePath().toString();
  }

  private static String text(List<String> lines) {
    return String.join("\n", lines) + (lines.isEmpty() ? "" : "\n");
  }

  @Test
  void whoever_stops_after_any_question_goes_on_there_and_the_file_is_the_same()
      throws IOException {
    List<String> lines = hill();
    answering(lines).endedWith(ExitStatus.ANSWERED);
    String whole = Files.readString(file);
    Files.delete(file);

    for (int i = 0; i < lines.size(); i++) {
      Run run = answering(lines.subList(i, i)).endedWith(ExitStatus.WRONG_INPUT);
      assertThat(run.err()).startsWith("answers:1: ");
      assertThat(file).doesNotExist();
      run = answering(lines.subList(i, i + 1));
      boolean last = i == lines.size() - 1;
      run.endedWith(last ? ExitStatus.ANSWERED : ExitStatus.WRONG_INPUT);
      assertThat(kept.toFile().exists()).isEqualTo(!last);
    }
    assertThat(Files.readString(file)).isEqualTo(whole);
  }

  @Test
  void a_wrong_answer_of_a_file_ends_it_with_its_line_and_keeps_what_came_before()
      throws IOException {
    List<String> lines = hill();
    lines.set(3, "68");
    Run run = answering(lines).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err())
        .startsWith("answers:4: length: 68 (no unit) must be a length with its unit")
        .contains("kept in", "walk.yaml.visit");
    assertThat(Files.readString(kept)).contains("title = Gate on the bluff").doesNotContain("68");
    assertThat(file).doesNotExist();
  }

  @Test
  void at_a_terminal_a_wrong_answer_is_told_and_asked_for_again() throws IOException {
    Run run = typing("Gate", "", "", "68", "68 in", "quit").endedWith(ExitStatus.ANSWERED);

    assertThat(run.out()).contains("68 (no unit) must be a length with its unit");
    assertThat(run.err()).isEmpty();
    assertThat(Files.readString(kept)).contains("length = 68 in");
  }

  @Test
  void back_asks_the_question_before_again_and_offers_what_was_said() throws IOException {
    Run run = typing("Gate", "By the pond", "back", "", "quit").endedWith(ExitStatus.ANSWERED);

    assertThat(run.out()).contains("Empty line: By the pond, as you said before.");
    assertThat(Files.readString(kept)).contains("place = By the pond");
  }

  @Test
  void back_at_the_first_question_says_so() {
    assertThat(typing("back", "quit").out()).contains("This is the first question.");
  }

  @Test
  void what_was_gone_back_over_is_not_lost_when_one_leaves() throws IOException {
    typing("Gate", "By the pond", "", "68 in", "back", "back", "back", "quit");
    assertThat(Files.readString(kept)).contains("length ~ 68 in", "place ~ By the pond");

    Run run = typing("", "", "", "quit");
    assertThat(run.out()).contains("Empty line: 68 in, as you said before.");
    assertThat(Files.readString(kept)).contains("length = 68 in", "place = By the pond");
  }

  @Test
  void a_question_mark_tells_more_and_asks_again() {
    Run run = typing("Gate", "", "", "?", "68 in", "quit");

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("Hold the tape center to center of the two end posts")
        .contains("Read as 5'-8\".");
  }

  @Test
  void the_end_of_input_at_a_terminal_leaves_like_quit() {
    Run run = typing("Gate").endedWith(ExitStatus.ANSWERED);

    assertThat(run.out().replaceAll("\\s+", " ")).contains("What you said is kept in");
    assertThat(kept).exists();
  }

  @Test
  void nothing_answered_leaves_nothing_behind() throws IOException {
    typing("quit").endedWith(ExitStatus.ANSWERED);
    answering(List.of()).endedWith(ExitStatus.WRONG_INPUT);

    try (var files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void a_file_that_is_there_is_written_over_only_when_told_to() throws IOException {
    Files.writeString(file, "mine");
    Run refused = answering(hill()).endedWith(ExitStatus.WRONG_INPUT);
    assertThat(refused.err().replaceAll("\\s+", " ")).contains("is there already", "--over");
    assertThat(Files.readString(file)).isEqualTo("mine");

    Run.answering(text(hill()), "start", file.toString(), "--from", bases(), "--over")
        .endedWith(ExitStatus.ANSWERED);
    assertThat(Files.readString(file)).contains("title: Gate on the bluff");
  }

  @Test
  void where_there_is_no_base_it_says_how_to_come_by_one_and_keeps_the_answers()
      throws IOException {
    List<String> lines = hill();
    Run run =
        Run.answering(text(lines.subList(0, lines.size() - 1)), "start", file.toString())
            .endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.out().replaceAll("\\s+", " ")).contains("scantling start --base base/NAME.yaml");
    assertThat(kept).exists();
  }

  @Test
  void a_base_that_is_not_there_is_told_in_the_words_of_the_reader() throws IOException {
    List<String> lines = hill();
    lines.set(lines.size() - 1, "base/nowhere.yaml");
    Run run = answering(lines).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("base: base/nowhere.yaml (no such file) must be a design file");
    assertThat(file).doesNotExist();
  }

  @Test
  void a_base_without_a_record_cannot_be_what_the_checks_are_held_to() throws IOException {
    List<String> lines = new ArrayList<>(hill());
    // The wishes come before the base: all of them usual but the basis.
    lines.set(lines.size() - 2, "yes");
    lines.addAll(lines.size() - 1, List.of("", "", "", "", "proven", "", ""));
    lines.set(lines.size() - 1, "5");
    Run run = answering(lines).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("preferences.basis: proven must be published", "has no 'proven:' part");
  }

  @Test
  void only_yaml_is_written() {
    Run run =
        Run.answering("", "start", folder.resolve("a.json").toString())
            .endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " ")).contains("must end in .yaml");
  }

  @Test
  void a_structure_of_which_nobody_knows_the_record_is_written_as_a_drawing() throws IOException {
    List<String> lines =
        new ArrayList<>(Files.readAllLines(Path.of("src/test/resources/visits/hop-gate.txt")));
    int stands = lines.indexOf("yes");
    Run run =
        Run.answering(text(lines.subList(0, stands)) + "no\n", "start", "--base", file.toString())
            .endedWith(ExitStatus.ANSWERED);

    assertThat(run.out()).contains("It has no record, so it counts as a drawing.");
    assertThat(Files.readString(file)).doesNotContain("proven:").contains("bays: 2");
  }

  @Test
  void a_design_that_cannot_be_put_together_is_told_before_it_is_written() throws IOException {
    List<String> lines =
        new ArrayList<>(Files.readAllLines(Path.of("src/test/resources/visits/hop-gate.txt")));
    // At the seat of the crossbeams, three questions on.
    lines.set(lines.indexOf("seven 2x6x8") + 3, "6 in");
    Run run =
        Run.answering(text(lines), "start", "--base", file.toString())
            .endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err()).contains("crossbeam-notch: crossbeams.notch: 6");
    assertThat(file).doesNotExist();
    assertThat(kept).exists();
  }
}
