package org.scantling.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.design.Structure;
import org.scantling.sayings.Sayings;

/** Which timber has a larger cross-section than that of the base, and what that is in words. */
final class Larger {
  private static final Sayings SAYINGS = Sayings.of("drawing");

  private final Map<String, String> byRole = new LinkedHashMap<>();
  private final BaseFrame base;

  private Larger(BaseFrame base) {
    this.base = base;
  }

  static Larger of(Structure structure, BaseFrame base) {
    Larger larger = new Larger(base);
    structure.members().forEach(larger::compare);
    return larger;
  }

  private void compare(Structure.Member now) {
    base.before(now.role())
        .ifPresent(
            before -> {
              // Two crossbeams at a post are more of them, no larger ones.
              int plies = now.role().equals("header") ? now.plies() : 1;
              double nowIn2 = plies * now.breadthIn() * now.depthIn();
              double beforeIn2 = before.plies() * base.sectionIn2(before.size());
              if (nowIn2 > beforeIn2 + 1e-6) {
                byRole.put(
                    now.role(),
                    SAYINGS.say(
                        "larger.role",
                        "role",
                        SAYINGS.say("role." + now.role()),
                        "now",
                        size(now.size(), plies),
                        "before",
                        size(before.size(), before.plies())));
              }
            });
  }

  static String size(String size, int plies) {
    return plies > 1 ? SAYINGS.say("larger.pair", "size", size) : size;
  }

  Growth growth() {
    return new Growth(byRole.keySet());
  }

  /** The roles alone, where any have grown. */
  Optional<String> names() {
    return byRole.isEmpty()
        ? Optional.empty()
        : Optional.of(
            SAYINGS.say(
                "larger.names",
                "roles",
                byRole.keySet().stream()
                    .map(role -> SAYINGS.say("role." + role))
                    .collect(Collectors.joining(", "))));
  }

  /** A sentence with the sizes. */
  String sentence() {
    return byRole.isEmpty()
        ? SAYINGS.say("larger.none")
        : SAYINGS.say("larger.all", "list", String.join("; ", byRole.values()));
  }
}
