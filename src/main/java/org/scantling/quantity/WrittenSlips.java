package org.scantling.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a text was probably meant to be that is nearly a number with its unit. */
final class WrittenSlips {
  private static final Pattern ABOUT =
      Pattern.compile("(?:about|approx\\.?|approximately|ca\\.?|roughly|~|\u2248)\\s*(.+)");
  private static final Pattern THOUSANDS = Pattern.compile("(\\d{1,3}(?:,\\d{3})+)(\\D.*)");
  private static final Pattern UNIT_FIRST = Pattern.compile("([A-Za-z%/]{1,8})\\s*(\\d[\\d.]*)");
  private static final Pattern RANGE =
      Pattern.compile("(\\d[\\d.]*)\\s*(?:-|to|\u2013)\\s*(\\d[\\d.]*\\s*[A-Za-z%/'\"].*)");
  private static final Pattern DASHED = Pattern.compile("(\\d{1,3})\\s*[-\u2013]\\s*(\\d{1,2})\"?");
  private static final Pattern FEET =
      Pattern.compile(
          "(\\d{1,4}\\s*(?:'|\u2032|\u2019|ft|feet)\\s*-?\\s*\\d{1,2}(?: \\d/\\d{1,2})?)");
  private static final Pattern MANY_INCHES =
      Pattern.compile("(\\d{1,4})\\s*(?:'|ft|feet)\\s*-?\\s*(\\d{1,3})\\s*(?:\"|in|inches)");

  private static final int LONGEST_READ = 80;

  private WrittenSlips() {}

  /** Likely readings, the likeliest first; not all of them can be read. */
  static List<String> readings(String text) {
    List<String> readings = new ArrayList<>();
    if (text.length() > LONGEST_READ) {
      return readings;
    }
    add(readings, ABOUT, text, found -> found.group(1));
    add(readings, THOUSANDS, text, found -> found.group(1).replace(",", "") + found.group(2));
    add(readings, DASHED, text, found -> found.group(1) + "'-" + found.group(2) + "\"");
    add(readings, FEET, text, found -> found.group(1) + " in");
    add(readings, MANY_INCHES, text, WrittenSlips::carried);
    add(readings, UNIT_FIRST, text, found -> found.group(2) + " " + found.group(1));
    add(readings, RANGE, text, found -> found.group(2));
    return readings;
  }

  /** How a slip is put right. */
  private interface Mended {
    String of(Matcher found);
  }

  private static void add(List<String> readings, Pattern slip, String text, Mended mended) {
    Matcher found = slip.matcher(text);
    if (found.matches()) {
      readings.add(mended.of(found));
    }
  }

  private static String carried(Matcher found) {
    int foot = (int) Inches.PER_FOOT;
    int inches = Integer.parseInt(found.group(2));
    return Integer.parseInt(found.group(1)) + inches / foot + "'-" + inches % foot + "\"";
  }
}
