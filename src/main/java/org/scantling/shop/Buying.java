package org.scantling.shop;

import java.util.List;
import java.util.OptionalLong;

/**
 * What to buy.
 *
 * @param lines timber first, then fixings, what the ground takes, and the climbers' wires
 * @param timber how each size is sawn
 * @param forOthersOnly stocks whose size the yard lists for other uses alone, as they are asked for
 * @param savings what small changes to lengths spare
 * @param totals sums
 * @param aboveGround use category of treated timber that stands clear of the ground
 * @param lasting whether its timber lasts untreated
 * @param metricYard true where the yard thinks in millimetres
 * @param metricBolts which metric bolts stand in for those of the job; empty where it has none
 */
public record Buying(
    List<BuyingLine> lines,
    List<TimberPlan> timber,
    List<String> forOthersOnly,
    List<Saving> savings,
    Totals totals,
    String aboveGround,
    Lasting lasting,
    boolean metricYard,
    String metricBolts) {
  public Buying {
    lines = List.copyOf(lines);
    timber = List.copyOf(timber);
    forOthersOnly = List.copyOf(forOthersOnly);
    savings = List.copyOf(savings);
  }

  /** The same with other lines. */
  Buying with(List<BuyingLine> others) {
    return new Buying(
        others,
        timber,
        forOthersOnly,
        savings,
        totals,
        aboveGround,
        lasting,
        metricYard,
        metricBolts);
  }

  /** How much of the timber is of species that last untreated. */
  public enum Lasting {
    ALL,
    SOME,
    NONE
  }

  /**
   * @param pieces pieces of the cut list
   * @param sticks sticks bought, spare ones too
   * @param wasteRatio share of the sawn sticks that is not in a piece
   * @param weightLb of all timber, as it comes from the yard
   * @param deliveryLb of timber and of all that comes in bags
   * @param timberCents cost of the timber, where every size of it has prices
   */
  public record Totals(
      int pieces,
      int sticks,
      double wasteRatio,
      double weightLb,
      double deliveryLb,
      OptionalLong timberCents) {}
}
