package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * What shear a beam can bring to a support where it is notched or hung from bolts.
 *
 * @param where what takes the depth away
 * @param shearLb the size of the shear force
 * @param section the whole section
 * @param remainingDepthIn dn or de, the depth that is left
 * @param depthRatio what is left of the whole depth
 * @param allowable Fv' with all its factors
 * @param allowableLb the shear it may be
 */
public record NotchedShear(
    Where where,
    double shearLb,
    Rectangle section,
    double remainingDepthIn,
    double depthRatio,
    AdjustedStress allowable,
    double allowableLb)
    implements Calculated {
  private static final double NEAR_END_DEPTHS = 5;

  /** What takes the depth away, with the formula that tells it. */
  public enum Where {
    TENSION_FACE("notch"),
    COMPRESSION_FACE(""),
    FASTENERS_NEAR_END("splitting"),
    FASTENERS("splitting-inside");

    private final String id;

    Where(String id) {
      this.id = id;
    }
  }

  /**
   * A square notch in the tension face, as at the underside of a beam's end.
   *
   * <p>The square corner starts a split, so the strength falls with the square of the depth left.
   *
   * @param shearLb shear force there, either sign
   * @param section the whole section
   * @param notch its depth must leave some of the section
   * @param allowable Fv'
   * @return the shear and its limit
   *     <p>Source: NDS, 2018, 3.4.3.2(a). Worked: 1.5 in out of 1.5 × 7.25 in, Fv' 180 psi carries
   *     651 lb.
   */
  public static NotchedShear onTensionFace(
      double shearLb, Rectangle section, EndNotch notch, AdjustedStress allowable) {
    Rectangle left = section.notched(notch.depthIn());
    double ratio = left.depthIn() / section.depthIn();
    double allowableLb = plainLb(left, allowable) * ratio * ratio;
    return new NotchedShear(
        Where.TENSION_FACE,
        sizeLb(shearLb),
        section,
        left.depthIn(),
        ratio,
        allowable,
        allowableLb);
  }

  /**
   * A square notch in the compression face, as at the top of a beam's end.
   *
   * @param shearLb shear force there, either sign
   * @param section the whole section
   * @param notch its depth, and how far it reaches past the inner edge of the support; past more
   *     than the depth left, that depth alone counts
   * @param allowable Fv'
   * @return the shear and its limit
   *     <p>Source: NDS, 2018, 3.4.3.2(e). Worked: 1.5 in out of 1.5 × 7.25 in, reaching 2 in, Fv'
   *     180 psi carries 1211 lb.
   */
  public static NotchedShear onCompressionFace(
      double shearLb, Rectangle section, EndNotch notch, AdjustedStress allowable) {
    double depthIn = section.depthIn();
    double leftIn = section.notched(notch.depthIn()).depthIn();
    double reachIn = Math.min(notch.reachIn(), leftIn);
    double carryingIn = depthIn - (depthIn - leftIn) / leftIn * reachIn;
    double allowableLb = plainLb(new Rectangle(section.breadthIn(), carryingIn), allowable);
    return new NotchedShear(
        Where.COMPRESSION_FACE,
        sizeLb(shearLb),
        section,
        leftIn,
        leftIn / depthIn,
        allowable,
        allowableLb);
  }

  /**
   * A beam held by bolts or screws: only the depth past the fasteners carries.
   *
   * @param shearLb shear force there, either sign
   * @param section the whole section
   * @param place where the fasteners hold
   * @param allowable Fv'
   * @return the shear and its limit
   *     <p>Source: NDS, 2018, 3.4.3.3, from memory. Worked: a 7.25 in deep beam held 2 in from its
   *     unloaded edge, 4 in from its end, 1.5 in broad, Fv' 180 psi carries 495 lb.
   */
  public static NotchedShear atFasteners(
      double shearLb, Rectangle section, FastenerPlace place, AdjustedStress allowable) {
    Rectangle left = section.notched(place.toUnloadedEdgeIn());
    double ratio = left.depthIn() / section.depthIn();
    boolean nearEnd = place.toEndIn() < NEAR_END_DEPTHS * section.depthIn();
    double allowableLb = plainLb(left, allowable) * (nearEnd ? ratio * ratio : 1);
    Where where = nearEnd ? Where.FASTENERS_NEAR_END : Where.FASTENERS;
    return new NotchedShear(
        where, sizeLb(shearLb), section, left.depthIn(), ratio, allowable, allowableLb);
  }

  /**
   * Where a beam's fasteners hold it.
   *
   * @param toUnloadedEdgeIn from the unloaded edge to the nearest fastener's centre, 0 or more
   * @param toEndIn from the beam's end to the fasteners, 0 or more
   */
  public record FastenerPlace(double toUnloadedEdgeIn, double toEndIn) {
    public FastenerPlace {
      Require.zeroOrMore("distance to the unloaded edge", toUnloadedEdgeIn, "in");
      Require.zeroOrMore("distance to the end", toEndIn, "in");
    }
  }

  /** The shear force against the greatest it may be. */
  public Check check() {
    return new Check(shearLb, allowableLb);
  }

  private static double plainLb(Rectangle section, AdjustedStress allowable) {
    return 2.0 / 3 * allowable.psi() * section.areaIn2();
  }

  private static double sizeLb(double shearLb) {
    return Math.abs(Require.finite("shear force", shearLb, "lb"));
  }

  /**
   * None of a notch above: no timber of a walk is cut so. Where fasteners hold, Fv' is told too: it
   * stands on no other page.
   */
  @Override
  public List<FormulaLine> lines() {
    FormulaLine line =
        FormulaLine.of(where.id, Measure.pounds(allowableLb))
            .with("allowed", Measure.psi(allowable.psi()))
            .with("breadth", Measure.inches(section.breadthIn()))
            .with("rest", Measure.inches(remainingDepthIn))
            .with("depth", Measure.inches(section.depthIn()));
    return switch (where) {
      case COMPRESSION_FACE -> List.of();
      case TENSION_FACE -> List.of(line);
      case FASTENERS, FASTENERS_NEAR_END -> List.of(allowable.line("shear-allowed"), line);
    };
  }
}
