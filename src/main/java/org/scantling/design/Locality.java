package org.scantling.design;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where on earth a site lies, as far as its file says it. */
public sealed interface Locality {
  /**
   * A point.
   *
   * @param latitudeDegrees north of the equator
   * @param longitudeDegrees east of Greenwich, so that North America has negative ones
   */
  record Point(double latitudeDegrees, double longitudeDegrees) implements Locality {}

  /** A county of a state, both by their full names, without the word county. */
  record County(String county, String state) implements Locality {}

  /** Of the text {@code 44.26, -72.58}, {@code 44.26 N 72.58 W} or {@code Lamoille, Vermont}. */
  static Optional<Locality> of(String text) {
    Matcher point = Written.POINT.matcher(text.strip());
    if (point.matches()) {
      double north = Double.parseDouble(point.group(1)) * ("S".equals(side(point, 2)) ? -1 : 1);
      double east = Double.parseDouble(point.group(3)) * ("W".equals(side(point, 4)) ? -1 : 1);
      boolean onEarth = Math.abs(north) <= 90 && Math.abs(east) <= 180;
      return onEarth ? Optional.of(new Point(north, east)) : Optional.empty();
    }
    Matcher county = Written.COUNTY.matcher(text.strip());
    return county.matches()
        ? Optional.of(new County(county.group(1).strip(), county.group(2).strip()))
        : Optional.empty();
  }

  private static String side(Matcher point, int group) {
    return point.group(group) == null ? "" : point.group(group).toUpperCase(Locale.ROOT);
  }

  /** How places are written. */
  final class Written {
    private static final String DEGREES = "(-?\\d{1,3}(?:\\.\\d{1,8})?)\\s*\u00b0?\\s*";
    private static final Pattern POINT =
        Pattern.compile(DEGREES + "([NSns])?\\s*[,;\\s]\\s*" + DEGREES + "([EWew])?");
    private static final Pattern COUNTY =
        Pattern.compile("([\\p{L} .'-]{2,40}?)(?: County| Parish)?\\s*,\\s*([\\p{L} .]{4,30})");

    private Written() {}
  }
}
