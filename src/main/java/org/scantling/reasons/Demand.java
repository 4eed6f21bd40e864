package org.scantling.reasons;

import java.util.Optional;
import org.scantling.quantity.Unit;

/**
 * What a site can ask for; the path is where the site file says it and what {@code --set} takes.
 */
public enum Demand {
  WALK_LENGTH("walkway.length", Unit.INCH),
  BAYS("walkway.bays", Unit.COUNT),
  /** The length of a bay while their number stays: the file says it by length and bays together. */
  BAY("layout.bay", Unit.INCH),
  NO_POST("walkway.no-post", Unit.COUNT),
  CLEAR_WIDTH("walkway.clear-width", Unit.INCH),
  HEADROOM("walkway.headroom", Unit.INCH),
  USERS("walkway.users", Unit.COUNT),
  MACHINE_WIDTH("walkway.users.machine-width", Unit.INCH),
  FROST_DEPTH("site.climate.frost-depth", Unit.INCH),
  GROUND_SNOW("site.climate.ground-snow", Unit.PSF),
  WIND_SPEED("site.climate.wind-speed", Unit.MPH),
  WIND_BASIS("site.climate.wind-basis", Unit.COUNT),
  WIND_HOURLY("site.climate.wind-pressure", Unit.PSF_FROM_KPA),
  GROUND_SNOW_SS("site.climate.snow.ss", Unit.PSF_FROM_KPA),
  GROUND_SNOW_SR("site.climate.snow.sr", Unit.PSF_FROM_KPA),
  ROOF_LIVE("site.climate.roof-live", Unit.PSF),
  HILL("site.hill.shape", Unit.COUNT),
  EXPOSURE("site.climate.exposure", Unit.COUNT),
  HARDINESS_ZONE("site.climate.hardiness-zone", Unit.ZONE),
  FREEZING_INDEX("site.climate.air-freezing-index", Unit.F_DAYS),
  MEAN_ANNUAL("site.climate.mean-annual-temperature", Unit.DEGREE),
  PLACE("site.place", Unit.COUNT),
  SOIL("site.soil", Unit.COUNT),
  SLOPE("site.slope", Unit.PERCENT),
  CROSS_SLOPE("site.cross-slope", Unit.PERCENT),
  /** The fall from row to row where the file tells it by itself: it says both under one key. */
  CROSS_FALL("site.cross-slope.fall", Unit.INCH),
  ROCK_AT("site.rock-at", Unit.INCH),
  ISOLATED_POSTS("site.isolated-posts", Unit.COUNT),
  VINE("planting", Unit.COUNT),
  SPECIES("materials.species", Unit.COUNT),
  GRADE("materials.grade", Unit.COUNT),
  FOOTING("preferences.footing", Unit.COUNT),
  HEADER("preferences.header", Unit.COUNT),
  KEEP("preferences.keep", Unit.COUNT),
  BASIS("preferences.basis", Unit.COUNT),
  EMBEDMENT_BASIS("preferences.embedment-basis", Unit.COUNT),
  RISK_CATEGORY("preferences.risk-category", Unit.COUNT),
  SNOW_SHARE("preferences.snow-share", Unit.COUNT),
  CROSSBEAMS_AT_POSTS("preferences.crossbeams-at-posts", Unit.COUNT),
  LARGEST_POST("preferences.largest-post", Unit.COUNT),
  LARGEST_HEADER("preferences.largest-header", Unit.COUNT),
  LARGEST_CROSSBEAM("preferences.largest-crossbeam", Unit.COUNT);

  private final String path;
  private final Unit unit;

  Demand(String path, Unit unit) {
    this.path = path;
    this.unit = unit;
  }

  public String path() {
    return path;
  }

  /** What {@code --set} takes to change it: of a list, its first place. */
  public String setting() {
    return switch (this) {
      case VINE -> path + "[0].vine";
      case CROSS_FALL -> CROSS_SLOPE.path;
      default -> path;
    };
  }

  /**
   * @throws IllegalArgumentException when no demand has that path
   */
  public static Demand of(String path) {
    for (Demand demand : values()) {
      if (demand.path.equals(path)) {
        return demand;
      }
    }
    throw new IllegalArgumentException("no demand has the path '" + path + "'");
  }

  public Unit unit() {
    return unit;
  }

  /** The question by which it is decided where the file does not state it. */
  public Optional<Question> question() {
    return switch (this) {
      case BAYS -> Optional.of(Question.BAYS);
      case BAY -> Optional.of(Question.BAY);
      case CLEAR_WIDTH -> Optional.of(Question.CLEAR_WIDTH);
      case HEADROOM -> Optional.of(Question.HEADROOM);
      case FROST_DEPTH -> Optional.of(Question.FROST_DEPTH);
      case GROUND_SNOW -> Optional.of(Question.GROUND_SNOW);
      case WIND_SPEED -> Optional.of(Question.WIND_SPEED);
      case EXPOSURE -> Optional.of(Question.EXPOSURE);
      case SOIL -> Optional.of(Question.SOIL);
      case VINE -> Optional.of(Question.VINE);
      case SPECIES -> Optional.of(Question.SPECIES);
      case GRADE -> Optional.of(Question.GRADE);
      case HEADER -> Optional.of(Question.HEADER_STYLE);
      case FOOTING -> Optional.of(Question.FOOTING_KIND);
      default -> Optional.empty();
    };
  }
}
