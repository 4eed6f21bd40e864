package org.scantling.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Grades of other design codes, which are refused with the reason: rules/words/other-grades.csv.
 */
public final class OtherGrades {
  private static final String FILE = "/org/scantling/rules/words/other-grades.csv";
  private static final String ANY = "*";
  private static final String BLANK = "{class}";

  private final Map<Pattern, String> classes = new LinkedHashMap<>();
  private String why = "";

  private OtherGrades(List<CsvFile.Line> lines) {
    for (CsvFile.Line line : lines) {
      String pattern = line.cells().get(0);
      if (pattern.equals(ANY)) {
        why = line.cells().get(1);
      } else {
        classes.put(Pattern.compile(pattern, Pattern.CASE_INSENSITIVE), line.cells().get(1));
      }
    }
  }

  private static final class Held {
    static final OtherGrades ALL = read();
  }

  private static OtherGrades read() {
    try (InputStream in = OtherGrades.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException(FILE + " is not on the class path");
      }
      return new OtherGrades(CsvFile.read(FILE, in).lines());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Why such a grade cannot be taken and what to do instead; empty for a word that is none. */
  public static Optional<String> why(String written) {
    String plain = written.strip();
    return Held.ALL.classes.entrySet().stream()
        .filter(each -> each.getKey().matcher(plain).matches())
        .findFirst()
        .map(each -> Held.ALL.why.replace(BLANK, plain + ", " + each.getValue() + ","));
  }
}
