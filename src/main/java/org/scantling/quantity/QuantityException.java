package org.scantling.quantity;

import java.util.Objects;
import java.util.Optional;

/** A text that is no quantity of the expected kind; names what was found and what is accepted. */
public final class QuantityException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String found;
  private final String accepted;
  private final String maybe;

  QuantityException(String found, String accepted, String maybe) {
    super(QuantityKind.say("problem", "found", found, "accepted", accepted, "maybe", maybe));
    this.found = found;
    this.accepted = accepted;
    this.maybe = maybe;
  }

  /** What was found, what is accepted and what may be meant, as a sentence. */
  @Override
  public String getMessage() {
    return Objects.requireNonNull(super.getMessage());
  }

  /** The text as it stood, with what is wrong with it in brackets: {@code 6 (no unit)}. */
  public String found() {
    return found;
  }

  /** What is accepted instead, as it follows "must be". */
  public String accepted() {
    return accepted;
  }

  /** A likely meaning, where there is one. */
  public Optional<String> maybe() {
    return maybe.isEmpty() ? Optional.empty() : Optional.of(maybe);
  }
}
