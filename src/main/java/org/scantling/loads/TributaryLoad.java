package org.scantling.loads;

/**
 * An area load gathered by one member: vines, live load, snow or wind on the strip it carries.
 *
 * @param pressurePsf load on the area, psf; minus lifts
 * @param tributaryWidthIn width of the strip, in, zero or more
 * @param loadLbPerIn load on each inch of the member, lb/in
 */
public record TributaryLoad(double pressurePsf, double tributaryWidthIn, double loadLbPerIn) {

  public TributaryLoad {
    Argument.finite("area load (psf)", pressurePsf);
    Argument.zeroOrMore("tributary width (in)", tributaryWidthIn);
  }

  /**
   * Finds the line load of a strip.
   *
   * @param pressurePsf load on the area, psf, finite; minus lifts
   * @param tributaryWidthIn width of the strip, in, zero or more
   * @return psf × width, lb/in
   *     <p>Source: arithmetic, no standard needed
   *     <p>Worked number: 20 psf on a strip 18 in wide is 2.5 lb an inch.
   */
  public static TributaryLoad of(double pressurePsf, double tributaryWidthIn) {
    return new TributaryLoad(
        pressurePsf, tributaryWidthIn, pressurePsf * tributaryWidthIn / FtIn.SQ_IN_PER_SQ_FT);
  }
}
