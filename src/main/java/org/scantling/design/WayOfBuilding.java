package org.scantling.design;

import java.util.List;
import java.util.Optional;

/** The words by which site files, designs, rules and answers name a way of building. */
public final class WayOfBuilding {
  /** Headers that lie on top of their posts. */
  public static final String ON_TOP = "on-top";

  /** Headers of two boards bolted to both sides of their posts. */
  public static final String PAIRED = "paired";

  /** A top that is level from end to end. */
  public static final String LEVEL = "level";

  /** A top that runs along the slope of the ground. */
  public static final String FOLLOWS_GROUND = "follows-ground";

  /** A top that goes down in level steps, one a bay. */
  public static final String STEPPED = "stepped";

  /** Posts that stand in the ground. */
  public static final String EMBEDDED = "embedded";

  /** Posts on brackets. */
  public static final String BRACKET = "bracket";

  /** Posts on metal bases over piers, which hold them upright by themselves. */
  public static final String MOMENT_BASE = "moment-base";

  /** Holes that are filled with concrete. */
  public static final String CONCRETE = "concrete";

  /** Holes that are filled with gravel. */
  public static final String GRAVEL = "gravel";

  /** Holes that are filled with the soil that came out of them. */
  public static final String TAMPED_SOIL = "tamped-soil";

  /** Soil that is trusted sideways with its tabled value. */
  public static final String AS_TABLED = "as-tabled";

  /** Soil that is trusted sideways with twice its tabled value, round posts that stand apart. */
  public static final String DOUBLED = "doubled";

  /** Knee braces from posts to headers and crossbeams. */
  public static final String KNEE_BRACES = "knee";

  /** Posts that the ground alone holds upright. */
  public static final String NO_BRACES = "none";

  /** A block between neighbouring crossbeams over each header. */
  public static final String OVER_HEADERS = "over-headers";

  /** Crossbeams that stand by their own fastenings. */
  public static final String NO_BLOCKS = "none";

  /** One crossbeam at each row of posts, as everywhere. */
  public static final String SINGLE_AT_POSTS = "single";

  /** Two crossbeams side by side at each row of posts, fastened to each other. */
  public static final String DOUBLED_AT_POSTS = "doubled";

  private static final List<String> FILLS = List.of(CONCRETE, GRAVEL, TAMPED_SOIL);

  private WayOfBuilding() {}

  /** The fill that a wish for the footing names, where it names one. */
  public static Optional<String> fillAsked(String footing) {
    return FILLS.contains(footing) ? Optional.of(footing) : Optional.empty();
  }

  /** True where a wish for the footing means posts in the ground, whatever fills the holes. */
  public static boolean inTheGround(String footing) {
    return footing.equals(EMBEDDED) || FILLS.contains(footing);
  }

  /** The style of headers. */
  public static String headers(boolean paired) {
    return paired ? PAIRED : ON_TOP;
  }
}
