package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;

/** Species and grades as files write them, in general and for single roles. */
final class MaterialsFile {
  private MaterialsFile() {}

  /** The timber of one role. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Role(
      @Entry(kind = EntryKind.WORD, table = TableWords.SPECIES, exception = true) String species,
      @Entry(kind = EntryKind.WORD, table = TableWords.GRADES, exception = true) String grade) {}

  /** The timber that a design is made of. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record OfDesign(
      @Entry(kind = EntryKind.WORD, table = TableWords.SPECIES, exception = true) String species,
      @Entry(kind = EntryKind.WORD, table = TableWords.GRADES, exception = true) String grade,
      @Entry(exception = true) Role posts,
      @Entry(exception = true) Role headers,
      @Entry(exception = true) Role crossbeams,
      @Entry(exception = true) Role rails,
      @Entry(exception = true) Role braces) {}
}
