package org.scantling.reasons;

/**
 * Something a rule can read. Its reference is what a reason's {@code because} names: a path of the
 * site file, a question, a table row or a check.
 */
public interface Fact {
  String reference();
}
