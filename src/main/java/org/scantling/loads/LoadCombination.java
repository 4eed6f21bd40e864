package org.scantling.loads;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * The allowable-stress combinations that a garden structure is checked for.
 *
 * <p>Vines take the factor of the dead load. Wind is at strength level, hence its 0.6.
 *
 * <p>Source: ASCE 7, 2016, section 2.4.1
 */
public enum LoadCombination {
  DEAD_ALONE("D", 1, 0, 0, 0),
  DEAD_LIVE("D+Lr", 1, 1, 0, 0),
  DEAD_SNOW("D+S", 1, 0, 1, 0),
  DEAD_WIND("D+0.6W", 1, 0, 0, 0.6),
  DEAD_WIND_LIVE("D+0.75(0.6W)+0.75Lr", 1, 0.75, 0, 0.75 * 0.6),
  DEAD_WIND_SNOW("D+0.75(0.6W)+0.75S", 1, 0, 0.75, 0.75 * 0.6),
  UPLIFT("0.6D+0.6W", 0.6, 0, 0, 0.6);

  private final String id;
  private final double deadFactor;
  private final double roofLiveFactor;
  private final double snowFactor;
  private final double windFactor;

  LoadCombination(
      String id, double deadFactor, double roofLiveFactor, double snowFactor, double windFactor) {
    this.id = id;
    this.deadFactor = deadFactor;
    this.roofLiveFactor = roofLiveFactor;
    this.snowFactor = snowFactor;
    this.windFactor = windFactor;
  }

  /** The combination as it is printed, such as {@code D+0.75(0.6W)+0.75S}. */
  public String id() {
    return id;
  }

  /** The factor on one load in this combination; zero where the load takes no part. */
  public double factor(LoadKind kind) {
    return switch (kind) {
      case DEAD, VINES -> deadFactor;
      case SNOW -> snowFactor;
      case ROOF_LIVE -> roofLiveFactor;
      case WIND -> windFactor;
    };
  }

  /**
   * The shortest lasting load in the combination, whose duration decides C_D.
   *
   * @return dead, snow, roof live or wind
   *     <p>Source: NDS, 2018, section 2.3.2
   *     <p>Worked number: D+0.75(0.6W)+0.75S goes by the wind.
   */
  public LoadKind shortestLoad() {
    LoadKind shortest = LoadKind.DEAD;
    for (LoadKind kind : LoadKind.values()) {
      if (kind != LoadKind.VINES && factor(kind) > 0) {
        shortest = kind;
      }
    }
    return shortest;
  }

  /**
   * Finds a combination by its printed name.
   *
   * @param id such as {@code D+S}
   * @return the combination
   * @throws IllegalArgumentException if no combination has this name
   */
  public static LoadCombination of(String id) {
    return Arrays.stream(values())
        .filter(combination -> combination.id.equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "load combination '"
                        + id
                        + "' must be one of "
                        + Arrays.stream(values())
                            .map(LoadCombination::id)
                            .collect(Collectors.joining(", "))));
  }
}
