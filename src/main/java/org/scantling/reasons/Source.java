package org.scantling.reasons;

/**
 * Where a number or a rule comes from.
 *
 * @param kind what stands behind it
 * @param citation document, edition and section, or "common practice, no source"
 * @param sight how the value came to us; outputs say so while nobody has seen it in print
 */
public record Source(SourceKind kind, String citation, Sight sight) {
  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source needs a citation");
    }
  }

  /** A source that was seen, or recalled. */
  public Source(SourceKind kind, String citation, boolean fromMemory) {
    this(kind, citation, fromMemory ? Sight.MEMORY : Sight.SEEN);
  }

  /** Whether nobody has seen the value, in print or copied out. */
  public boolean fromMemory() {
    return sight == Sight.MEMORY;
  }

  /** The citation as people read it, with its doubt. */
  public String text() {
    return citation + sight.doubt();
  }
}
