package org.scantling.reasons;

/** A table row with its source. */
public interface Cited extends Fact {
  String id();

  Source source();

  @Override
  default String reference() {
    return id();
  }
}
