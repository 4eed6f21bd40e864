package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.BaseDesign;
import org.scantling.tables.Tables;

class WrittenDateTest {
  private static final String GATE = readGate();

  @ParameterizedTest
  @CsvSource({"2012", "2012-10", "2012-10-29", "2012-02-29", "1899"})
  void a_record_knows_the_day_or_as_much_of_it_as_somebody_remembers(String date) {
    assertThat(read("{ date: " + date + ", kind: storm, what: it blew }").date()).isEqualTo(date);
  }

  @ParameterizedTest
  @CsvSource({"12", "2012-13", "2013-02-29", "2012-10-29-1", "yes", "'10/29/2012'", "3012"})
  void what_is_no_day_is_refused_with_what_would_be_one(String date) {
    Assertions.assertThatThrownBy(() -> read("{ date: " + date + ", kind: storm, what: it blew }"))
        .isInstanceOf(IntakeException.class)
        .hasMessageContaining("proven.record[0].date")
        .hasMessageContaining("such as 2012, 2012-10 or 2012-10-29");
  }

  @Test
  void an_entry_without_a_note_is_refused() {
    Assertions.assertThatThrownBy(() -> read("{ date: 2012, kind: storm }"))
        .hasMessageContaining("proven.record[0].what: (missing: what it was");
  }

  private static BaseDesign.Event read(String entry) {
    String text = GATE.replace("posts:\n", "  record: [ " + entry + " ]\nposts:\n");
    return new DesignReader(Vocabulary.of(Tables.load()))
        .read(new SourceText("gate.yaml", 1, text, Path.of("")))
        .design()
        .proven()
        .orElseThrow()
        .record()
        .get(0);
  }

  private static String readGate() {
    try {
      return Files.readString(Path.of("scenarios/base/rose-gate.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
