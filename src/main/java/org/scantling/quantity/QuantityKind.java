package org.scantling.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a written number with its unit measures, and how it is read: {@code 30 psf} is a load,
 * {@code 6 ft} a length. Every text must name its unit; a unit of another kind is refused as such.
 */
public enum QuantityKind {
  LENGTH("a length", "6 ft", "5'-8 1/2\", 42 in, 1.8 m or 450 mm"),
  LOAD("a load", "30 psf", "1.4 kPa"),
  WIND_SPEED("a wind speed", "115 mph", "185 km/h or 51 m/s"),
  PERCENT("a slope", "3 %", "1:12 or 1/4 in per ft"),
  DEGREE_DAYS("degree-days", "1500 F-days", "830 C-days"),
  TEMPERATURE("a temperature", "44 F", "7 C"),
  FORCE("a force", "200 lb", "0.9 kN"),
  AREA("an area", "40 sq ft", "3.7 m2");

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,20})?)\\s*([^\\s\\d.,-].{0,29})");
  private static final Pattern BARE = Pattern.compile("[-+]?[\\d.,]{1,20}(?:[eE][-+]?\\d{1,4})?");
  private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d{1,2}\\D.*)");
  private static final int LONGEST_SHOWN = 40;
  private static final int LONGEST_READ = 80;

  private final String noun;
  private final String example;
  private final String examples;

  QuantityKind(String noun, String example, String more) {
    this.noun = noun;
    this.example = example;
    String link = more.contains(" or ") ? ", " : " or ";
    this.examples = more.isEmpty() ? example : example + link + more;
  }

  /**
   * The number in the unit used inside: inches, psf, mph, per cent, Fahrenheit degree-days, degrees
   * Fahrenheit, pounds, square feet.
   *
   * @param text the number with its unit, as people write it
   * @return the amount, finite, possibly negative
   * @throws QuantityException when the text has no unit, an unknown one, one of another kind, or is
   *     no number
   */
  public double parse(String text) {
    return read(text).orElseThrow(() -> diagnosed(text));
  }

  /** The kind in words, with its article: {@code a length}. */
  public String noun() {
    return noun;
  }

  /** What is accepted, as it follows "must be". */
  public String accepted() {
    return noun + " with its unit, such as " + examples;
  }

  /** One text that is accepted: {@code 6 ft}. */
  public String example() {
    return example;
  }

  QuantityException refused(String text, String why, String maybe) {
    return new QuantityException(shortened(text) + " (" + why + ")", accepted(), maybe);
  }

  private Optional<Double> read(String text) {
    if (text.length() > LONGEST_READ) {
      return Optional.empty();
    }
    if (this == LENGTH) {
      return LengthText.inches(text);
    }
    if (this == PERCENT) {
      return SlopeText.percent(text);
    }
    Matcher match = NUMBER_AND_UNIT.matcher(text.strip());
    if (!match.matches()) {
      return Optional.empty();
    }
    return WrittenUnits.scale(this, match.group(2))
        .map(scale -> scale.inside(Double.parseDouble(match.group(1))));
  }

  private QuantityException diagnosed(String text) {
    String plain = text.strip();
    if (plain.isEmpty()) {
      return refused("nothing", "empty text", "");
    }
    if (BARE.matcher(plain).matches()) {
      return refused(plain, "no unit", "");
    }
    Optional<String> clear =
        WrittenSlips.readings(plain).stream().filter(this::readsWell).findFirst();
    if (clear.isPresent()) {
      return refused(plain, "not " + noun, clear.get());
    }
    Matcher comma = COMMA.matcher(plain);
    if (comma.matches() && reads(comma.group(1) + "." + comma.group(2))) {
      return refused(plain, "decimal comma", comma.group(1) + "." + comma.group(2));
    }
    for (QuantityKind other : values()) {
      if (other != this && other.reads(plain)) {
        return refused(plain, "wrong kind of unit: this is " + other.noun, "");
      }
    }
    Matcher match = NUMBER_AND_UNIT.matcher(plain);
    boolean unknownUnit = match.matches() && match.group(2).chars().noneMatch(Character::isDigit);
    return refused(plain, unknownUnit ? "unknown unit " + match.group(2) : "not " + noun, "");
  }

  private boolean readsWell(String text) {
    try {
      return read(text).isPresent();
    } catch (QuantityException improper) {
      return false;
    }
  }

  private boolean reads(String text) {
    try {
      return read(text).isPresent();
    } catch (QuantityException improper) {
      return true;
    }
  }

  private static String shortened(String text) {
    String plain = text.strip().replaceAll("\\p{Cntrl}+", " ");
    return plain.length() <= LONGEST_SHOWN ? plain : plain.substring(0, LONGEST_SHOWN) + "...";
  }
}
