package org.scantling.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How much faster the wind blows over a hill.
 *
 * @param place the hill and where on it; none on flat ground
 * @param counted how it counts; none for a hill too low or too gentle
 * @param k1Factor by shape, steepness and exposure
 * @param k2Factor less the farther from the crest
 * @param k3Factor less the higher above the ground
 * @param topographicFactor K_zt
 *     <p>Source: ASCE 7, 2016, section 26.8 and figure 26.8-1
 */
public record HillWind(
    Optional<Place> place,
    Optional<Counted> counted,
    double k1Factor,
    double k2Factor,
    double k3Factor,
    double topographicFactor)
    implements Calculated {
  public HillWind {
    Require.positive("topographic factor K_zt", topographicFactor, "");
  }

  /**
   * What the figure says of a shape.
   *
   * @param k1PerSteepnessFactor K_1 over height by half-length, by exposure
   * @param decayFactor γ, how fast it fades with height
   * @param reachFactor μ, half-lengths from the crest over which it fades
   */
  public record Shape(double k1PerSteepnessFactor, double decayFactor, double reachFactor) {}

  /**
   * A hill that counts.
   *
   * @param shape what the figure says of its shape
   * @param mostSteepnessRatio height over half-length that counts at most
   * @param lengthIn its half-length; longer where it is steeper than that
   * @param nearRatio K_2 before it is held at 0, negative beyond the reach of the crest
   */
  public record Counted(
      Shape shape, double mostSteepnessRatio, double lengthIn, double nearRatio) {}

  /**
   * Which hills count.
   *
   * @param leastHeightIn height from which a hill counts, by exposure
   * @param leastSteepnessRatio height over half-length from which it counts
   * @param mostSteepnessRatio height over half-length that counts at most
   */
  public record Bounds(
      double leastHeightIn, double leastSteepnessRatio, double mostSteepnessRatio) {}

  /**
   * The hill, and where on it.
   *
   * @param heightIn H, foot to crest, above zero
   * @param halfLengthIn L_h, upwind of the crest to half its height, above zero
   * @param fromCrestIn x, zero or more
   * @param aboveGroundIn z, zero or more
   */
  public record Place(
      double heightIn, double halfLengthIn, double fromCrestIn, double aboveGroundIn) {
    public Place {
      Require.positive("height of the hill", heightIn, "in");
      Require.positive("half-length of the hill", halfLengthIn, "in");
      Require.zeroOrMore("distance from the crest", fromCrestIn, "in");
      Require.zeroOrMore("height above the ground", aboveGroundIn, "in");
    }

    double steepness() {
      return heightIn / halfLengthIn;
    }
  }

  /**
   * Finds the topographic factor.
   *
   * @param place the hill and where on it
   * @param shape what the figure says of its shape
   * @param bounds which hills count
   * @return K_zt = (1 + K_1 K_2 K_3)², 1 for a hill too low or too gentle to count
   *     <p>Source: ASCE 7, 2016, equation 26.8-1 and figure 26.8-1
   *     <p>Worked number: a ridge 40 ft high, half as high 150 ft off, exposure C, on the crest at
   *     the ground: K_1 = 1.45 × 40/150 = 0.387, K_zt = 1.387² = 1.923.
   */
  public static HillWind of(Place place, Shape shape, Bounds bounds) {
    boolean low = place.heightIn() < bounds.leastHeightIn();
    if (low || place.steepness() < bounds.leastSteepnessRatio()) {
      return new HillWind(Optional.of(place), Optional.empty(), 0, 0, 0, 1);
    }
    double steepness = Math.min(place.steepness(), bounds.mostSteepnessRatio());
    // A steeper hill counts as one of the greatest steepness, and as long as that would be.
    double countedIn = place.heightIn() / bounds.mostSteepnessRatio();
    double lengthIn = Math.max(place.halfLengthIn(), countedIn);
    double k1 = shape.k1PerSteepnessFactor() * steepness;
    double nearRatio = 1 - place.fromCrestIn() / (shape.reachFactor() * lengthIn);
    double k2 = Math.max(0, nearRatio);
    double k3 = Math.exp(-shape.decayFactor() * place.aboveGroundIn() / lengthIn);
    double grown = 1 + k1 * k2 * k3;
    Counted counted = new Counted(shape, bounds.mostSteepnessRatio(), lengthIn, nearRatio);
    return new HillWind(Optional.of(place), Optional.of(counted), k1, k2, k3, grown * grown);
  }

  /** Flat ground, by its tabled factor. */
  public static HillWind flat(double topographicFactor) {
    return new HillWind(Optional.empty(), Optional.empty(), 0, 0, 0, topographicFactor);
  }

  /** What makes the factor, then the factor; nothing on flat ground. */
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    place.ifPresent(
        hill -> {
          counted.ifPresent(each -> lines.addAll(factors(hill, each)));
          lines.add(line(hill));
        });
    return lines;
  }

  private FormulaLine line(Place hill) {
    return FormulaLine.of("hill", Measure.ratio(topographicFactor))
        .with("height", Measure.feet(hill.heightIn()))
        .with("half-length", Measure.feet(hill.halfLengthIn()))
        .with("steep", Measure.ratio(k1Factor))
        .with("near", Measure.ratio(k2Factor))
        .with("low", Measure.ratio(k3Factor));
  }

  private List<FormulaLine> factors(Place hill, Counted counted) {
    Measure height = Measure.feet(hill.heightIn());
    Measure length = Measure.feet(counted.lengthIn());
    List<FormulaLine> lines = new ArrayList<>();
    if (counted.lengthIn() > hill.halfLengthIn()) {
      lines.add(
          FormulaLine.of("hill-length", length)
              .with("height", height)
              .with("most", Measure.ratio(counted.mostSteepnessRatio())));
    }
    lines.add(
        FormulaLine.of("hill-steep", Measure.ratio(k1Factor))
            .with("tabled", Measure.ratio(counted.shape().k1PerSteepnessFactor()))
            .with("height", height)
            .with("length", length));
    boolean beyond = counted.nearRatio() < 0;
    lines.add(
        FormulaLine.of(beyond ? "hill-beyond" : "hill-near", Measure.ratio(counted.nearRatio()))
            .with("from", Measure.feet(hill.fromCrestIn()))
            .with("reach", Measure.ratio(counted.shape().reachFactor()))
            .with("length", length));
    lines.add(
        FormulaLine.of("hill-low", Measure.ratio(k3Factor))
            .with("decay", Measure.ratio(counted.shape().decayFactor()))
            .with("above", Measure.feet(hill.aboveGroundIn()))
            .with("length", length));
    return lines;
  }
}
