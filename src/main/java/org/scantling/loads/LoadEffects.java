package org.scantling.loads;

import java.util.Arrays;
import java.util.List;

/**
 * What each load alone does to one thing: a moment, a shear, a reaction, a sag.
 *
 * <p>All five in one unit and one sign convention. Wind is at strength level and in one direction;
 * ask again with {@link #withWindReversed()} for the other.
 *
 * @param deadEffect own weight of the timber
 * @param vineEffect vines
 * @param roofLiveEffect roof live load
 * @param snowEffect snow
 * @param windEffect wind, strength level
 */
public record LoadEffects(
    double deadEffect,
    double vineEffect,
    double roofLiveEffect,
    double snowEffect,
    double windEffect) {
  public LoadEffects {
    Argument.finite("dead load effect", deadEffect);
    Argument.finite("vine effect", vineEffect);
    Argument.finite("roof live load effect", roofLiveEffect);
    Argument.finite("snow effect", snowEffect);
    Argument.finite("wind effect", windEffect);
  }

  /**
   * Combines the effects to the value that is furthest from zero.
   *
   * <p>Vines may be cut back or die, so they count only where they make it worse.
   *
   * @param combination the combination
   * @return the effect and whether vines are in it
   *     <p>Source: ASCE 7, 2016, section 2.4.1; leaving vines out is common practice
   *     <p>Worked number: 100 lb dead, 30 lb of vines, 250 lb of lift: 0.6D+0.6W is −90 lb, vines
   *     left out.
   */
  public CombinedEffect worst(LoadCombination combination) {
    CombinedEffect highest = highest(combination);
    CombinedEffect lowest = lowest(combination);
    return Math.abs(lowest.effect()) > Math.abs(highest.effect()) ? lowest : highest;
  }

  /** The highest value of a combination, vines counted only where they raise it. */
  public CombinedEffect highest(LoadCombination combination) {
    return combine(combination, vineEffect > 0);
  }

  /** The lowest value of a combination, vines counted only where they lower it. */
  public CombinedEffect lowest(LoadCombination combination) {
    return combine(combination, vineEffect < 0);
  }

  /** The worst value of every combination, in the order of {@link LoadCombination}. */
  public List<CombinedEffect> worstOfEach() {
    return Arrays.stream(LoadCombination.values()).map(this::worst).toList();
  }

  /** The same effects with the wind from the other side. */
  public LoadEffects withWindReversed() {
    return new LoadEffects(deadEffect, vineEffect, roofLiveEffect, snowEffect, -windEffect);
  }

  private CombinedEffect combine(LoadCombination combination, boolean withVines) {
    double effect =
        combination.factor(LoadKind.DEAD) * deadEffect
            + combination.factor(LoadKind.ROOF_LIVE) * roofLiveEffect
            + combination.factor(LoadKind.SNOW) * snowEffect
            + combination.factor(LoadKind.WIND) * windEffect;
    if (withVines) {
      effect += combination.factor(LoadKind.VINES) * vineEffect;
    }
    return new CombinedEffect(combination, effect, withVines);
  }
}
