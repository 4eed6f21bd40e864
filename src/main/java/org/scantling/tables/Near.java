package org.scantling.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The names that a mistyped name may have meant. */
final class Near {
  private static final int SHORT_LIST = 15;

  private Near() {}

  /** All names when they are few, else those of the same family (up to the first dot). */
  static String list(String name, Collection<String> names) {
    if (names.size() <= SHORT_LIST) {
      return String.join(", ", names);
    }
    int dot = name.indexOf('.');
    String family =
        dot > 0 ? name.substring(0, dot + 1) : name.substring(0, Math.min(1, name.length()));
    List<String> kin = new ArrayList<>();
    for (String candidate : names) {
      if (candidate.startsWith(family)) {
        kin.add(candidate);
      }
    }
    if (kin.isEmpty()) {
      kin.addAll(names);
    }
    boolean cut = kin.size() > SHORT_LIST;
    return String.join(", ", cut ? kin.subList(0, SHORT_LIST) : kin) + (cut ? ", ..." : "");
  }
}
