package org.scantling.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.design.BaseDesign;
import org.scantling.design.Structure;
import org.scantling.design.WayOfBuilding;
import org.scantling.sayings.Sayings;

/** Which timber has a larger cross-section than that of the base, and what that is in words. */
final class Larger {
  private static final Sayings SAYINGS = Sayings.of("drawing");

  private final Map<String, String> byRole = new LinkedHashMap<>();
  private final BaseFrame base;

  /** Some timber of the base: so many side by side. */
  private record Before(String size, int plies) {}

  private Larger(BaseFrame base) {
    this.base = base;
  }

  static Larger of(Structure structure, BaseFrame base) {
    Larger larger = new Larger(base);
    structure.members().forEach(larger::compare);
    return larger;
  }

  private void compare(Structure.Member now) {
    before(now.role())
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

  private static String size(String size, int plies) {
    return plies > 1 ? SAYINGS.say("larger.pair", "size", size) : size;
  }

  private Optional<Before> before(String role) {
    BaseDesign design = base.design();
    return switch (role) {
      case "post" -> Optional.of(new Before(design.posts().size(), 1));
      case "header" -> Optional.of(new Before(design.headers().size(), headerPlies()));
      case "crossbeam" -> Optional.of(new Before(design.crossbeams().size(), 1));
      case "rail" -> design.sidePanels().map(panels -> new Before(panels.rail(), 1));
      case "brace" -> design.braces().map(braces -> new Before(braces.size(), 1));
      default -> Optional.empty();
    };
  }

  private int headerPlies() {
    return base.design().headers().style().equals(WayOfBuilding.PAIRED) ? 2 : 1;
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
