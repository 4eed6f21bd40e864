package org.scantling.rulecases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scantling.reasons.Phase;

/** One file of rules as it is written. */
record DrlFile(Path path, String text, List<RuleText> rules) {
  private static final Path RULES = Path.of("rules");
  private static final Pattern RULE =
      Pattern.compile(
          "^rule \"([^\"]*)\"\\s*\\n(.*?)^when\\n(.*?)^then\\n(.*?)^end",
          Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern METADATA = Pattern.compile("@(\\w+)\\((\"[^\"]*\"|[^)]*)\\)");

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
    List<RuleText> rules = new ArrayList<>();
    Matcher found = RULE.matcher(text);
    while (found.find()) {
      rules.add(
          new RuleText(found.group(1), metadata(found.group(2)), found.group(3), found.group(4)));
    }
    return new DrlFile(path, text, List.copyOf(rules));
  }

  private static Map<String, List<String>> metadata(String written) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    Matcher found = METADATA.matcher(written);
    while (found.find()) {
      values
          .computeIfAbsent(found.group(1), key -> new ArrayList<>())
          .add(found.group(2).replace("\"", ""));
    }
    return values;
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
