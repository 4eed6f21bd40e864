package org.scantling.shop;

import java.util.Optional;

/**
 * Small things that hold the timber together.
 *
 * @param id row of the fasteners or packs table, or what it is
 * @param name as asked for in the shop
 * @param count what the joints take, without spares
 * @param use where they go
 * @param rating what it must be rated for, where it is a part of a maker's
 */
record Fixing(String id, String name, int count, String use, Optional<Rating> rating) {
  Fixing(String id, String name, int count, String use) {
    this(id, name, count, use, Optional.empty());
  }

  /** A part of a maker's. */
  Fixing rated(Rating asked) {
    return new Fixing(id, name, count, use, Optional.of(asked));
  }
}
