package org.scantling.design;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Bays that are not all as long.
 *
 * @param lengthsIn from the first post on
 */
record UnevenBays(List<Double> lengthsIn) implements Bays {
  static final double LAST_BITS = 1e-9;

  UnevenBays {
    lengthsIn = List.copyOf(lengthsIn);
  }

  @Override
  public int count() {
    return lengthsIn.size();
  }

  @Override
  public double longestIn() {
    return Collections.max(lengthsIn);
  }

  @Override
  public double shortestIn() {
    return Collections.min(lengthsIn);
  }

  @Override
  public double lengthIn(int bay) {
    return lengthsIn.get(bay);
  }

  @Override
  public double alongIn(int post) {
    return lengthsIn.subList(0, post).stream().mapToDouble(Double::doubleValue).sum();
  }

  @Override
  public int spacesIn(int bay, int inLongest) {
    double wanted = inLongest * lengthIn(bay) / longestIn();
    return (int) Math.max(1, Math.ceil(wanted - LAST_BITS));
  }

  @Override
  public boolean even() {
    return false;
  }

  @Override
  public boolean mirrored() {
    int last = count() - 1;
    return IntStream.range(0, count() / 2)
        .allMatch(bay -> Math.abs(lengthIn(bay) - lengthIn(last - bay)) < LAST_BITS);
  }

  @Override
  public double tributaryIn() {
    return IntStream.rangeClosed(0, count()).mapToDouble(this::tributaryIn).max().orElseThrow();
  }

  private double tributaryIn(int post) {
    return ((post > 0 ? lengthIn(post - 1) : 0) + (post < count() ? lengthIn(post) : 0)) / 2;
  }
}
