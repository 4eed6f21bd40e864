package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every file of a few signs: empty documents, empty lists, brackets alone. */
class SmallestFilesTest {
  private static final SiteReader READER = new SiteReader(Example.VOCABULARY);
  private static final String[] SIGNS = {
    "---",
    "- ",
    "\n",
    ": ",
    "[",
    "]",
    "{",
    "}",
    "&a ",
    "!x ",
    "*a ",
    "|",
    "%YAML 1.1",
    "a",
    "\"",
    "..."
  };
  private static final int MOST = 3;

  @Test
  void every_file_of_three_signs_is_refused_in_words() {
    List<String> broken = new ArrayList<>();
    grow("", MOST, broken);

    assertThat(broken).isEmpty();
  }

  private static void grow(String text, int more, List<String> broken) {
    for (String name : List.of("site.yaml", "site.json")) {
      try {
        READER.read(new SourceText(name, 1, text, Example.folder("good")), List.of());
        broken.add(name + " was read: " + text);
      } catch (IntakeException refused) {
        assertThat(refused.problems()).isNotEmpty();
      } catch (RuntimeException fault) {
        broken.add(fault + " of " + name + ": " + text.replace("\n", "\\n"));
      }
    }
    if (more > 0) {
      for (String sign : SIGNS) {
        grow(text + sign, more - 1, broken);
      }
    }
  }
}
