package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever happens to a good file, the reader answers with a site or with problems in words. */
class ScribblePropertyTest {
  private static final SiteReader READER = new SiteReader(Example.VOCABULARY);
  private static final String YAML = text("orchard-walk.yaml");
  private static final String JSON = text("metric.json");

  /** One slip: at a place (in thousandths of the text), some signs are lost, others appear. */
  record Slip(int place, int lost, String appears) {
    String on(String text) {
      int from = Math.min(text.length(), text.length() * place / 1000);
      int to = Math.min(text.length(), from + lost);
      return text.substring(0, from) + appears + text.substring(to);
    }
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void a_scribbled_yaml_file_is_read_or_refused_in_words(@ForAll("slips") List<Slip> slips) {
    read_or_refused("scribble.yaml", YAML, slips);
  }

  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
  void a_scribbled_json_file_is_read_or_refused_in_words(@ForAll("slips") List<Slip> slips) {
    read_or_refused("scribble.json", JSON, slips);
  }

  private static void read_or_refused(String name, String text, List<Slip> slips) {
    String scribbled = text;
    for (Slip slip : slips) {
      scribbled = slip.on(scribbled);
    }
    try {
      SourceText source = new SourceText(name, 1, scribbled, Example.folder("good"));
      assertThat(READER.read(source, List.of()).site().walkway().lengthIn())
          .isBetween(24.0, 4800.0);
    } catch (IntakeException refused) {
      assertThat(refused.problems())
          .isNotEmpty()
          .allSatisfy(problem -> assertThat(problem.file()).isNotBlank())
          .allSatisfy(problem -> assertThat(problem.text()).hasSizeLessThan(600));
    }
  }

  @Provide
  Arbitrary<List<Slip>> slips() {
    Arbitrary<String> signs =
        Arbitraries.strings()
            .withChars(" \n\t:,-[]{}&*!|>'\"%@`#?0123456789aft.~\\\u0085\u0000é")
            .ofMaxLength(4);
    return Combinators.combine(
            Arbitraries.integers().between(0, 1000), Arbitraries.integers().between(0, 6), signs)
        .as(Slip::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  private static String text(String name) {
    try {
      return Files.readString(Example.good(name));
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }
}
