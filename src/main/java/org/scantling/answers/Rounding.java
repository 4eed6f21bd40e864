package org.scantling.answers;

import org.scantling.quantity.Inches;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Question;

/** How an answer in inches is rounded, once, in a named direction. */
public enum Rounding {
  NONE(0),
  UP_TO_INCH(1),
  UP_TO_25_MM(25 / Inches.IN_MILLIMETRES),
  UP_TO_SIXTEENTH(1.0 / 16),
  UP_TO_MM(1 / Inches.IN_MILLIMETRES),
  DOWN_TO_SIXTEENTH(-1.0 / 16),
  DOWN_TO_MM(-1 / Inches.IN_MILLIMETRES);

  private static final double LAST_BITS = 1e-9;

  private final double stepIn;

  /** A negative step rounds down. */
  Rounding(double stepIn) {
    this.stepIn = stepIn;
  }

  /** How the answer to a question is rounded, on a tape in inches or in millimetres. */
  public static Rounding of(Question question, boolean metric) {
    return switch (question) {
      case FOOTING_DEPTH, HOLE_DIAMETER -> metric ? UP_TO_25_MM : UP_TO_INCH;
      case ROW_SPACING, POST_HEIGHT -> metric ? UP_TO_MM : UP_TO_SIXTEENTH;
      case BAY, CROSSBEAM_SPACING, CLEAR_WIDTH, HEADROOM, FROST_DEPTH -> NONE;
      default -> {
        boolean length = question.unit() == Unit.INCH;
        yield length ? metric ? DOWN_TO_MM : DOWN_TO_SIXTEENTH : NONE;
      }
    };
  }

  public double round(double value) {
    if (this == NONE) {
      return value;
    }
    return round(value, stepIn);
  }

  /**
   * Rounds a value that lies between bounds: the other way where its own way leads past one of
   * them, and not at all where no step lies between them.
   */
  public double within(double least, double most, double value) {
    double[] tries = {round(value), this == NONE ? value : round(value, -stepIn)};
    for (double rounded : tries) {
      double slack = LAST_BITS * Math.abs(rounded);
      if (rounded >= least - slack && rounded <= most + slack) {
        return rounded;
      }
    }
    return value;
  }

  private static double round(double value, double stepIn) {
    return Math.ceil(value / stepIn - LAST_BITS) * stepIn;
  }
}
