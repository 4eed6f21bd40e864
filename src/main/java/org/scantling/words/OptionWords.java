package org.scantling.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.sayings.Sayings;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;
import org.scantling.tables.UserRow;

/** How the words of the rule base are said: options, soils, users, load combinations. */
final class OptionWords {
  private static final Sayings SAYINGS = Sayings.of("voice");
  private static final Pattern PAIR = Pattern.compile("2-(\\d+x\\d+)");
  private static final Pattern LOAD = Pattern.compile("[A-Z][a-z]?");

  private final Map<String, WordRow> byOption = new HashMap<>();
  private final Tables tables;

  private OptionWords(Tables tables) {
    this.tables = tables;
  }

  static OptionWords read(Tables tables) {
    OptionWords words = new OptionWords(tables);
    for (WordRow row : WordFile.read("words/options.csv")) {
      words.byOption.put(row.cell("kind") + "=" + row.cell("option"), row);
    }
    return words;
  }

  /**
   * An option in words.
   *
   * @param kind the question it answers, or the name of the evidence
   */
  String say(String kind, String option, Reader reader) {
    return find(kind, option, reader).orElseGet(() -> unlisted(option));
  }

  /** The words of an option that has a row. */
  Optional<String> find(String kind, String option, Reader reader) {
    return Optional.ofNullable(byOption.get(kind + "=" + option))
        .map(row -> row.cell(reader == Reader.CLIENT ? "client" : "builder"));
  }

  /** The dressed size behind a nominal one. */
  Optional<SizeRow> dressed(String option) {
    Matcher pair = PAIR.matcher(option);
    return tables.sizes().find(pair.matches() ? pair.group(1) : option);
  }

  private String unlisted(String option) {
    Matcher pair = PAIR.matcher(option);
    if (pair.matches()) {
      return SAYINGS.say("pair", "size", pair.group(1));
    }
    Optional<UserRow> user = tables.users().find(option);
    return user.map(UserRow::words).orElseGet(() -> option.replace('-', ' '));
  }

  /** The loads of a combination such as {@code D+0.75S}, in words. */
  String combination(String combination, Reader reader) {
    List<String> loads = new ArrayList<>();
    Matcher load = LOAD.matcher(combination);
    while (load.find()) {
      loads.add(say("load", load.group(), reader));
    }
    int last = loads.size() - 1;
    return last < 1
        ? SAYINGS.say("combination.alone", "load", String.join("", loads))
        : SAYINGS.say(
            "combination",
            "loads",
            String.join(", ", loads.subList(0, last)),
            "last",
            loads.get(last));
  }
}
