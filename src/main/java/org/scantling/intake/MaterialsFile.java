package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * Species and grades as files write them, in general and for single roles; null is what a file that
 * is written leaves out.
 */
final class MaterialsFile {
  private MaterialsFile() {}

  /** The timber of one role. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Role(
      @Entry(kind = EntryKind.WORD, table = TableWords.SPECIES, exception = true)
          @Nullable String species,
      @Entry(kind = EntryKind.WORD, table = TableWords.GRADES, exception = true)
          @Nullable String grade) {}

  /** The timber that a design is made of. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record OfDesign(
      @Entry(kind = EntryKind.WORD, table = TableWords.SPECIES, exception = true)
          @Nullable String species,
      @Entry(kind = EntryKind.WORD, table = TableWords.GRADES, exception = true)
          @Nullable String grade,
      @Entry(exception = true) @Nullable Role posts,
      @Entry(exception = true) @Nullable Role headers,
      @Entry(exception = true) @Nullable Role crossbeams,
      @Entry(exception = true) @Nullable Role rails,
      @Entry(exception = true) @Nullable Role braces) {}
}
