package org.scantling.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.sayings.Sayings;

/**
 * What a written number with its unit measures, and how it is read: {@code 30 psf} is a load,
 * {@code 6 ft} a length. Every text must name its unit; a unit of another kind is refused as such.
 */
public enum QuantityKind {
  LENGTH("length", "6 ft"),
  LOAD("load", "30 psf"),
  WIND_SPEED("wind-speed", "115 mph"),
  PERCENT("percent", "3 %"),
  DEGREE_DAYS("degree-days", "1500 F-days"),
  TEMPERATURE("temperature", "44 F"),
  FORCE("force", "200 lb"),
  AREA("area", "40 sq ft");

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,20})?)\\s*([^\\s\\d.,-].{0,29})");
  private static final Pattern BARE = Pattern.compile("[-+]?[\\d.,]{1,20}(?:[eE][-+]?\\d{1,4})?");
  private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d{1,2}\\D.*)");
  private static final int LONGEST_SHOWN = 40;
  private static final int LONGEST_READ = 80;

  private final String name;
  private final String example;

  /**
   * @param name of its noun and its examples in rules/words/quantities.csv
   */
  QuantityKind(String name, String example) {
    this.name = name;
    this.example = example;
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
    return say("noun.".concat(name));
  }

  /** What is accepted, as it follows "must be". */
  public String accepted() {
    return say("accepted", "noun", noun(), "examples", say("examples.".concat(name)));
  }

  /** One text that is accepted: {@code 6 ft}. */
  public String example() {
    return example;
  }

  QuantityException refused(String text, String why, String maybe) {
    String found = say("found", "text", shortened(text), "why", why);
    return new QuantityException(found, accepted(), maybe);
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
      return refused(say("nothing"), say("why.empty"), "");
    }
    if (BARE.matcher(plain).matches()) {
      return refused(plain, say("why.no-unit"), "");
    }
    Optional<String> clear =
        WrittenSlips.readings(plain).stream().filter(this::readsWell).findFirst();
    if (clear.isPresent()) {
      return refused(plain, say("why.other", "noun", noun()), clear.get());
    }
    Matcher comma = COMMA.matcher(plain);
    if (comma.matches() && reads(comma.group(1) + "." + comma.group(2))) {
      return refused(plain, say("why.comma"), comma.group(1) + "." + comma.group(2));
    }
    for (QuantityKind other : values()) {
      if (other != this && other.reads(plain)) {
        return refused(plain, say("why.wrong-kind", "noun", other.noun()), "");
      }
    }
    Matcher match = NUMBER_AND_UNIT.matcher(plain);
    boolean unknownUnit = match.matches() && match.group(2).chars().noneMatch(Character::isDigit);
    String why =
        unknownUnit ? say("why.unknown", "unit", match.group(2)) : say("why.other", "noun", noun());
    return refused(plain, why, "");
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

  /** A sentence of rules/words/quantities.csv, read when the first text is refused. */
  static String say(String name, String... blanks) {
    return Sayings.of("quantities").say(name, blanks);
  }
}
