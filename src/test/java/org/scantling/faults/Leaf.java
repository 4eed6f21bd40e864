package org.scantling.faults;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Another value for a key of a file that has each key on its own line as {@code path = value}; no
 * value takes the key away.
 */
record Leaf(String file, String path, String value) implements Edit {
  @Override
  public String on(String text) {
    String line = value.isEmpty() ? "" : path + " = " + value + "\n";
    Matcher found = Pattern.compile("(?m)^" + Pattern.quote(path) + " = .*\n").matcher(text);
    return found.find() ? found.replaceFirst(Matcher.quoteReplacement(line)) : text + line;
  }
}
