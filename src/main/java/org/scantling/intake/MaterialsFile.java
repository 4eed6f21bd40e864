package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;

/** Species and grades as files write them, in general and for single roles. */
final class MaterialsFile {
  private MaterialsFile() {}

  /** The timber of one role. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Role(
      @Entry(
              says = "species group",
              kind = EntryKind.WORD,
              table = TableWords.SPECIES,
              exception = true)
          String species,
      @Entry(says = "grade", kind = EntryKind.WORD, table = TableWords.GRADES, exception = true)
          String grade) {}

  /** The timber that a design is made of. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record OfDesign(
      @Entry(
              says = "species group",
              kind = EntryKind.WORD,
              table = TableWords.SPECIES,
              exception = true)
          String species,
      @Entry(says = "grade", kind = EntryKind.WORD, table = TableWords.GRADES, exception = true)
          String grade,
      @Entry(says = "the posts, where they are of other timber", exception = true) Role posts,
      @Entry(says = "the headers, where they are of other timber", exception = true) Role headers,
      @Entry(says = "the crossbeams, where they are of other timber", exception = true)
          Role crossbeams,
      @Entry(says = "the side rails, where they are of other timber", exception = true) Role rails,
      @Entry(says = "the braces, where they are of other timber", exception = true) Role braces) {}
}
