package org.scantling.rulecases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.scantling.reasons.Phase;
import org.scantling.rulebook.WrittenRule;

/** One file of rules as it is written. */
record DrlFile(Path path, String text, List<RuleText> rules) {
  private static final Path RULES = Path.of("rules");

  /** Every file of rules, sorted. */
  static List<DrlFile> all() {
    try (Stream<Path> files = Files.walk(RULES)) {
      return files
          .filter(each -> each.toString().endsWith(".drl"))
          .sorted()
          .map(DrlFile::read)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DrlFile read(Path path) {
    try {
      return parse(path, Files.readString(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static DrlFile parse(Path path, String text) {
    return new DrlFile(path, text, WrittenRule.in(text).stream().map(RuleText::new).toList());
  }

  /** The folder and the file, without its ending: the place people call it by. */
  String place() {
    return RULES.relativize(path).toString().replace(".drl", "");
  }

  Phase phase() {
    return Phase.valueOf(path.getParent().getFileName().toString().toUpperCase(Locale.ROOT));
  }

  Path cases() {
    return path.resolveSibling(path.getFileName().toString().replace(".drl", ".cases.json"));
  }

  List<String> ids() {
    return rules.stream().map(RuleText::id).toList();
  }
}
