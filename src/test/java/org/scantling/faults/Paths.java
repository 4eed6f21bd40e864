package org.scantling.faults;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes a file of {@code path = value} lines as YAML, its groups nested by the dots of the paths.
 */
final class Paths {
  private Paths() {}

  static String yaml(String lines) {
    Map<String, Object> root = new LinkedHashMap<>();
    for (String line : lines.split("\n")) {
      int equals = line.indexOf(" = ");
      if (equals > 0) {
        put(root, line.substring(0, equals).split("\\."), line.substring(equals + 3));
      }
    }
    StringBuilder text = new StringBuilder();
    write(root, "", text);
    return text.toString();
  }

  @SuppressWarnings("unchecked") // groups alone are maps, and only this class makes them
  private static void put(Map<String, Object> root, String[] keys, String value) {
    Map<String, Object> group = root;
    for (int i = 0; i + 1 < keys.length; i++) {
      Object below = group.computeIfAbsent(keys[i], key -> new LinkedHashMap<String, Object>());
      if (!(below instanceof Map)) {
        below = new LinkedHashMap<String, Object>();
        group.put(keys[i], below);
      }
      group = (Map<String, Object>) below;
    }
    group.put(keys[keys.length - 1], value);
  }

  private static void write(Map<String, Object> group, String indent, StringBuilder text) {
    group.forEach(
        (key, value) -> {
          text.append(indent).append(key).append(':');
          if (value instanceof Map<?, ?> below) {
            text.append('\n');
            below(below, indent, text);
          } else {
            text.append(' ').append(value).append('\n');
          }
        });
  }

  @SuppressWarnings("unchecked") // as above
  private static void below(Map<?, ?> group, String indent, StringBuilder text) {
    write((Map<String, Object>) group, indent + "  ", text);
  }
}
