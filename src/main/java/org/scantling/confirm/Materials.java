package org.scantling.confirm;

import java.util.Optional;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.Factors;
import org.scantling.tables.MemberClass;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;
import org.scantling.timber.Adjustments;
import org.scantling.timber.DesignValues;
import org.scantling.timber.PropertyFactors;
import org.scantling.timber.Rectangle;
import org.scantling.timber.SizeFactors;
import org.scantling.timber.WetService;

/** The timber of a size, species and grade with every factor that its use asks for. */
public final class Materials {
  private final Tables tables;

  public Materials(Tables tables) {
    this.tables = tables;
  }

  /**
   * The timber, or empty where the standard has no such grade in that size.
   *
   * @param plies boards side by side
   */
  public Optional<Material> find(
      SizeRow size, int plies, String species, String grade, Service service) {
    return row(size, species, grade).map(row -> material(size, plies, row, service));
  }

  /** The row of design values that the timber is read from. */
  public Optional<DesignValueRow> row(SizeRow size, String species, String grade) {
    return tables.designValues().rows().stream()
        .filter(row -> row.species().equals(species) && row.grade().equals(grade))
        .filter(row -> row.memberClass() == size.memberClass())
        .filter(row -> row.nominalWidth().holds(size.nominalWidthIn()))
        .findFirst();
  }

  private Material material(SizeRow size, int plies, DesignValueRow row, Service service) {
    return new Material(
        new Rectangle(size.thicknessIn(), size.widthIn()),
        plies,
        new DesignValues(
            row.bendingPsi(),
            row.tensionPsi(),
            row.shearPsi(),
            row.bearingPsi(),
            row.compressionPsi(),
            row.elasticityPsi(),
            row.stabilityElasticityPsi(),
            row.specificGravityRatio()),
        adjustments(size, row.species(), service),
        row.wetWeightPcf());
  }

  private Adjustments adjustments(SizeRow size, String species, Service service) {
    Factors factors = tables.factors();
    Factors.Size sized = factors.size(species, size);
    MemberClass memberClass = size.memberClass();
    return Adjustments.none()
        .sized(
            new SizeFactors(
                sized.bendingFactor(), sized.tensionFactor(), sized.compressionFactor()))
        .wet(service.wet() ? wet(factors.wetService(species, memberClass)) : WetService.dry())
        .incised(service.incised() ? cut(factors.incising(memberClass)) : PropertyFactors.none())
        .repeated(memberClass.timber() ? 1 : service.repetitiveFactor());
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

  private static PropertyFactors cut(Factors.Incising cuts) {
    return new PropertyFactors(
        cuts.strengthFactor(),
        cuts.strengthFactor(),
        cuts.strengthFactor(),
        cuts.bearingFactor(),
        cuts.strengthFactor(),
        cuts.elasticityFactor());
  }
}
