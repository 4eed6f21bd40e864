package org.scantling.shop;

import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;

/** A load on a top, as whoever looks after it reads it: a weight on each square foot or meter. */
final class PlainLoad {
  private static final Sayings SAYINGS = Sayings.of("order");
  private static final int INCHES_A_FOOT = 12;
  private static final double MILLIMETERS_A_METER = 1000;

  private PlainLoad() {}

  static String of(double psf, UnitSystem units) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    double footM = Unit.INCH.toMetric(INCHES_A_FOOT) / MILLIMETERS_A_METER;
    double amount = imperial ? psf : Unit.POUND_WEIGHT.toMetric(psf) / (footM * footM);
    String rounded = Long.toString(Math.round(amount));
    return SAYINGS.say(imperial ? "load.imperial" : "load.metric", "amount", rounded);
  }
}
