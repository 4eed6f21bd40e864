package org.scantling.reasons;

import java.util.List;
import java.util.Optional;

/** What any answer of the engine holds besides its result. */
public interface Reasoned {
  /** Every question that a rule has answered, in the order of answering. */
  List<Decision> decisions();

  /** What a person must be told, gravest first. */
  List<Reason> cautions();

  /** Paths of the site file that were left out and decided by a rule. */
  List<String> assumptions();

  default Optional<Decision> decision(Question question) {
    return decisions().stream().filter(each -> each.question() == question).findFirst();
  }
}
