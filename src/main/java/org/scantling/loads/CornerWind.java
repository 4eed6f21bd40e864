package org.scantling.loads;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * Wind lifting a part of the top near its corner; {@link FreeRoofWind#atCorner} finds it.
 *
 * @param canopy the whole top
 * @param part what of it hangs there, and how hard the wind sucks at it
 * @param harder true where the part is lifted harder than the whole top
 * @param factor C_N upward that counts: that of the part, or of the whole top
 * @param upliftPsf psf on plan area, strength level when q is
 */
public record CornerWind(
    FreeRoofWind canopy, RoofEdgeZone.Part part, boolean harder, double factor, double upliftPsf)
    implements Calculated {
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    if (harder) {
      lines.addAll(part.lines());
    }
    lines.add(
        canopy
            .line("lift", upliftPsf, factor)
            .with("part", Measure.squareFeet(part.areaIn2()))
            .with("zone", Measure.inches(part.zone().widthIn())));
    return lines;
  }
}
