package org.scantling.quantity;

/** In which units people read the output. */
public enum UnitSystem {
  IMPERIAL,
  METRIC
}
