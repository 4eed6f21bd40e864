package org.scantling.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A measure as people read it: lengths as trade fractions or metric, everything else rounded as the
 * trade states it. Rounded for reading only; nothing computes with the printed number.
 */
public final class MeasureText {
  private static final double SLACK = 1e-9;
  private static final int MOST_DECIMALS = 6;

  /** A smaller moment would lose its digits, as 0.004 of what holds a crossbeam upright. */
  private static final double SMALL_KILONEWTON_METRES = 0.1;

  private static final double NEWTONS_OF_A_KILONEWTON = 1000;
  private static final int FINEST = 2;
  private static final int PARTS = 16;

  private MeasureText() {}

  /**
   * The measure with its unit.
   *
   * @param measure what to print
   * @param system whose units
   * @return for example {@code 5'-8 1/2"}, {@code 22.5 psf}, {@code 1450 psi} or {@code 0.87}
   */
  public static String print(Measure measure, UnitSystem system) {
    return print(measure, system, 0);
  }

  /**
   * Two measures that are held against each other: finer than usual where they would print alike
   * and are not, or where the percentage of one over the other would come out otherwise from what
   * is printed; lengths down to 1/64 in, everything else to two decimals more.
   */
  public static List<String> apart(Measure one, Measure other, UnitSystem system) {
    for (int finer = 0; finer <= FINEST; finer++) {
      List<String> both = List.of(print(one, system, finer), print(other, system, finer));
      if (!both.get(0).equals(both.get(1)) && sameExcess(one, other, system, finer)) {
        return both;
      }
    }
    List<String> finest = List.of(print(one, system, FINEST), print(other, system, FINEST));
    return finest.get(0).equals(finest.get(1))
        ? List.of(print(one, system), print(other, system))
        : finest;
  }

  /** True where whole percents over come out alike from the printed measures and the true ones. */
  private static boolean sameExcess(Measure one, Measure other, UnitSystem system, int finer) {
    double over = one.amount() / other.amount();
    if (!(over > 1 && over < 2)) {
      return true;
    }
    double printed = asPrinted(one, system, finer) / asPrinted(other, system, finer);
    return Math.round(over * 100) == Math.round(printed * 100);
  }

  /** The amount that somebody reads, in the units of that system. */
  private static double asPrinted(Measure measure, UnitSystem system, int finer) {
    double amount = measure.amount();
    Unit unit = measure.unit();
    if (unit == Unit.INCH) {
      double steps = system == UnitSystem.IMPERIAL ? PARTS << finer : metricSteps(finer);
      return Math.round(amount * steps) / steps;
    }
    return system == UnitSystem.IMPERIAL ? round(amount, imperialDecimals(unit) + finer) : amount;
  }

  private static double metricSteps(int finer) {
    return Inches.IN_MILLIMETRES * Math.pow(10, finer);
  }

  private static String print(Measure measure, UnitSystem system, int finer) {
    double amount = measure.amount();
    return switch (measure.unit()) {
      case INCH -> length(amount, system, finer);
      case FOOT -> length(amount * Inches.PER_FOOT, system, finer);
      case RATIO -> ratio(amount);
      case ZONE -> zone(amount);
      case COUNT -> decimals(amount, 2);
      case YEAR -> decimals(amount, 0);
      case PERCENT -> decimals(amount, 1) + " %";
      case DEGREE -> decimals(amount, 1) + "°";
      case PSF_FROM_KPA -> asItsCode(amount, system, finer);
      default -> withUnit(measure, system, finer);
    };
  }

  /** As the code that gives it prints it, and in pounds for those who read pounds. */
  private static String asItsCode(double psf, UnitSystem system, int finer) {
    Measure load = Measure.psf(psf);
    String printed = withUnit(load, UnitSystem.METRIC, finer);
    return system == UnitSystem.METRIC
        ? printed
        : printed + " (" + withUnit(load, system, finer) + ")";
  }

  /** The colder half of a zone goes by its number alone, as site files may have it. */
  private static String zone(double amount) {
    double whole = Math.floor(amount);
    return decimals(whole, 0) + (amount - whole >= 0.5 ? "b" : "");
  }

  /** The same in feet and pounds. */
  public static String imperial(Measure measure) {
    return print(measure, UnitSystem.IMPERIAL);
  }

  /** The same in metric units. */
  public static String metric(Measure measure) {
    return print(measure, UnitSystem.METRIC);
  }

  private static String length(double inches, UnitSystem system, int finer) {
    return system == UnitSystem.IMPERIAL
        ? Length.feetAndInches(inches, PARTS << finer)
        : Length.metric(inches, finer);
  }

  private static String withUnit(Measure measure, UnitSystem system, int finer) {
    Unit unit = measure.unit();
    if (system == UnitSystem.IMPERIAL) {
      return decimals(measure.amount(), imperialDecimals(unit) + finer)
          + " "
          + unit.imperialSymbol();
    }
    double amount = unit.toMetric(measure.amount());
    if (unit == Unit.INCH_POUND && Math.abs(amount) < SMALL_KILONEWTON_METRES) {
      return decimals(amount * NEWTONS_OF_A_KILONEWTON, 1 + finer) + " N·m";
    }
    int places = Math.abs(amount) >= 100 ? 0 : metricDecimals(unit);
    return decimals(amount, places + finer) + " " + unit.metricSymbol();
  }

  private static int imperialDecimals(Unit unit) {
    return switch (unit) {
      case PSF, PCF, POUND_PER_FOOT -> 1;
      default -> 0;
    };
  }

  private static int metricDecimals(Unit unit) {
    return switch (unit) {
      case F_DAYS, PCF, POUND_WEIGHT -> 0;
      case MPH, PSF_PER_FOOT -> 1;
      default -> 2;
    };
  }

  /** Two decimals, and more where two would hide that the limit is passed. */
  private static String ratio(double amount) {
    int places = 2;
    while (amount > 1 + SLACK && places < MOST_DECIMALS && round(amount, places) <= 1) {
      places++;
    }
    return rounded(amount, places).toPlainString();
  }

  private static double round(double amount, int places) {
    return rounded(amount, places).doubleValue();
  }

  private static String decimals(double amount, int places) {
    BigDecimal value = rounded(amount, places);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private static BigDecimal rounded(double amount, int places) {
    return BigDecimal.valueOf(amount).setScale(places, RoundingMode.HALF_UP);
  }
}
