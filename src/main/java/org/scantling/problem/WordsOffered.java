package org.scantling.problem;

import java.util.Comparator;
import java.util.List;
import org.scantling.answers.Stock;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;

/** The words by which questions may be answered. */
final class WordsOffered {
  private final Tables tables;
  private final Stock stock;

  WordsOffered(Tables tables, Stock stock) {
    this.tables = tables;
    this.stock = stock;
  }

  /** The words that answer a question, least demanding first. */
  List<String> of(Question question) {
    return switch (question) {
      case EXPOSURE -> tables.exposures().rows().stream().map(row -> row.id()).toList();
      case SOIL -> tables.soils().rows().stream().map(row -> row.id()).toList();
      case VINE -> vines();
      case SPECIES, POST_SPECIES, HEADER_SPECIES, CROSSBEAM_SPECIES, RAIL_SPECIES, BRACE_SPECIES ->
          tables.designValues().rows().stream().map(row -> row.species()).distinct().toList();
      case GRADE ->
          tables.designValues().rows().stream().map(row -> row.grade()).distinct().toList();
      case POST_GRADE, HEADER_GRADE, CROSSBEAM_GRADE, RAIL_GRADE, BRACE_GRADE -> stock.grades();
      case HEADER_STYLE -> List.of(WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED);
      case CROSSBEAM_BLOCKING -> List.of(WayOfBuilding.NO_BLOCKS, WayOfBuilding.OVER_HEADERS);
      case TOP_LINE ->
          List.of(WayOfBuilding.LEVEL, WayOfBuilding.FOLLOWS_GROUND, WayOfBuilding.STEPPED);
      case FOOTING_KIND ->
          List.of(WayOfBuilding.EMBEDDED, WayOfBuilding.BRACKET, WayOfBuilding.MOMENT_BASE);
      case FOOTING_BACKFILL ->
          List.of(WayOfBuilding.TAMPED_SOIL, WayOfBuilding.GRAVEL, WayOfBuilding.CONCRETE);
      case FOOTING_SIDE -> List.of(WayOfBuilding.AS_TABLED, WayOfBuilding.DOUBLED);
      case BRACING -> List.of(WayOfBuilding.NO_BRACES, WayOfBuilding.KNEE_BRACES);
      case CROSSBEAMS_AT_POSTS ->
          List.of(WayOfBuilding.SINGLE_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS);
      default -> throw new IllegalArgumentException(question.id() + " is not answered by a word");
    };
  }

  private List<String> vines() {
    return tables.vines().rows().stream()
        .sorted(
            Comparator.comparingDouble(VineRow::wetDesignPsf)
                .thenComparingDouble(VineRow::sideFillLeafRatio)
                .thenComparing(VineRow::id))
        .map(VineRow::id)
        .toList();
  }
}
