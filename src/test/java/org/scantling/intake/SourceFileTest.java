package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceFileTest {
  private static final String SITE =
      "title: t\nbase: %s\nsite: { climate: { hardiness-zone: 5 } }\nwalkway: { length: 24 ft }\n";

  @TempDir Path folder;

  @Test
  void a_missing_file_is_named() {
    assertThatThrownBy(() -> read("nowhere.yaml"))
        .hasMessage(
            folder.resolve("nowhere.yaml")
                + ": whole file: (no such file) must be a YAML or JSON file that can be read.");
  }

  @Test
  void a_folder_is_no_file() {
    assertThatThrownBy(() -> new SiteReader(Example.VOCABULARY).read(folder))
        .hasMessageContaining("(a folder or device) must be a YAML or JSON file");
  }

  @Test
  void a_file_over_one_mebibyte_is_refused_before_it_is_parsed() throws IOException {
    write("large.yaml", "# " + "x".repeat(1 << 20));
    assertThatThrownBy(() -> read("large.yaml"))
        .hasMessageEndingWith(
            "whole file: (over 1 MiB) must be no larger than 1 MiB (1048576 bytes).");
  }

  @Test
  void a_mebibyte_of_unknown_keys_is_refused_with_a_message_of_bearable_length()
      throws IOException {
    StringBuilder text = new StringBuilder();
    String value = "x".repeat(150);
    for (int i = 0; i < 6_000; i++) {
      text.append("key-").append(i).append(": ").append(value).append('\n');
    }
    write("many.yaml", text.toString());
    assertThatThrownBy(() -> read("many.yaml"))
        .isInstanceOfSatisfying(
            IntakeException.class,
            refused -> assertThat(refused.problems()).hasSizeGreaterThan(6_000))
        .hasMessageEndingWith("more problems")
        .message()
        .hasSizeLessThan(30_000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{a: ", "- ", "? ", "'", "\"", "&a *a ", "!!x ", "!<tag> ", "{{"})
  void long_runs_of_yaml_signs_are_refused_in_words(String sign) throws IOException {
    write("signs.yaml", "title: " + sign.repeat(20_000));
    assertThatThrownBy(() -> read("signs.yaml")).isInstanceOf(IntakeException.class);
  }

  @Test
  void a_byte_order_mark_does_no_harm() throws IOException {
    Files.copy(Example.good("base/gate-arbour.yaml"), folder.resolve("base.yaml"));
    write("site.yaml", "\uFEFF" + SITE.formatted("base.yaml"));
    assertThat(read("site.yaml").site().title()).isEqualTo("t");
  }

  @Test
  void windows_line_ends_do_no_harm() throws IOException {
    Files.copy(Example.good("base/gate-arbour.yaml"), folder.resolve("base.yaml"));
    write("site.yaml", SITE.formatted("base.yaml").replace("\n", "\r\n"));
    assertThat(read("site.yaml").site().walkway().lengthIn()).isEqualTo(288);
  }

  @Test
  void a_file_without_a_telling_name_is_taken_by_its_first_sign() throws IOException {
    Files.copy(Example.good("base/gate-arbour.yaml"), folder.resolve("base"));
    write(
        "site",
        "{\"title\":\"t\",\"base\":\"base\",\"site\":{\"climate\":{\"hardiness-zone\":5}},"
            + "\"walkway\":{\"length\":\"24 ft\"}}");
    assertThat(read("site").site().base().title()).isEqualTo("Gate arbour");
  }

  @Test
  void a_base_may_stand_beside_or_above_the_site_folder_or_be_named_from_the_root()
      throws IOException {
    Path jobs = Files.createDirectories(folder.resolve("jobs/orchard"));
    Path base = folder.resolve("jobs/base.yaml");
    Files.copy(Example.good("base/gate-arbour.yaml"), base);
    for (String written : List.of("../base.yaml", base.toAbsolutePath().toString())) {
      Files.writeString(jobs.resolve("site.yaml"), SITE.formatted(written));
      assertThat(read("jobs/orchard/site.yaml").site().base().title()).isEqualTo("Gate arbour");
    }
  }

  @Test
  void a_stranger_s_base_stays_inside_the_folder_that_is_named() throws IOException {
    Path jobs = Files.createDirectories(folder.resolve("jobs/orchard"));
    Files.copy(Example.good("base/gate-arbour.yaml"), folder.resolve("jobs/base.yaml"));
    Files.writeString(jobs.resolve("site.yaml"), SITE.formatted("../base.yaml"));
    SiteReader reader = new SiteReader(Example.VOCABULARY);
    assertThatThrownBy(() -> reader.within(jobs).read(jobs.resolve("site.yaml")))
        .hasMessageContaining("base: ../base.yaml (outside) must be");
    assertThat(reader.within(folder.resolve("jobs")).read(jobs.resolve("site.yaml")).site().base())
        .isNotNull();
  }

  @Test
  void a_link_does_not_lead_out_of_the_folder() throws IOException {
    Path jobs = Files.createDirectories(folder.resolve("jobs"));
    Files.copy(Example.good("base/gate-arbour.yaml"), folder.resolve("secret.yaml"));
    Files.createSymbolicLink(jobs.resolve("base.yaml"), folder.resolve("secret.yaml"));
    Files.writeString(jobs.resolve("site.yaml"), SITE.formatted("base.yaml"));
    SiteReader reader = new SiteReader(Example.VOCABULARY).within(jobs);
    assertThatThrownBy(() -> reader.read(jobs.resolve("site.yaml")))
        .hasMessageContaining("base: base.yaml (a link to outside) must be");
  }

  @Test
  void a_batch_line_reports_its_own_line_number() {
    SourceText line = new SourceText("sites.jsonl", 7, "{\"title\": 5}", folder);
    assertThatThrownBy(() -> new SiteReader(Example.VOCABULARY).read(line, List.of()))
        .hasMessageStartingWith("sites.jsonl:7: ");
    SourceText broken = new SourceText("sites.jsonl", 8, "{\"title\": 5", folder);
    assertThatThrownBy(() -> new SiteReader(Example.VOCABULARY).read(broken, List.of()))
        .hasMessageStartingWith("sites.jsonl:8: whole file: (not JSON: ");
  }

  private Intake read(String name) {
    return new SiteReader(Example.VOCABULARY).read(folder.resolve(name));
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }
}
