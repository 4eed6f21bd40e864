package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.scantling.design.WayOfBuilding;
import tools.jackson.databind.annotation.JsonSerialize;

/**
 * The keys of a design file. Key names are the component names with hyphens; null is what a file
 * that is written leaves out.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record DesignFile(
    @Entry(required = true) String title,
    @Entry @Nullable Proven proven,
    @Entry(required = true) Posts posts,
    @Entry(required = true) Headers headers,
    @Entry(required = true) Crossbeams crossbeams,
    @Entry(words = "none")
        @JsonInclude(JsonInclude.Include.ALWAYS)
        @JsonSerialize(nullsUsing = NoneSerializer.class)
        @Nullable SidePanels sidePanels,
    @Entry(words = "none")
        @JsonInclude(JsonInclude.Include.ALWAYS)
        @JsonSerialize(nullsUsing = NoneSerializer.class)
        @Nullable Braces braces,
    @Entry(exception = true) MaterialsFile.@Nullable OfDesign materials) {

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Proven(
      @Entry(kind = EntryKind.YEAR, required = true) Integer built,
      @Entry(required = true) ClimateFile climate,
      @Entry(kind = EntryKind.WORD, table = TableWords.SOILS) @Nullable String soil,
      @Entry(kind = EntryKind.WORD, table = TableWords.VINES) @Nullable String vine,
      @Entry(kind = EntryKind.PERCENT) @Nullable String slope,
      @Entry(exception = true) @Nullable List<Event> record) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Event(
      @Entry(kind = EntryKind.DATE, required = true) String date,
      @Entry(
              kind = EntryKind.WORD,
              words = {"storm", "snow", "inspection", "repair"},
              required = true)
          String kind,
      @Entry(required = true) String what,
      @Entry(exception = true) @Nullable String photo) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Posts(
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, required = true) String size,
      @Entry(kind = EntryKind.LENGTH, required = true) String rowSpacing,
      @Entry(kind = EntryKind.LENGTH, required = true) @Nullable String bay,
      @Entry(kind = EntryKind.BAYS, required = true) WrittenBays bays,
      @Entry(kind = EntryKind.LENGTH, required = true) String height,
      @Entry(kind = EntryKind.LENGTH, exception = true) String embedment,
      @Entry(
              kind = EntryKind.WORD,
              words = {
                WayOfBuilding.EMBEDDED,
                WayOfBuilding.CONCRETE,
                WayOfBuilding.BRACKET,
                WayOfBuilding.MOMENT_BASE
              },
              required = true)
          String footing,
      @Entry(
              kind = EntryKind.WORD,
              words = {WayOfBuilding.TAMPED_SOIL, WayOfBuilding.GRAVEL, WayOfBuilding.CONCRETE})
          @Nullable String backfill,
      @Entry(kind = EntryKind.LENGTH) @Nullable String holeDiameter,
      @Entry(kind = EntryKind.LENGTH, exception = true) @Nullable String length) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Headers(
      @Entry(
              kind = EntryKind.WORD,
              words = {WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED},
              required = true)
          String style,
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, required = true) String size,
      @Entry(kind = EntryKind.LENGTH, exception = true) String overhang,
      @Entry(kind = EntryKind.LENGTH, required = true) String notch,
      @Entry(kind = EntryKind.LENGTH, exception = true) @Nullable String length) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Crossbeams(
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, required = true) String size,
      @Entry(kind = EntryKind.COUNT, required = true) Integer count,
      @Entry(kind = EntryKind.LENGTH, exception = true) String overhang,
      @Entry(kind = EntryKind.LENGTH, required = true) String notch,
      @Entry(
              kind = EntryKind.WORD,
              words = {WayOfBuilding.SINGLE_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS},
              exception = true)
          @Nullable String atPosts,
      @Entry @Nullable EndCut endCut,
      @Entry(kind = EntryKind.LENGTH, exception = true) @Nullable String length) {}

  record EndCut(
      @Entry(
              kind = EntryKind.WORD,
              words = {"slant", "plumb", "curve"},
              required = true)
          String kind,
      @Entry(kind = EntryKind.LENGTH, required = true) String drop,
      @Entry(kind = EntryKind.LENGTH, required = true) String run) {}

  record SidePanels(
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, required = true) String rail,
      @Entry(kind = EntryKind.LENGTH, required = true) String railHeight,
      @Entry(kind = EntryKind.COUNT, required = true) Integer pickets) {}

  record Braces(
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, required = true) String size,
      @Entry(kind = EntryKind.LENGTH, required = true) String leg) {}
}
