package org.scantling.reasons;

import static org.scantling.reasons.Phase.*;

import org.scantling.quantity.Unit;

/**
 * A thing to be decided. The id, such as {@code post.size}, is what rules, outputs and people use;
 * the declaration order is the order of answering inside a phase.
 */
public enum Question {
  FROST_DEPTH(CLIMATE, "criteria.frost-depth", Unit.INCH),
  GROUND_SNOW(CLIMATE, "criteria.ground-snow", Unit.PSF),
  WIND_SPEED(CLIMATE, "criteria.wind-speed", Unit.MPH),
  EXPOSURE(CLIMATE, "criteria.exposure"),
  SOIL(CLIMATE, "criteria.soil"),
  VINE(CLIMATE, "criteria.vine"),
  SPECIES(CLIMATE, "material.species"),
  GRADE(CLIMATE, "material.grade"),
  POST_SPECIES(CLIMATE, "post.species"),
  POST_GRADE(CLIMATE, "post.grade"),
  HEADER_SPECIES(CLIMATE, "header.species"),
  HEADER_GRADE(CLIMATE, "header.grade"),
  CROSSBEAM_SPECIES(CLIMATE, "crossbeam.species"),
  CROSSBEAM_GRADE(CLIMATE, "crossbeam.grade"),
  RAIL_SPECIES(CLIMATE, "rail.species"),
  RAIL_GRADE(CLIMATE, "rail.grade"),
  BRACE_SPECIES(CLIMATE, "brace.species"),
  BRACE_GRADE(CLIMATE, "brace.grade"),

  VINE_LOAD(LOADS, "criteria.vine-load", Unit.PSF),
  LIVE_LOAD(LOADS, "criteria.live-load", Unit.PSF),
  FLAT_SNOW(LOADS, "criteria.flat-snow", Unit.PSF),
  SNOW_SHARE(LOADS, "criteria.snow-share", Unit.RATIO),
  WIND_PRESSURE(LOADS, "criteria.wind-pressure", Unit.PSF),
  SIDE_FILL(LOADS, "criteria.side-fill", Unit.RATIO),

  CLEAR_WIDTH(CLEARANCE, "layout.clear-width", Unit.INCH),
  HEADROOM(CLEARANCE, "layout.headroom", Unit.INCH),

  HEADER_STYLE(LAYOUT, "header.style"),
  ROW_SPACING(LAYOUT, "layout.row-spacing", Unit.INCH),
  BAYS(LAYOUT, "layout.bays"),

  BAY(RHYTHM, "layout.bay", Unit.INCH),
  CROSSBEAMS_PER_BAY(RHYTHM, "crossbeam.per-bay"),
  HEADER_OVERHANG(RHYTHM, "header.overhang", Unit.INCH),
  CROSSBEAM_OVERHANG(RHYTHM, "crossbeam.overhang", Unit.INCH),

  CROSSBEAM_SPACING(CROSSBEAMS, "crossbeam.spacing", Unit.INCH),
  CROSSBEAM_COUNT(CROSSBEAMS, "crossbeam.count", Unit.COUNT),
  CROSSBEAM_NOTCH(CROSSBEAMS, "crossbeam.notch", Unit.INCH),
  CROSSBEAM_SIZE(CROSSBEAMS, "crossbeam.size"),
  CROSSBEAM_BLOCKING(CROSSBEAMS, "crossbeam.blocking"),

  HEADER_NOTCH(HEADERS, "header.notch", Unit.INCH),
  HEADER_SIZE(HEADERS, "header.size"),

  TOP_LINE(HEIGHT, "layout.top-line"),
  POST_HEIGHT(HEIGHT, "post.height", Unit.INCH),

  FOOTING_KIND(SUPPORT, "footing.kind"),
  FOOTING_BACKFILL(SUPPORT, "footing.backfill"),
  FOOTING_SIDE(SUPPORT, "footing.side-hold"),
  BRACING(SUPPORT, "brace.kind"),
  CROSSBEAMS_AT_POSTS(SUPPORT, "crossbeam.at-posts"),

  POST_SIZE(POSTS, "post.size"),

  RAIL_SIZE(SIDES, "rail.size"),
  RAIL_HEIGHT(SIDES, "rail.height", Unit.INCH),
  RAIL_NOTCH(SIDES, "rail.notch", Unit.INCH),
  PICKETS(SIDES, "picket.count", Unit.COUNT),
  BRACE_LEG(SIDES, "brace.leg", Unit.INCH),
  BRACE_SIZE(SIDES, "brace.size"),

  FOOTING_DEPTH(FOOTINGS, "footing.depth", Unit.INCH),
  HOLE_DIAMETER(FOOTINGS, "footing.diameter", Unit.INCH),

  CROSSBEAM_JOINT(JOINTS, "joint.crossbeam"),
  HEADER_JOINT(JOINTS, "joint.header"),
  RAIL_JOINT(JOINTS, "joint.rail"),
  BRACE_JOINT(JOINTS, "joint.brace"),
  HEADER_STEP(JOINTS, "joint.step"),
  BASE_JOINT(JOINTS, "joint.base"),
  HEADER_SPLICE(JOINTS, "joint.splice"),

  BASE(Phase.BASE, "base.design");

  private final Phase phase;
  private final String id;
  private final Unit unit;
  private final boolean numeric;

  Question(Phase phase, String id, Unit unit) {
    this(phase, id, unit, true);
  }

  Question(Phase phase, String id) {
    this(phase, id, Unit.COUNT, false);
  }

  Question(Phase phase, String id, Unit unit, boolean numeric) {
    this.phase = phase;
    this.id = id;
    this.unit = unit;
    this.numeric = numeric;
  }

  public Phase phase() {
    return phase;
  }

  /** Subject and attribute joined by a dot. */
  public String id() {
    return id;
  }

  public String subject() {
    return id.substring(0, id.indexOf('.'));
  }

  public String attribute() {
    return id.substring(id.indexOf('.') + 1);
  }

  public Unit unit() {
    return unit;
  }

  /** True when the answer is a number, false when it is one of a list of options. */
  public boolean numeric() {
    return numeric;
  }

  /** True for a size or a depth: more that is asked of a structure never makes it smaller. */
  public boolean growing() {
    return switch (this) {
      case POST_SIZE,
          HEADER_SIZE,
          CROSSBEAM_SIZE,
          RAIL_SIZE,
          BRACE_SIZE,
          FOOTING_DEPTH,
          HOLE_DIAMETER ->
          true;
      default -> false;
    };
  }

  /** True for a question whose options are whole numbers. */
  public boolean counted() {
    return this == BAYS || this == CROSSBEAMS_PER_BAY;
  }

  /**
   * @throws IllegalArgumentException when no question has that id
   */
  public static Question of(String id) {
    for (Question question : values()) {
      if (question.id.equals(id)) {
        return question;
      }
    }
    throw new IllegalArgumentException("no question is called '" + id + "'");
  }
}
