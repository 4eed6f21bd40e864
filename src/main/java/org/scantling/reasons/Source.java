package org.scantling.reasons;

/**
 * Where a number or a rule comes from.
 *
 * @param kind what stands behind it
 * @param citation document, edition and section, or "common practice, no source"
 * @param fromMemory true while nobody has seen the value in print; outputs say so
 */
public record Source(SourceKind kind, String citation, boolean fromMemory) {
  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source needs a citation");
    }
  }

  /** The citation as people read it, with its doubt. */
  public String text() {
    return fromMemory ? citation + ", from memory" : citation;
  }
}
