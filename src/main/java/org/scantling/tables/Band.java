package org.scantling.tables;

/**
 * A stretch of nominal sizes, both ends included.
 *
 * @param fromIn least size, 0 where there is no bound
 * @param toIn greatest size, infinite where there is no bound
 */
public record Band(double fromIn, double toIn) {
  public boolean holds(double nominalIn) {
    return nominalIn >= fromIn && nominalIn <= toIn;
  }
}
