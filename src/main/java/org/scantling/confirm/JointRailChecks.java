package org.scantling.confirm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
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
      Held held = held(fix, combination);
      worst.add("rail", combination, held.check(), Unit.POUND);
      for (Placement depth : held.hold().depths()) {
        worst.addLasting("geometry", combination, depth.check(), Unit.INCH);
      }
    }
    return worst.list();
  }

  /** The joint in each combination. */
  public Stream<JointCase> cases(JointFix fix) {
    return Arrays.stream(LoadCombination.values())
        .map(each -> held(fix, each))
        .map(each -> new JointCase("joint.rail", each.combination(), each.check(), each::told));
  }

  private Held held(JointFix fix, LoadCombination combination) {
    double duration = rules.limits().duration().of(combination);
    JointHold hold = JointHold.of(fix, rules.factors(), wood(), duration);
    Optional<Bearing> seat =
        fix.way() == JointFix.Way.HOUSED && rail.notchIn() > 0
            ? Optional.of(seat())
            : Optional.empty();
    boolean rated = fix.way() == JointFix.Way.RATED;
    return new Held(combination, hold, seat, rated, force(combination));
  }

  /**
   * One end of a rail in one combination. Let in, the seat takes the weight and the fasteners the
   * wind; else the fasteners take both.
   *
   * @param seat on which it rests; none where fasteners take the weight
   * @param rated true for steel parts
   * @param force on that end
   */
  private record Held(
      LoadCombination combination,
      JointHold hold,
      Optional<Bearing> seat,
      boolean rated,
      RailForce force) {

    Check check() {
      Check side = new Check(force.sideLb(), hold.sideLb());
      return seat.map(on -> worse(side, down(on)))
          .orElseGet(() -> both(side, new Check(force.downLb(), down())));
    }

    private Check down(Bearing on) {
      return new Check(force.downLb(), on.capacityLb());
    }

    private double down() {
      return rated ? hold.pullLb() : hold.sideLb();
    }

    List<JointLines> told() {
      if (seat.isPresent() && check().equals(down(seat.get()))) {
        return List.of(JointLines.of(force.weight()), JointLines.of(seat.get().seatLines()));
      }
      List<JointLines> parts = new ArrayList<>();
      parts.add(JointLines.of(force.push()));
      parts.addAll(hold.toldSideways());
      if (seat.isEmpty()) {
        parts.add(JointLines.of(force.weight()));
        parts.add(
            JointLines.of(
                FormulaLine.of(
                        rated ? "weight-rated" : "weight-together",
                        Measure.pounds(check().demand()))
                    .with("lift", Measure.pounds(force.downLb()))
                    .with("push", Measure.pounds(force.sideLb()))
                    .with("pull-holds", Measure.pounds(down()))
                    .with("side-holds", Measure.pounds(hold.sideLb()))));
      }
      return parts;
    }
  }

  private JointHold.Wood wood() {
    return new JointHold.Wood(
        rail.material().reference().specificGravityRatio(),
        rail.post().reference().specificGravityRatio(),
        rail.material().section().depthIn());
  }

  private RailForce force(LoadCombination combination) {
    return new RailForce(combination, loads, rail.material().weightLbPerIn());
  }

  /** Pressure across the grain of the rail on what it is let in. */
  private Bearing seat() {
    Seat seat = new Seat(rail.material().section().breadthIn(), rail.notchIn(), 0);
    return Bearing.across(0, seat, rail.material().lasting(1).bearing());
  }

  private static Check worse(Check one, Check other) {
    return one.ratio() >= other.ratio() ? one : other;
  }

  /** The push counted as the weight that would use up as much. */
  private static Check both(Check side, Check down) {
    return new Check(down.demand() + side.ratio() * down.capacity(), down.capacity());
  }
}
