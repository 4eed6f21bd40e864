package org.scantling.confirm;

import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.timber.Bearing;
import org.scantling.timber.Placement;
import org.scantling.timber.Seat;

/**
 * The end of a side rail in its post. Let into the post it rests on its seat, and screws on the
 * slant keep the wind from pushing it out; where steel parts hold it, they do both.
 */
public final class JointRailChecks {
  private final Rail rail;
  private final Loads loads;
  private final JointRules rules;

  /**
   * @param notchIn how deep it is let into the post
   */
  public record Rail(Material material, Material post, double notchIn) {}

  /**
   * What one rail carries, both ends together.
   *
   * @param windLb on it and on what hangs on it, strength level
   * @param vinesLb climbers that hang on it, wet
   * @param personLb one person who steps on it beside the post, so on one end alone
   * @param lengthIn of the rail
   */
  public record Loads(double windLb, double vinesLb, double personLb, double lengthIn) {}

  public JointRailChecks(Rail rail, Loads loads, JointRules rules) {
    this.rail = rail;
    this.loads = loads;
    this.rules = rules;
  }

  /** Weight and wind on one end, each with its worst combination. */
  public List<Checked> of(JointFix fix) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    for (LoadCombination combination : LoadCombination.values()) {
      double duration = rules.limits().duration().of(combination);
      JointHold hold = JointHold.of(fix, rules.factors(), wood(), duration);
      worst.add("rail", combination, check(fix, hold, combination), Unit.POUND);
      for (Placement depth : hold.depths()) {
        worst.addLasting("geometry", combination, depth.check(), Unit.INCH);
      }
    }
    return worst.list();
  }

  private JointHold.Wood wood() {
    return new JointHold.Wood(
        rail.material().reference().specificGravityRatio(),
        rail.post().reference().specificGravityRatio(),
        rail.material().section().depthIn());
  }

  private double downLb(LoadCombination combination) {
    double ownLb = rail.material().weightLbPerIn() * loads.lengthIn();
    return combination.factor(LoadKind.DEAD) * ownLb / 2
        + combination.factor(LoadKind.VINES) * loads.vinesLb() / 2
        + combination.factor(LoadKind.ROOF_LIVE) * loads.personLb();
  }

  /** Let in, the seat takes the weight and the fasteners the wind; else the fasteners take both. */
  private Check check(JointFix fix, JointHold hold, LoadCombination combination) {
    double sideLb = combination.factor(LoadKind.WIND) * loads.windLb() / 2;
    Check side = new Check(sideLb, hold.sideLb());
    if (fix.way() == JointFix.Way.HOUSED && rail.notchIn() > 0) {
      return worse(side, new Check(downLb(combination), seatLb()));
    }
    boolean rated = fix.way() == JointFix.Way.RATED;
    return both(side, new Check(downLb(combination), rated ? hold.pullLb() : hold.sideLb()));
  }

  /** Pressure across the grain of the rail on what it is let in. */
  private double seatLb() {
    Seat seat = new Seat(rail.material().section().breadthIn(), rail.notchIn(), 0);
    Bearing bearing = Bearing.across(0, seat, rail.material().lasting(1).bearing());
    return bearing.allowablePsi() * seat.areaIn2();
  }

  private static Check worse(Check one, Check other) {
    return one.ratio() >= other.ratio() ? one : other;
  }

  /** The push counted as the weight that would use up as much. */
  private static Check both(Check side, Check down) {
    return new Check(down.demand() + side.ratio() * down.capacity(), down.capacity());
  }
}
