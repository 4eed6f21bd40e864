package org.scantling.intake;

import java.util.List;
import org.scantling.design.WayOfBuilding;
import org.scantling.tables.Market;

/** The keys of a site file. Key names are the component names with hyphens. */
record SiteFile(
    @Entry(required = true) String title,
    @Entry(kind = EntryKind.PATHS, required = true) String base,
    @Entry(required = true) Place site,
    @Entry(required = true) Walk walkway,
    @Entry List<Plant> planting,
    @Entry Timber materials,
    @Entry Choices preferences) {

  record Place(
      @Entry(required = true) PlaceClimate climate,
      @Entry(kind = EntryKind.WORD, table = TableWords.SOILS) String soil,
      @Entry(kind = EntryKind.PERCENT) String slope,
      @Entry(kind = EntryKind.CROSS_FALL) String crossSlope,
      @Entry(kind = EntryKind.LENGTH) String rockAt,
      @Entry(kind = EntryKind.PLACE, exception = true) String place,
      @Entry PlaceClimate.Hill hill,
      @Entry(
              kind = EntryKind.WORD,
              words = {"yes", "no"})
          String isolatedPosts) {}

  record Walk(
      @Entry(kind = EntryKind.LENGTH, required = true) String length,
      @Entry(kind = EntryKind.BAYS) Integer bays,
      @Entry(kind = EntryKind.LENGTH) String clearWidth,
      @Entry(kind = EntryKind.WORD, table = TableWords.USERS) List<Machine> users,
      @Entry(kind = EntryKind.LENGTH) String headroom,
      @Entry List<Stretch> noPost) {}

  record Stretch(
      @Entry(kind = EntryKind.LENGTH, required = true) String from,
      @Entry(kind = EntryKind.LENGTH, required = true) String to) {}

  record Machine(@Entry(kind = EntryKind.LENGTH, required = true) String machineWidth) {}

  record Plant(
      @Entry(kind = EntryKind.WORD, table = TableWords.VINES, required = true) String vine) {}

  record Timber(
      @Entry(kind = EntryKind.WORD, table = TableWords.SPECIES) String species,
      @Entry(kind = EntryKind.WORD, table = TableWords.GRADES) String grade,
      @Entry(
              kind = EntryKind.WORD,
              words = {Market.NORTH_AMERICA, Market.METRIC})
          String market,
      @Entry(exception = true) MaterialsFile.Role posts,
      @Entry(exception = true) MaterialsFile.Role headers,
      @Entry(exception = true) MaterialsFile.Role crossbeams,
      @Entry(exception = true) MaterialsFile.Role rails,
      @Entry(exception = true) MaterialsFile.Role braces) {}

  record Choices(
      @Entry(
              kind = EntryKind.WORD,
              words = {
                "auto",
                WayOfBuilding.EMBEDDED,
                WayOfBuilding.CONCRETE,
                WayOfBuilding.GRAVEL,
                WayOfBuilding.TAMPED_SOIL,
                WayOfBuilding.BRACKET,
                WayOfBuilding.MOMENT_BASE
              })
          String footing,
      @Entry(
              kind = EntryKind.WORD,
              words = {"auto", WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED})
          String header,
      @Entry(
              kind = EntryKind.WORD,
              words = {"look", "cost", "members"})
          String keep,
      @Entry(
              kind = EntryKind.WORD,
              words = {"published", "proven"})
          String basis,
      @Entry(
              kind = EntryKind.WORD,
              words = {"code", "experience"})
          String embedmentBasis,
      @Entry(
              kind = EntryKind.WORD,
              words = {"I", "II"})
          String riskCategory,
      @Entry(
              kind = EntryKind.WORD,
              words = {"open", "full"})
          String snowShare,
      @Entry(
              kind = EntryKind.WORD,
              words = {"auto", WayOfBuilding.SINGLE_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS})
          String crossbeamsAtPosts,
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, exception = true) String largestPost,
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, exception = true)
          String largestHeader,
      @Entry(kind = EntryKind.WORD, table = TableWords.SIZES, exception = true)
          String largestCrossbeam) {}
}
