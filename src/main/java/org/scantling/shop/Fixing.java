package org.scantling.shop;

import java.util.Optional;

/**
 * Small things that hold the timber together.
 *
 * @param id row of the fasteners or packs table, or what it is
 * @param key by which a price list names it
 * @param name as asked for in the shop
 * @param count what the joints take, without spares
 * @param use where they go
 * @param rating what it must be rated for, where it is a part of a maker's
 */
record Fixing(String id, String key, String name, int count, String use, Optional<Rating> rating) {
  Fixing(String id, String name, int count, String use) {
    this(id, id, name, count, use, Optional.empty());
  }

  /** One that is packed like others, and priced by a name of its own. */
  Fixing named(String itsKey) {
    return new Fixing(id, itsKey, name, count, use, rating);
  }

  /** A part of a maker's. */
  Fixing rated(Rating asked) {
    return new Fixing(id, key, name, count, use, Optional.of(asked));
  }
}
