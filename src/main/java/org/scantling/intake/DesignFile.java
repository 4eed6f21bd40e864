package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.scantling.design.WayOfBuilding;
import tools.jackson.databind.annotation.JsonSerialize;

/** The keys of a design file. Key names are the component names with hyphens. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record DesignFile(
    @Entry(says = "what the design is called", required = true) String title,
    @Entry(says = "where and since when it has stood") Proven proven,
    @Entry(says = "the posts", required = true) Posts posts,
    @Entry(says = "the timbers along the rows", required = true) Headers headers,
    @Entry(says = "the timbers across the walk", required = true) Crossbeams crossbeams,
    @Entry(says = "rails and pickets between the posts of a row", words = "none")
        @JsonInclude(JsonInclude.Include.ALWAYS)
        @JsonSerialize(nullsUsing = NoneSerializer.class)
        SidePanels sidePanels,
    @Entry(says = "knee braces", words = "none")
        @JsonInclude(JsonInclude.Include.ALWAYS)
        @JsonSerialize(nullsUsing = NoneSerializer.class)
        Braces braces,
    @Entry(says = "the timber", exception = true) MaterialsFile.OfDesign materials) {

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Proven(
      @Entry(says = "first year of service", kind = EntryKind.YEAR, required = true) Integer built,
      @Entry(says = "the climate of that place", required = true) ClimateFile climate,
      @Entry(says = "soil class of that place", kind = EntryKind.WORD, table = TableWords.SOILS)
          String soil,
      @Entry(says = "the climber it carried", kind = EntryKind.WORD, table = TableWords.VINES)
          String vine,
      @Entry(
              says =
                  "fall of the ground along the walk there; the height of the posts is then that"
                      + " of the upper end under a level top, of the lower post of a bay under one"
                      + " that goes down in steps",
              kind = EntryKind.PERCENT)
          String slope,
      @Entry(says = "what has happened to it since it was built", exception = true)
          List<Event> record) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Event(
      @Entry(says = "when it was", kind = EntryKind.DATE, required = true) String date,
      @Entry(
              says = "a storm or a snow that it went through, an inspection or a repair",
              kind = EntryKind.WORD,
              words = {"storm", "snow", "inspection", "repair"},
              required = true)
          String kind,
      @Entry(says = "what it was, or what was found or done", required = true) String what,
      @Entry(says = "name of a photograph of it", exception = true) String photo) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Posts(
      @Entry(
              says = "nominal size",
              kind = EntryKind.WORD,
              table = TableWords.SIZES,
              required = true)
          String size,
      @Entry(
              says = "center to center of the rows, across the walk",
              kind = EntryKind.LENGTH,
              required = true)
          String rowSpacing,
      @Entry(
              says = "center to center of neighboring posts along the walk",
              kind = EntryKind.LENGTH,
              required = true)
          String bay,
      @Entry(says = "bays along the walk", kind = EntryKind.COUNT, required = true) Integer bays,
      @Entry(
              says = "finished ground to the top of the post",
              kind = EntryKind.LENGTH,
              required = true)
          String height,
      @Entry(
              says = "depth below finished ground; 0 in on brackets",
              kind = EntryKind.LENGTH,
              exception = true)
          String embedment,
      @Entry(
              says = "how the posts stand",
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
              says = "what fills the hole",
              kind = EntryKind.WORD,
              words = {WayOfBuilding.TAMPED_SOIL, WayOfBuilding.GRAVEL, WayOfBuilding.CONCRETE})
          String backfill,
      @Entry(says = "width of the hole", kind = EntryKind.LENGTH) String holeDiameter,
      @Entry(
              says = "from end to end, instead of the embedment",
              kind = EntryKind.LENGTH,
              exception = true)
          String length) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Headers(
      @Entry(
              says = "on top of the posts or a pair bolted to them",
              kind = EntryKind.WORD,
              words = {WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED},
              required = true)
          String style,
      @Entry(
              says = "nominal size of one ply",
              kind = EntryKind.WORD,
              table = TableWords.SIZES,
              required = true)
          String size,
      @Entry(
              says = "past the outer face of the end post",
              kind = EntryKind.LENGTH,
              exception = true)
          String overhang,
      @Entry(
              says = "depth of the recess that seats it; 0 in for none",
              kind = EntryKind.LENGTH,
              required = true)
          String notch,
      @Entry(
              says = "of the whole run from end to end, instead of the overhang",
              kind = EntryKind.LENGTH,
              exception = true)
          String length) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Crossbeams(
      @Entry(
              says = "nominal size",
              kind = EntryKind.WORD,
              table = TableWords.SIZES,
              required = true)
          String size,
      @Entry(
              says = "over the whole structure; two side by side count once",
              kind = EntryKind.COUNT,
              required = true)
          Integer count,
      @Entry(says = "past the outer face of the header", kind = EntryKind.LENGTH, exception = true)
          String overhang,
      @Entry(
              says = "depth of the recess over the header; 0 in for none",
              kind = EntryKind.LENGTH,
              required = true)
          String notch,
      @Entry(
              says = "one crossbeam at each row of posts, or two side by side; one, if left out",
              kind = EntryKind.WORD,
              words = {WayOfBuilding.SINGLE_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS},
              exception = true)
          String atPosts,
      @Entry(says = "the shape of the tails") EndCut endCut,
      @Entry(
              says = "from end to end, instead of the overhang",
              kind = EntryKind.LENGTH,
              exception = true)
          String length) {}

  record EndCut(
      @Entry(
              says = "shape of the cut",
              kind = EntryKind.WORD,
              words = {"slant", "plumb", "curve"},
              required = true)
          String kind,
      @Entry(says = "how far it drops from the top edge", kind = EntryKind.LENGTH, required = true)
          String drop,
      @Entry(says = "how far it runs along the timber", kind = EntryKind.LENGTH, required = true)
          String run) {}

  record SidePanels(
      @Entry(
              says = "nominal size of the level pieces",
              kind = EntryKind.WORD,
              table = TableWords.SIZES,
              required = true)
          String rail,
      @Entry(says = "height of the rail above ground", kind = EntryKind.LENGTH, required = true)
          String railHeight,
      @Entry(says = "upright pieces a panel", kind = EntryKind.COUNT, required = true)
          Integer pickets) {}

  record Braces(
      @Entry(
              says = "nominal size",
              kind = EntryKind.WORD,
              table = TableWords.SIZES,
              required = true)
          String size,
      @Entry(
              says = "length along the post and along the header",
              kind = EntryKind.LENGTH,
              required = true)
          String leg) {}
}
