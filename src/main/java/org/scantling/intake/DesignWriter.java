package org.scantling.intake;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.QuantityKind;
import org.scantling.reasons.TimberRole;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLWriteFeature;

/** Writes a design as a design file that {@link DesignReader} takes back without any loss. */
public final class DesignWriter {
  private static final ObjectMapper YAML =
      YAMLMapper.builder(YAMLFactory.builder().stringQuotingChecker(new PlainWords()).build())
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .disable(YAMLWriteFeature.WRITE_DOC_START_MARKER)
          .enable(YAMLWriteFeature.MINIMIZE_QUOTES)
          .enable(YAMLWriteFeature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
          .disable(YAMLWriteFeature.SPLIT_LINES)
          .build();
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .enable(SerializationFeature.INDENT_OUTPUT)
          .build();

  private DesignWriter() {}

  /** The design as YAML text. */
  public static String yaml(BaseDesign design) {
    return YAML.writeValueAsString(file(design));
  }

  /** The design as JSON text. */
  public static String json(BaseDesign design) {
    return JSON.writeValueAsString(file(design)).replace("\r\n", "\n") + "\n";
  }

  private static DesignFile file(BaseDesign design) {
    return new DesignFile(
        design.title(),
        design.proven().map(DesignWriter::proven).orElse(null),
        posts(design.posts()),
        new DesignFile.Headers(
            design.headers().style(),
            design.headers().size(),
            inches(design.headers().overhangIn()),
            inches(design.headers().notchIn()),
            null),
        crossbeams(design.crossbeams()),
        design.sidePanels().map(DesignWriter::sidePanels).orElse(null),
        design
            .braces()
            .map(braces -> new DesignFile.Braces(braces.size(), inches(braces.legIn())))
            .orElse(null),
        design.materials().map(DesignWriter::materials).orElse(null));
  }

  private static MaterialsFile.OfDesign materials(Site.Materials materials) {
    return new MaterialsFile.OfDesign(
        materials.species().orElse(null),
        materials.grade().orElse(null),
        role(materials, TimberRole.POSTS),
        role(materials, TimberRole.HEADERS),
        role(materials, TimberRole.CROSSBEAMS),
        role(materials, TimberRole.RAILS),
        role(materials, TimberRole.BRACES));
  }

  private static MaterialsFile.@Nullable Role role(Site.Materials materials, TimberRole role) {
    Site.Timber timber = materials.byRole().get(role.key());
    return timber == null
        ? null
        : new MaterialsFile.Role(timber.species().orElse(null), timber.grade().orElse(null));
  }

  private static DesignFile.Proven proven(BaseDesign.Proven proven) {
    Site.Climate climate = proven.climate();
    return new DesignFile.Proven(
        proven.builtYear(),
        new ClimateFile(
            amount(climate.frostDepthIn(), QuantityKind.LENGTH),
            amount(climate.groundSnowPsf(), QuantityKind.LOAD),
            amount(climate.windSpeedMph(), QuantityKind.WIND_SPEED),
            climate.exposure().orElse(null),
            zone(climate.hardinessZone()),
            amount(climate.freezingIndexFDays(), QuantityKind.DEGREE_DAYS),
            amount(climate.meanAnnualF(), QuantityKind.TEMPERATURE)),
        proven.soil().orElse(null),
        proven.vine().orElse(null),
        slope(proven.slopePercent()),
        proven.record().isEmpty()
            ? null
            : proven.record().stream().map(DesignWriter::event).toList());
  }

  private static DesignFile.Event event(BaseDesign.Event event) {
    return new DesignFile.Event(
        event.date(), event.kind(), event.what(), event.photo().orElse(null));
  }

  private static DesignFile.Posts posts(BaseDesign.Posts posts) {
    return new DesignFile.Posts(
        posts.size(),
        inches(posts.rowSpacingIn()),
        posts.along().even() ? inches(posts.bayIn()) : null,
        WrittenBays.of(posts.along()),
        inches(posts.heightIn()),
        inches(posts.embedmentIn()),
        posts.footing(),
        posts.backfill().orElse(null),
        amount(posts.holeDiameterIn(), QuantityKind.LENGTH),
        null);
  }

  private static DesignFile.Crossbeams crossbeams(BaseDesign.Crossbeams beams) {
    return new DesignFile.Crossbeams(
        beams.size(),
        beams.count(),
        inches(beams.overhangIn()),
        inches(beams.notchIn()),
        beams.atPosts().equals(WayOfBuilding.SINGLE_AT_POSTS) ? null : beams.atPosts(),
        beams
            .endCut()
            .map(
                cut -> new DesignFile.EndCut(cut.kind(), inches(cut.dropIn()), inches(cut.runIn())))
            .orElse(null),
        null);
  }

  private static DesignFile.SidePanels sidePanels(BaseDesign.SidePanels panels) {
    return new DesignFile.SidePanels(
        panels.rail(), inches(panels.railHeightIn()), panels.pickets());
  }

  private static String inches(double amount) {
    return WrittenAmount.of(amount, QuantityKind.LENGTH);
  }

  private static @Nullable String amount(OptionalDouble amount, QuantityKind kind) {
    return amount.isPresent() ? WrittenAmount.of(amount.getAsDouble(), kind) : null;
  }

  /** Level ground is not spoken of. */
  private static @Nullable String slope(double percent) {
    return percent > 0 ? WrittenAmount.plain(percent) + " %" : null;
  }

  /** A zone is known to the half: the upper half is marked b. */
  private static @Nullable String zone(OptionalDouble zone) {
    if (zone.isEmpty()) {
      return null;
    }
    double whole = Math.floor(zone.getAsDouble());
    return WrittenAmount.plain(whole) + (zone.getAsDouble() - whole >= 0.5 ? "b" : "");
  }
}
