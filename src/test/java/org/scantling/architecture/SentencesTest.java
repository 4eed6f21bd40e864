package org.scantling.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/** What people read stands in rules/words, in one place; Java only says which sentence and when. */
class SentencesTest {
  private static final String SAYING = "saying";
  private static final Path CODE = Path.of("src", "main", "java", "org", "scantling");
  private static final Path WORDS = Path.of("rules", "words");

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

  /** Three words in a row, in letters of their own. */
  private static final Pattern SENTENCE =
      Pattern.compile("[A-Za-z][a-z']*,? [A-Za-z][a-z']*,? [A-Za-z][a-z']*");

  /** A unit as a table has it. */
  private static final Pattern UNIT = Pattern.compile("Btu/(?:cu ft|ft hr) F");

  /** Said to whoever works on the program, and to nobody else. */
  private static final Pattern FAULT =
      Pattern.compile(
          "new (?:(IllegalArgument|IllegalState|UncheckedIO)Exception|RuleBaseFault)\\([^;]*;");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "visit",
        "depths",
        "options",
        "shop",
        "drawing",
        "sheets",
        "pdf",
        "batch",
        "cli",
        "intake",
        "tables",
        "rulebook",
        "words",
        "print",
        "problem",
        "confirm",
        "candidates",
        "workings"
      })
  void no_sentence_stands_in_java(String pack) throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : sources(CODE.resolve(pack))) {
      String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
      LITERAL
          .matcher(FAULT.matcher(code).replaceAll(";"))
          .results()
          .map(literal -> literal.group(1))
          .filter(text -> SENTENCE.matcher(text).find())
          .filter(text -> !UNIT.matcher(text).matches())
          .forEach(text -> found.add(file.getFileName() + ": " + text));
    }

    assertThat(found).isEmpty();
  }

  /** A saying is named in full where it is said, or by what it begins with, up to a point. */
  @Test
  void every_saying_is_said_somewhere() throws IOException {
    StringBuilder code = new StringBuilder();
    for (Path file : sources(CODE)) {
      code.append(Files.readString(file));
    }
    List<String> spare = new ArrayList<>();
    for (Path file : files(WORDS, ".csv")) {
      for (WordRow row : WordFile.read("words/" + file.getFileName())) {
        if (row.cells().containsKey(SAYING) && !said(row.cell(SAYING), code)) {
          spare.add(file.getFileName() + ": " + row.cell(SAYING));
        }
      }
    }

    assertThat(spare).isEmpty();
  }

  private static boolean said(String saying, StringBuilder code) {
    int point = saying.lastIndexOf('.');
    return code.indexOf('"' + saying + '"') >= 0
        || (point > 0 && code.indexOf('"' + saying.substring(0, point + 1) + '"') >= 0);
  }

  private static List<Path> sources(Path folder) throws IOException {
    return files(folder, ".java");
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }
}
