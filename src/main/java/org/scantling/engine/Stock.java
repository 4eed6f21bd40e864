package org.scantling.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.confirm.Material;
import org.scantling.reasons.Candidate;
import org.scantling.reasons.Question;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.Factors;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;
import org.scantling.timber.Adjustments;
import org.scantling.timber.DesignValues;
import org.scantling.timber.PropertyFactors;
import org.scantling.timber.Rectangle;
import org.scantling.timber.SizeFactors;
import org.scantling.timber.WetService;

/**
 * What the yard sells, by the option names the rules use: {@code 4x4}, or {@code 2-2x6} for a pair
 * of boards.
 */
final class Stock {
  private static final String PAIR = "2-";

  private final Tables tables;
  private final String market;
  private final Map<List<String>, Optional<Material>> materials = new HashMap<>();

  Stock(Tables tables, String market) {
    this.tables = tables;
    this.market = market;
  }

  /** Options for a size question, smallest first. */
  List<String> options(Question question, boolean pairedHeaders) {
    return switch (question) {
      case CROSSBEAM_SIZE -> names("crossbeam", "");
      case HEADER_SIZE -> pairedHeaders ? names("board", PAIR) : names("header", "");
      case POST_SIZE -> names("post", "");
      case RAIL_SIZE -> names("rail", "");
      case BRACE_SIZE -> names("brace", "");
      default -> throw new IllegalArgumentException(question.id() + " is not a size");
    };
  }

  static String pair(String size) {
    return PAIR + size;
  }

  /** Boards side by side. */
  static int plies(String option) {
    return option.startsWith(PAIR) ? 2 : 1;
  }

  static String size(String option) {
    return option.startsWith(PAIR) ? option.substring(PAIR.length()) : option;
  }

  /** True where this yard sells the size, for whatever role. */
  boolean sells(String option) {
    return row(option).market().equals(market);
  }

  SizeRow row(String option) {
    return tables.size(size(option));
  }

  Candidate.Size candidate(Question question, String option) {
    SizeRow row = row(option);
    return new Candidate.Size(question, option, plies(option), row.thicknessIn(), row.widthIn());
  }

  /** The option in that species and grade outdoors; empty where the standard has no such grade. */
  Optional<Material> material(String option, String species, String grade) {
    return materials.computeIfAbsent(
        List.of(option, species, grade), key -> looked(option, species, grade));
  }

  private Optional<Material> looked(String option, String species, String grade) {
    SizeRow size = row(option);
    return tables.designValues().rows().stream()
        .filter(row -> row.species().equals(species) && row.grade().equals(grade))
        .filter(row -> row.memberClass() == size.memberClass())
        .filter(row -> row.nominalWidth().holds(size.nominalWidthIn()))
        .findFirst()
        .map(row -> material(option, size, row));
  }

  private Material material(String option, SizeRow size, DesignValueRow row) {
    return new Material(
        new Rectangle(size.thicknessIn(), size.widthIn()),
        plies(option),
        new DesignValues(
            row.bendingPsi(),
            row.tensionPsi(),
            row.shearPsi(),
            row.bearingPsi(),
            row.compressionPsi(),
            row.elasticityPsi(),
            row.stabilityElasticityPsi(),
            row.specificGravityRatio()),
        adjustments(size, row.species()),
        row.wetWeightPcf());
  }

  private Adjustments adjustments(SizeRow size, String species) {
    Factors factors = tables.factors();
    Factors.Size sized = factors.size(species, size);
    return Adjustments.none()
        .sized(
            new SizeFactors(
                sized.bendingFactor(), sized.tensionFactor(), sized.compressionFactor()))
        .wet(wet(factors.wetService(species, size.memberClass())))
        .incised(incised(size, species));
  }

  private static WetService wet(Factors.WetService wet) {
    return new WetService(
        new PropertyFactors(
            wet.bendingFactor(),
            wet.tensionFactor(),
            wet.shearFactor(),
            wet.bearingFactor(),
            wet.compressionFactor(),
            wet.elasticityFactor()),
        wet.bendingUnityUpToPsi(),
        wet.compressionUnityUpToPsi());
  }

  private PropertyFactors incised(SizeRow size, String species) {
    if (!tables.defaults().row("incised." + species).word().equals("yes")) {
      return PropertyFactors.none();
    }
    Factors.Incising cuts = tables.factors().incising(size.memberClass());
    return new PropertyFactors(
        cuts.strengthFactor(),
        cuts.strengthFactor(),
        cuts.strengthFactor(),
        cuts.bearingFactor(),
        cuts.strengthFactor(),
        cuts.elasticityFactor());
  }

  private List<String> names(String role, String prefix) {
    List<String> names = new ArrayList<>();
    for (SizeRow row : tables.sizes(role, market)) {
      names.add(prefix + row.id());
    }
    return names;
  }
}
