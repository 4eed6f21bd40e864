package org.scantling.drawing;

import java.util.Set;

/**
 * Which pieces are larger than those of the base: drawn with a heavier line and a darker tone, and
 * named in words beside.
 *
 * @param roles of those pieces
 */
record Growth(Set<String> roles) {
  Growth {
    roles = Set.copyOf(roles);
  }

  static Growth none() {
    return new Growth(Set.of());
  }

  Tone tone(String role) {
    return roles.contains(role) ? Tone.GROWN : Tone.TIMBER;
  }

  LineClass line(String role) {
    return roles.contains(role) ? LineClass.GROWN : LineClass.VISIBLE;
  }
}
