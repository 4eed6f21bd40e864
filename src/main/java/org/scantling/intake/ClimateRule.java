package org.scantling.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A site names its frost, snow and wind, or its plant hardiness zone for a first estimate. */
final class ClimateRule {
  private ClimateRule() {}

  static void check(Node.Group file, Problems problems) {
    if (!(below(file, "site") instanceof Node.Group place)
        || !(below(place, "climate") instanceof Node.Group climate)) {
      return;
    }
    Set<String> keys = climate.members().keySet();
    List<String> missing = new ArrayList<>();
    if (!keys.contains("frost-depth") && !keys.contains("air-freezing-index")) {
      missing.add("frost-depth or air-freezing-index");
    }
    for (String key : List.of("ground-snow", "wind-speed")) {
      if (!keys.contains(key)) {
        missing.add(key);
      }
    }
    if (!keys.contains("hardiness-zone") && !missing.isEmpty()) {
      problems.add(
          climate
              .origin()
              .problem(
                  "site.climate",
                  "(missing: " + String.join(", ", missing) + ")",
                  "given by frost-depth or air-freezing-index, by ground-snow and by wind-speed, or by"
                      + " a hardiness-zone alone for a first estimate"));
    }
  }

  private static Node below(Node.Group group, String key) {
    Node.Member member = group.members().get(key);
    return member == null ? null : member.value();
  }
}
