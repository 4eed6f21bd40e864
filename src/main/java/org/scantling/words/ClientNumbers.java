package org.scantling.words;

import org.scantling.quantity.Inches;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;

/** Numbers that somebody outside the trade can picture. */
final class ClientNumbers {
  private static final Sayings SAYINGS = Sayings.of("voice");

  /** Water weighs 62.4 lb a cubic foot, so an inch of it 5.2 psf. */
  private static final double PSF_PER_INCH_OF_WATER = 62.4 / Inches.PER_FOOT;

  private static final double KILOMETRES_PER_MILE = 1.609344;
  private static final double SEEN_IN = 1.0 / 16;
  private static final int INCHES_PER_FOOT = 12;

  private final UnitSystem units;

  ClientNumbers(UnitSystem units) {
    this.units = units;
  }

  String say(Measure measure) {
    double amount = measure.amount();
    return switch (measure.unit()) {
      case INCH -> length(amount);
      case FOOT -> length(amount * INCHES_PER_FOOT);
      case PSF -> weight(amount);
      case PSF_FROM_KPA -> MeasureText.metric(measure);
      case RATIO -> share(amount);
      case MPH -> speed(measure);
      case POUND, POUND_WEIGHT, PERCENT, DEGREE, COUNT, ZONE, YEAR ->
          MeasureText.print(measure, units);
      default -> MeasureText.print(measure, units);
    };
  }

  /** As the weather is told. */
  private String speed(Measure measure) {
    return units == UnitSystem.METRIC
        ? Math.round(measure.amount() * KILOMETRES_PER_MILE) + " km/h"
        : MeasureText.print(measure, units);
  }

  private static String share(double ratio) {
    return Math.round(ratio * 20) * 5 + " %";
  }

  /** To the sixteenth of an inch or the millimetre: what a timber measures. */
  String exact(double inches) {
    return units == UnitSystem.METRIC ? Length.metric(inches) : Length.inches(inches);
  }

  /** What the eye can tell, and "about" where that is not the whole truth. */
  private String length(double inches) {
    return units == UnitSystem.METRIC ? centimetres(inches) : halfInches(inches);
  }

  private static String centimetres(double inches) {
    long cm = Math.round(inches * Inches.IN_MILLIMETRES / 10);
    String said = cm < 100 ? cm + " cm" : cm / 100.0 + " m";
    return about(inches, cm * 10 / Inches.IN_MILLIMETRES, said);
  }

  private static String about(double trueIn, double saidIn, String said) {
    return Math.abs(trueIn - saidIn) > SEEN_IN ? SAYINGS.say("about", "length", said) : said;
  }

  private static String halfInches(double inches) {
    long halves = Math.round(inches * 2);
    long feet = halves / (2 * INCHES_PER_FOOT);
    long rest = halves % (2 * INCHES_PER_FOOT);
    String under = rest == 0 ? "" : halved(rest) + " in";
    String said = feet == 0 ? halved(halves) + " in" : (feet + " ft " + under).strip();
    return about(inches, halves / 2.0, said);
  }

  private static String halved(long halves) {
    long whole = halves / 2;
    return halves % 2 == 0 ? Long.toString(whole) : whole == 0 ? "1/2" : whole + " 1/2";
  }

  /** A pressure as the depth of water that weighs as much. */
  private String weight(double psf) {
    double inches = psf / PSF_PER_INCH_OF_WATER;
    String depth =
        units == UnitSystem.METRIC
            ? Math.max(1, Math.round(inches * Inches.IN_MILLIMETRES / 10)) + " cm"
            : halved(Math.max(1, Math.round(inches * 2))) + " in";
    return SAYINGS.say("weight", "depth", depth);
  }
}
