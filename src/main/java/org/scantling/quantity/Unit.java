package org.scantling.quantity;

/** The units in which numbers travel inside the program, and how metric readers see them. */
public enum Unit {
  INCH("in", "mm", Inches.IN_MILLIMETRES),
  FOOT("ft", "m", 0.3048),
  SQUARE_FOOT("sq ft", "m²", 0.09290304),
  CUBIC_FOOT("cu ft", "m³", 0.028316847),
  POUND("lb", "kN", 0.0044482216),
  /** What a piece weighs in the hand, which metric readers want in kilograms. */
  POUND_WEIGHT("lb", "kg", 0.45359237),
  INCH_POUND("in-lb", "kN·m", 0.00011298483),
  POUND_PER_INCH("lb/in", "kN/m", 0.17512684),
  POUND_PER_FOOT("lb/ft", "kN/m", 0.014593903),
  PSF("psf", "kPa", 0.047880259),
  /** A load that its own code prints in kilopascals: readers of pounds are told both. */
  PSF_FROM_KPA("psf", "kPa", 0.047880259),
  PSI("psi", "MPa", 0.0068947573),
  PCF("pcf", "kg/m³", 16.018463),
  PSF_PER_FOOT("psf/ft", "kPa/m", 0.15708746),
  POUND_PER_CUBIC_INCH("lb/cu in", "MN/m³", 0.27144714),
  /** Metric codes and maps of the wind are in metres a second. */
  MPH("mph", "m/s", 0.44704),
  DEGREE("°", "°", 1),
  F_DAYS("°F·days", "°C·days", 1 / 1.8),
  /** How much warmer or colder, not how warm. */
  DEGREE_F("°F", "°C", 1 / 1.8),
  BTU_PER_CUBIC_FOOT("Btu/cu ft", "MJ/m³", 0.037258946),
  BTU_PER_CUBIC_FOOT_F("Btu/cu ft·°F", "MJ/m³·°C", 0.067066102),
  BTU_PER_FOOT_HOUR_F("Btu/ft·hr·°F", "W/m·°C", 1.7307347),
  PERCENT("%", "%", 1),
  YEAR("", "", 1),
  /** A plant hardiness zone; the half of it is marked b. */
  ZONE("", "", 1),
  COUNT("", "", 1),
  RATIO("", "", 1);

  private final String imperial;
  private final String metric;
  private final double toMetric;

  Unit(String imperial, String metric, double toMetric) {
    this.imperial = imperial;
    this.metric = metric;
    this.toMetric = toMetric;
  }

  /** The symbol in feet-and-pounds text, empty for plain numbers. */
  public String imperialSymbol() {
    return imperial;
  }

  /** The symbol in metric text, empty for plain numbers. */
  public String metricSymbol() {
    return metric;
  }

  /** The same amount in the metric unit. */
  public double toMetric(double amount) {
    return amount * toMetric;
  }
}
