package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard one timber presses on another.
 *
 * @param forceLb the pressing force
 * @param seat the contact across the grain; none at another angle to it
 * @param areaIn2 area of the contact
 * @param stressPsi the pressure
 * @param allowable the value it is held against, with all its factors
 * @param allowablePsi the greatest pressure: the value itself, or between two values at an angle
 */
public record Bearing(
    double forceLb,
    Optional<Seat> seat,
    double areaIn2,
    double stressPsi,
    AdjustedStress allowable,
    double allowablePsi)
    implements Calculated {
  private static final double PLATE_SHARE = 0.75;

  /**
   * Pressure across the grain against what it may be.
   *
   * @param forceLb reaction, 0 or more
   * @param seat the contact
   * @param acrossGrain Fc perpendicular', without C_b, which the seat adds
   * @return the pressure and its limit
   *     <p>Source: NDS, 2018, 3.10.2 and 3.10.4. Worked: 1000 lb on 1.5 × 3.5 in gives 190 psi.
   */
  public static Bearing across(double forceLb, Seat seat, AdjustedStress acrossGrain) {
    AdjustedStress allowable = acrossGrain.with(new Factor("C_b", seat.bearingFactor()));
    return of(forceLb, Optional.of(seat), seat.areaIn2(), allowable);
  }

  /**
   * Pressure on end grain, as under a post, against Fc*.
   *
   * @param forceLb reaction, 0 or more
   * @param areaIn2 contact, above 0
   * @param alongGrain Fc*
   * @return the pressure and its limit
   *     <p>Source: NDS, 2018, 3.10.1. Worked: 6000 lb on 12.25 in² gives 490 psi.
   */
  public static Bearing onEndGrain(double forceLb, double areaIn2, AdjustedStress alongGrain) {
    return of(forceLb, Optional.empty(), areaIn2, alongGrain);
  }

  /**
   * Pressure at an angle to the grain, as of a brace on a post.
   *
   * @param forceLb reaction, 0 or more
   * @param areaIn2 contact, above 0
   * @param values adjusted values of the piece that is pressed
   * @param angleDegrees between force and grain, from 0 to 90
   * @return the pressure and its limit; the value shown is Fc*
   *     <p>Source: NDS, 2018, 3.10.3. Worked: Fc* 1500 psi and Fc perpendicular 625 psi at 30
   *     degrees may be pressed with 1111 psi.
   */
  public static Bearing atAngle(
      double forceLb, double areaIn2, AdjustedValues values, double angleDegrees) {
    AdjustedStress along = values.compression();
    double allowedPsi = Hankinson.at(along.psi(), values.bearing().psi(), angleDegrees);
    return new Bearing(
        force(forceLb), Optional.empty(), contact(areaIn2), forceLb / areaIn2, along, allowedPsi);
  }

  /** The force that presses the contact as hard as it may be pressed. */
  public double capacityLb() {
    return allowablePsi * areaIn2;
  }

  /** What the contact carries. */
  public List<FormulaLine> seatLines() {
    return seat.map(this::carried).orElse(List.of());
  }

  private List<FormulaLine> carried(Seat on) {
    return List.of(
        allowable.line("seat-allowed"),
        FormulaLine.of("seat", Measure.pounds(capacityLb()))
            .with("allowed", Measure.psi(allowablePsi))
            .with("breadth", Measure.inches(on.breadthIn()))
            .with("seat", Measure.inches(on.lengthIn())));
  }

  /** True where end grain is pressed so hard that a metal plate must spread it (NDS 3.10.1.3). */
  public boolean needsPlateOnEndGrain() {
    return stressPsi > PLATE_SHARE * allowablePsi;
  }

  /** The pressure against the greatest it may be. */
  public Check check() {
    return new Check(stressPsi, allowablePsi);
  }

  private static Bearing of(
      double forceLb, Optional<Seat> seat, double areaIn2, AdjustedStress allowable) {
    return new Bearing(
        force(forceLb), seat, contact(areaIn2), forceLb / areaIn2, allowable, allowable.psi());
  }

  private static double force(double forceLb) {
    return Require.zeroOrMore("bearing force", forceLb, "lb");
  }

  private static double contact(double areaIn2) {
    return Require.positive("contact area", areaIn2, "in²");
  }

  /** Of pressure across the grain; the other two are told by nobody yet. */
  @Override
  public List<FormulaLine> lines() {
    return seat.map(this::across).orElse(List.of());
  }

  private List<FormulaLine> across(Seat on) {
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(
        FormulaLine.of("bearing", Measure.psi(stressPsi))
            .with("reaction", Measure.pounds(forceLb))
            .with("breadth", Measure.inches(on.breadthIn()))
            .with("seat", Measure.inches(on.lengthIn())));
    lines.addAll(on.lines());
    lines.add(allowable.allowed("bearing-allowed"));
    return lines;
  }
}
