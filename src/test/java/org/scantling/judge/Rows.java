package org.scantling.judge;

/**
 * The wind as it comes to the posts of each row. Where one row stands lower, the crossbeams tie the
 * longer posts of it to the shorter ones across from them, and both heads move as far: what the
 * shorter take over is found by unit loads on two poles held fast at the ground. A foot that gives
 * makes the two more alike, and the longer are left with all their own wind.
 */
final class Rows {
  private static final int SLICES = 2000;

  private final Wind wind;
  private final Wind uphill;
  private final boolean apart;

  Rows(Design design, Wind wind) {
    this.wind = wind;
    this.uphill = wind.uphill();
    this.apart = design.dropIn() > 0;
  }

  boolean apart() {
    return apart;
  }

  /** On a post of the lower row. */
  Push across(boolean end) {
    return wind.across(end);
  }

  /** On a post of the lower row. */
  Push along() {
    return wind.along();
  }

  /** On a post of the higher row, with what it takes over. */
  Push uphillAcross(boolean end) {
    return tied(wind.across(end), uphill.across(end));
  }

  /** On a post of the higher row, with what it takes over. */
  Push uphillAlong() {
    return tied(wind.along(), uphill.along());
  }

  double mostTopAcrossLb(boolean end) {
    double low = across(end).topLb();
    return apart ? Math.max(low, uphillAcross(end).topLb()) : low;
  }

  double mostTopAlongLb() {
    double low = along().topLb();
    return apart ? Math.max(low, uphillAlong().topLb()) : low;
  }

  private static Push tied(Push longer, Push shorter) {
    double apartIn = moved(longer) - moved(shorter);
    double give = give(longer.heightIn()) + give(shorter.heightIn());
    double over = Math.max(0, apartIn / give);
    double top = shorter.topLb() + over;
    double at = (shorter.topLb() * shorter.topAtIn() + over * shorter.heightIn()) / top;
    return new Push(top, at, shorter.spreadLb(), shorter.heightIn());
  }

  /** What the head of a pole moves under its wind, for EI of one: moment times that of a unit. */
  private static double moved(Push push) {
    double slice = push.heightIn() / SLICES;
    double sum = 0;
    for (int i = 0; i < SLICES; i++) {
      double up = (i + 0.5) * slice;
      sum += bend(push, up) * (push.heightIn() - up) * slice;
    }
    return sum;
  }

  /** What hangs above the head works on the pole by force and moment there. */
  private static double bend(Push push, double upIn) {
    double over = push.heightIn() - upIn;
    return push.topLb() * (push.topAtIn() - upIn)
        + push.spreadLb() / push.heightIn() * over * over / 2;
  }

  private static double give(double heightIn) {
    double slice = heightIn / SLICES;
    double sum = 0;
    for (int i = 0; i < SLICES; i++) {
      double over = heightIn - (i + 0.5) * slice;
      sum += over * over * slice;
    }
    return sum;
  }
}
