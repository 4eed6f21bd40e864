package org.scantling.ground;

/**
 * How deep a post must stand that a rigid floor or pavement holds at the surface.
 *
 * @param load P and h
 * @param width b
 * @param s3Psf S3, pressure allowed at the full depth, psf
 * @param depthIn d = √(4.25 P h / (S3 b)), in
 */
public record ConstrainedEmbedment(
    LateralLoad load, EffectiveWidth width, double s3Psf, double depthIn) {
  private static final double MOMENT_COEFFICIENT = 4.25;

  /**
   * Finds the least embedment.
   *
   * <p>S3 grows with the depth, so d³ = 4.25 P h / (pressure per foot × b) until 12 ft, and the
   * square root with the pressure of 12 ft below that.
   *
   * @param load P and h, allowable-stress level
   * @param width b
   * @param soil sideways pressure and its increase
   * @return depth with S3; zero where nothing pushes or it pushes at the ground
   *     <p>Source: IBC, 2018, section 1807.3.2.2
   *     <p>Worked number: 150 lb at 5 ft, b 1 ft, 150 psf/ft give 2.770 ft (33.2 in).
   */
  public static ConstrainedEmbedment of(
      LateralLoad load, EffectiveWidth width, LateralResistance soil) {
    double widthFt = width.widthIn() / FtIn.IN_PER_FT;
    double momentOverWidthLb = MOMENT_COEFFICIENT * load.momentInLb() / FtIn.IN_PER_FT / widthFt;
    double depthIn = Math.cbrt(momentOverWidthLb / soil.perFootPsfPerFt()) * FtIn.IN_PER_FT;
    double s3Psf = soil.pressurePsf(depthIn, 1);
    double uncappedPsf = soil.perFootPsfPerFt() * depthIn / FtIn.IN_PER_FT;
    if (uncappedPsf > s3Psf) {
      depthIn = Math.sqrt(momentOverWidthLb / s3Psf) * FtIn.IN_PER_FT;
    }
    return new ConstrainedEmbedment(load, width, s3Psf, depthIn);
  }
}
