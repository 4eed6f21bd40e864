package org.scantling.intake;

import java.util.List;
import org.scantling.design.WayOfBuilding;

/** The keys of a site file. Key names are the component names with hyphens. */
record SiteFile(
    @Entry(says = "what the job is called", required = true) String title,
    @Entry(says = "the base design: a path from this file on, or from the root", required = true)
        String base,
    @Entry(says = "the place", required = true) Place site,
    @Entry(says = "the walk under the structure", required = true) Walk walkway,
    @Entry(says = "the climbers") List<Plant> planting,
    @Entry(says = "the timber") Timber materials,
    @Entry(says = "what is wanted where the rules leave a choice") Choices preferences) {

  record Place(
      @Entry(says = "frost, snow and wind", required = true) PlaceClimate climate,
      @Entry(says = "soil class", kind = EntryKind.WORD, table = TableWords.SOILS) String soil,
      @Entry(says = "fall of the ground along the walk", kind = EntryKind.PERCENT) String slope,
      @Entry(says = "the hill, ridge or escarpment that it stands on") PlaceClimate.Hill hill,
      @Entry(
              says =
                  "whether each post stands by itself and may move 1/2 in at the ground, where"
                      + " the code doubles what the soil holds sideways",
              kind = EntryKind.WORD,
              words = {"yes", "no"})
          String isolatedPosts) {}

  record Walk(
      @Entry(
              says = "first to last post, center to center",
              kind = EntryKind.LENGTH,
              required = true)
          String length,
      @Entry(
              says = "number of equal bays, where it is not left to the rules",
              kind = EntryKind.COUNT)
          Integer bays,
      @Entry(says = "free width between the rows", kind = EntryKind.LENGTH) String clearWidth,
      @Entry(says = "who and what passes", kind = EntryKind.WORD, table = TableWords.USERS)
          List<Machine> users,
      @Entry(says = "free height under the lowest overhead timber", kind = EntryKind.LENGTH)
          String headroom) {}

  record Machine(
      @Entry(says = "width of the machine", kind = EntryKind.LENGTH, required = true)
          String machineWidth) {}

  record Plant(
      @Entry(
              says = "class of climber",
              kind = EntryKind.WORD,
              table = TableWords.VINES,
              required = true)
          String vine) {}

  record Timber(
      @Entry(says = "species group", kind = EntryKind.WORD, table = TableWords.SPECIES)
          String species,
      @Entry(says = "grade", kind = EntryKind.WORD, table = TableWords.GRADES) String grade,
      @Entry(
              says = "where the timber is bought, which decides the sizes and lengths",
              kind = EntryKind.WORD,
              words = {"north-america", "metric"})
          String market,
      @Entry(says = "the posts, where they are of other timber", exception = true)
          MaterialsFile.Role posts,
      @Entry(says = "the headers, where they are of other timber", exception = true)
          MaterialsFile.Role headers,
      @Entry(says = "the crossbeams, where they are of other timber", exception = true)
          MaterialsFile.Role crossbeams,
      @Entry(says = "the side rails, where they are of other timber", exception = true)
          MaterialsFile.Role rails,
      @Entry(says = "the braces, where they are of other timber", exception = true)
          MaterialsFile.Role braces) {}

  record Choices(
      @Entry(
              says = "how the posts stand",
              kind = EntryKind.WORD,
              words = {
                "auto",
                WayOfBuilding.EMBEDDED,
                WayOfBuilding.CONCRETE,
                WayOfBuilding.BRACKET,
                WayOfBuilding.MOMENT_BASE
              })
          String footing,
      @Entry(
              says = "header on top of the posts or a pair bolted to them",
              kind = EntryKind.WORD,
              words = {"auto", WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED})
          String header,
      @Entry(
              says = "what to keep near the base design",
              kind = EntryKind.WORD,
              words = {"look", "cost", "members"})
          String keep,
      @Entry(
              says = "published loads, or those that the base has proven",
              kind = EntryKind.WORD,
              words = {"published", "proven"})
          String basis,
      @Entry(
              says = "embedment by the code's formula or by the base's experience",
              kind = EntryKind.WORD,
              words = {"code", "experience"})
          String embedmentBasis,
      @Entry(
              says = "risk category of the structure",
              kind = EntryKind.WORD,
              words = {"I", "II"})
          String riskCategory,
      @Entry(
              says = "snow on the share of the sky that the top covers, or on all of it",
              kind = EntryKind.WORD,
              words = {"open", "full"})
          String snowShare,
      @Entry(
              says = "one crossbeam at each row of posts or two, where knee braces hold the posts",
              kind = EntryKind.WORD,
              words = {"auto", WayOfBuilding.SINGLE_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS})
          String crossbeamsAtPosts) {}
}
