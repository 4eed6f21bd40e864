package org.scantling.drawing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.BaseDesign;
import org.scantling.design.Geometry;
import org.scantling.design.WayOfBuilding;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/**
 * The base design as it stands, by its file.
 *
 * @param geometry where everything stands in it
 */
record BaseFrame(BaseDesign design, Geometry geometry, Tables tables) {

  /** Dressed width of a piece of that nominal size. */
  double depthIn(String size) {
    return tables.size(size).widthIn();
  }

  /** Cross-section of a piece of that nominal size, in square inches. */
  double sectionIn2(String size) {
    SizeRow row = tables.size(size);
    return row.thicknessIn() * row.widthIn();
  }

  /** Thickness of the pickets that are usual with posts of that market. */
  double picketIn() {
    String market = tables.size(design.posts().size()).market();
    return tables.size(tables.defaults().row("picket." + market).word()).thicknessIn();
  }

  /**
   * Some timber of the base.
   *
   * @param size nominal
   * @param plies side by side
   */
  record Before(String size, int plies) {}

  /** The timber of a role; empty where the base has none. */
  Optional<Before> before(String role) {
    return switch (role) {
      case "post" -> Optional.of(new Before(design.posts().size(), 1));
      case "header" -> Optional.of(new Before(design.headers().size(), headerPlies()));
      case "crossbeam" -> Optional.of(new Before(design.crossbeams().size(), 1));
      case "rail" -> design.sidePanels().map(panels -> new Before(panels.rail(), 1));
      case "brace" -> design.braces().map(braces -> new Before(braces.size(), 1));
      default -> Optional.empty();
    };
  }

  private int headerPlies() {
    return design.headers().style().equals(WayOfBuilding.PAIRED) ? 2 : 1;
  }

  boolean concrete() {
    return design.posts().footing().equals(WayOfBuilding.CONCRETE)
        || design.posts().backfill().filter(WayOfBuilding.CONCRETE::equals).isPresent();
  }

  boolean inGravel() {
    return design.posts().backfill().filter(WayOfBuilding.GRAVEL::equals).isPresent();
  }

  OptionalDouble holeIn() {
    return design.posts().holeDiameterIn();
  }
}
