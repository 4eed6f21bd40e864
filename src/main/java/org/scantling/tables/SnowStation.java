package org.scantling.tables;

/**
 * A weather station and the snow that lies there once in fifty years on average.
 *
 * @param name as its keeper calls it
 * @param state state, province or territory, in two letters
 * @param latitudeDegrees north of the equator
 * @param longitudeDegrees east of Greenwich
 * @param snowPsf ground snow load
 */
public record SnowStation(
    String name, String state, double latitudeDegrees, double longitudeDegrees, double snowPsf) {
  private static final double EARTH_RADIUS_FT = 20_902_000;

  /**
   * How far off a point is, along the surface.
   *
   * <p>Source: haversine formula, on a sphere of 6,371 km.
   */
  public double distanceFt(double latitude, double longitude) {
    double north = Math.toRadians(latitude - latitudeDegrees) / 2;
    double east = Math.toRadians(longitude - longitudeDegrees) / 2;
    double chord =
        Math.pow(Math.sin(north), 2)
            + Math.cos(Math.toRadians(latitude))
                * Math.cos(Math.toRadians(latitudeDegrees))
                * Math.pow(Math.sin(east), 2);
    return 2 * EARTH_RADIUS_FT * Math.asin(Math.sqrt(Math.min(1, chord)));
  }
}
