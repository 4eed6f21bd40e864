package org.scantling.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.scantling.tables.FileTrouble;

/** A folder is written whole or not at all, and never over what is not ours. */
class OutFolderTest {
  @TempDir private Path yard;

  private Path folder() {
    return yard.resolve("job");
  }

  private static Map<String, String> files(String text) {
    return Map.of("cut-list.csv", "cuts " + text + "\n", "builder.md", "sheet " + text + "\n");
  }

  /** Every file below a folder with its text, the list of digests left out. */
  private static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        if (!file.getFileName().toString().equals(OutManifest.NAME)) {
          content.put(
              folder.relativize(file).toString(), new String(Files.readAllBytes(file), UTF_8));
        }
      }
    }
    return content;
  }

  @Test
  void a_new_folder_appears_with_everything_in_it_and_nothing_else() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(files("one")));

    assertThat(content(folder())).isEqualTo(files("one"));
    assertThat(content(yard)).hasSize(2);
    assertThat(OutManifest.read(folder()).holds(folder(), "cut-list.csv")).isTrue();
  }

  @Test
  void what_we_wrote_is_written_again() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(files("one")));
    OutFolder.write(folder(), OutFolder.texts(files("two")));

    assertThat(content(folder())).isEqualTo(files("two"));
    assertThat(OutManifest.read(folder()).holds(folder(), "builder.md")).isTrue();
  }

  @Test
  void a_file_that_was_changed_since_stops_everything() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(files("one")));
    Files.writeString(folder().resolve("builder.md"), "my own notes\n");
    Map<String, String> before = content(folder());

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(files("two"))))
        .isInstanceOf(OutException.class)
        .hasMessage(
            folder().resolve("builder.md")
                + ": was not written by scantling, or was changed since. Maybe move it away or name"
                + " another folder.");
    assertThat(content(folder())).isEqualTo(before);
  }

  @Test
  void a_file_of_somebody_else_under_one_of_our_names_stops_everything() throws IOException {
    Files.createDirectory(folder());
    Files.writeString(folder().resolve("cut-list.csv"), "somebody's\n");

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(files("one"))))
        .hasMessageContaining("cut-list.csv: was not written by scantling");
    assertThat(content(folder())).containsOnlyKeys("cut-list.csv");
  }

  @Test
  void files_under_other_names_are_left_alone() throws IOException {
    Files.createDirectory(folder());
    Files.writeString(folder().resolve("photo.txt"), "the site\n");

    OutFolder.write(folder(), OutFolder.texts(files("one")));

    assertThat(content(folder())).hasSize(3).containsEntry("photo.txt", "the site\n");
  }

  @Test
  void a_link_under_one_of_our_names_is_not_followed() throws IOException {
    Path elsewhere = Files.writeString(yard.resolve("precious.txt"), "precious\n");
    Files.createDirectory(folder());
    Files.createSymbolicLink(folder().resolve("builder.md"), elsewhere);

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(files("one"))))
        .hasMessageContaining("builder.md: was not written by scantling");
    assertThat(elsewhere).hasContent("precious\n");
  }

  @Test
  void a_folder_under_one_of_our_names_stops_everything_and_leaves_no_rest() throws IOException {
    Files.createDirectories(folder().resolve("builder.md"));

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(files("one"))))
        .isInstanceOf(OutException.class);
    assertThat(content(folder())).isEmpty();
  }

  private static Map<String, String> drawn(String text) {
    return Map.of("builder.md", "sheet " + text + "\n", "drawings/side.svg", "lines " + text);
  }

  @Test
  void what_lies_in_a_folder_within_is_written_again_beside_what_is_not_ours() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(drawn("one")));
    Files.writeString(folder().resolve("drawings/sketch.txt"), "by hand\n");

    OutFolder.write(folder(), OutFolder.texts(drawn("two")));

    assertThat(content(folder()))
        .containsAllEntriesOf(drawn("two"))
        .containsEntry("drawings/sketch.txt", "by hand\n")
        .hasSize(3);
    assertThat(content(yard)).hasSize(3);
  }

  @Test
  void a_drawing_that_was_changed_since_stops_everything() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(drawn("one")));
    Files.writeString(folder().resolve("drawings/side.svg"), "my own lines");

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(drawn("two"))))
        .isInstanceOf(OutException.class)
        .hasMessageContaining("side.svg: was not written by scantling");
    assertThat(content(folder())).containsEntry("builder.md", "sheet one\n");
  }

  @Test
  void a_file_or_a_link_in_the_place_of_a_folder_within_stops_everything() throws IOException {
    Path elsewhere = Files.createDirectory(yard.resolve("elsewhere"));
    Files.createDirectory(folder());
    Files.createSymbolicLink(folder().resolve("drawings"), elsewhere);

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(drawn("one"))))
        .isInstanceOf(OutException.class)
        .hasMessageContaining("drawings: was not written by scantling");
    assertThat(elsewhere).isEmptyDirectory();

    Files.delete(folder().resolve("drawings"));
    Files.writeString(folder().resolve("drawings"), "a file\n");

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(drawn("one"))))
        .hasMessageContaining("drawings: was not written by scantling");
    assertThat(content(folder())).isEqualTo(Map.of("drawings", "a file\n"));
  }

  @Test
  void a_file_is_no_folder() throws IOException {
    Files.writeString(folder(), "a file\n");

    assertThatThrownBy(() -> OutFolder.write(folder(), OutFolder.texts(files("one"))))
        .hasMessage(folder() + ": found a file, accepted is a folder or a new name");
    assertThat(folder()).hasContent("a file\n");
  }

  @Test
  void a_folder_is_not_made_inside_one_that_is_not_there() {
    Path deep = yard.resolve("nowhere").resolve("job");

    assertThatThrownBy(() -> OutFolder.write(deep, OutFolder.texts(files("one"))))
        .hasMessage(deep + ": the folder to put it in must exist");
    assertThat(yard.resolve("nowhere")).doesNotExist();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void a_place_where_nothing_can_be_made_is_told_without_a_word_of_the_program() {
    assertThatThrownBy(
            () -> OutFolder.write(Path.of("/proc/scantling-job"), OutFolder.texts(files("one"))))
        .isInstanceOf(OutException.class)
        .hasMessage(
            "/proc/scantling-job: cannot be written there (no such file or folder), so nothing"
                + " was. Maybe name another folder.");
  }

  @Test
  void why_a_file_cannot_be_used_is_told_in_words() {
    assertThat(FileTrouble.words(new AccessDeniedException("/job"))).isEqualTo("permission denied");
    assertThat(FileTrouble.words(new FileSystemException("/job", null, "No space left on device")))
        .isEqualTo("No space left on device");
    assertThat(FileTrouble.words(new FileSystemException("/job"))).doesNotContain("Exception");
  }

  @Test
  void what_was_written_is_told_in_one_line_beside_the_answer() throws IOException {
    Run run = Run.of("propose", "scenarios/long-walk.yaml", "--out", folder().toString());

    assertThat(run.endedWith(ExitStatus.ANSWERED).err())
        .contains("job: ", "33 files written")
        .doesNotContain("Exception");
    assertThat(content(folder())).hasSize(33);
  }

  @Test
  void while_files_change_places_both_contents_are_ours() throws IOException {
    Files.createDirectory(folder());
    Files.writeString(folder().resolve("builder.md"), "newer\n");
    OutManifest manifest = new OutManifest();
    manifest.add("builder.md", OutManifest.digest("older\n"));
    manifest.add("builder.md", OutManifest.digest("newer\n"));
    Files.writeString(folder().resolve(OutManifest.NAME), manifest.text());

    OutManifest read = OutManifest.read(folder());
    assertThat(read.text()).isEqualTo(manifest.text());
    assertThat(read.holds(folder(), "builder.md")).isTrue();
    Files.writeString(folder().resolve("builder.md"), "other\n");
    assertThat(read.holds(folder(), "builder.md")).isFalse();
    assertThat(read.holds(folder(), "cut-list.csv")).isFalse();
  }

  @Test
  void a_run_broken_off_before_the_new_folder_took_its_place_leaves_the_old_one()
      throws IOException {
    OutFolder.write(folder(), OutFolder.texts(files("one")));
    Files.move(folder(), yard.resolve(".scantling-old-job"));

    OutFolder.write(folder(), OutFolder.texts(files("two")));

    assertThat(content(yard)).hasSize(2);
    assertThat(content(folder())).isEqualTo(files("two"));
  }

  @Test
  void a_run_broken_off_while_other_files_went_over_is_finished_by_the_next() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(files("one")));
    Files.writeString(folder().resolve("photo.txt"), "the site\n");
    Files.move(folder(), yard.resolve(".scantling-old-job"));
    Path other = yard.resolve("other");
    OutFolder.write(other, OutFolder.texts(files("two")));
    Files.move(other, folder());

    OutFolder.write(folder(), OutFolder.texts(files("three")));

    assertThat(content(folder())).hasSize(3).containsEntry("photo.txt", "the site\n");
    assertThat(content(folder())).containsAllEntriesOf(files("three"));
    assertThat(yard.resolve(".scantling-old-job")).doesNotExist();
  }

  @Test
  void what_runs_that_are_gone_have_left_is_cleared_away() throws IOException {
    Files.createDirectory(yard.resolve(".scantling-new-8231649"));
    Files.writeString(yard.resolve(".scantling-new-8231649").resolve("order.csv"), "old\n");
    Path running =
        Files.createDirectory(
            yard.resolve(".scantling-new-" + ProcessHandle.current().pid() + "-7"));

    OutFolder.write(folder(), OutFolder.texts(files("one")));

    assertThat(yard.resolve(".scantling-new-8231649")).doesNotExist();
    assertThat(running).exists();
  }

  @Test
  void lists_that_are_no_longer_written_do_not_stay_beside_the_new_ones() throws IOException {
    OutFolder.write(
        folder(), OutFolder.texts(Map.of("climbers.csv", "old\n", "builder.md", "old\n")));
    OutFolder.write(folder(), OutFolder.texts(files("two")));

    assertThat(content(folder())).isEqualTo(files("two"));
  }

  @Test
  void no_name_the_root_and_the_folder_one_works_in_are_refused() {
    for (String name : new String[] {"", "/", ".", ".."}) {
      Run run = Run.of("propose", "scenarios/same-place.yaml", "--out", name);

      assertThat(run.endedWith(ExitStatus.WRONG_INPUT).err()).as(name).contains("accepted is");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void a_refused_site_says_whose_lists_are_in_the_folder() throws IOException {
    OutFolder.write(folder(), OutFolder.texts(files("one")));

    Run run = Run.of("propose", "scenarios/too-much-snow.yaml", "--out", folder().toString());

    assertThat(run.endedWith(ExitStatus.NEEDS_ENGINEER).err().replaceAll("\\s+", " "))
        .contains("nothing was written", "the lists there are of another proposal");
    assertThat(content(folder())).isEqualTo(files("one"));
  }

  @Test
  void a_list_that_is_named_is_shown_besides_and_that_is_said() {
    Run run =
        Run.of(
            "propose",
            "scenarios/same-place.yaml",
            "--list",
            "order",
            "--out",
            folder().toString());

    assertThat(run.endedWith(ExitStatus.ANSWERED).err().replaceAll("\\s+", " "))
        .contains("33 files written", "The list order is shown as well.");
    assertThat(run.out()).startsWith("Order of work");
  }

  @Test
  void a_full_disk_is_told_as_the_system_says_it() {
    assertThat(FileTrouble.words(new IOException("No space left on device")))
        .isEqualTo("No space left on device");
  }
}
