package org.scantling.print;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.regex.Pattern;

/**
 * Works a line of numbers as somebody with a pocket calculator: + - x / ^ and brackets. Each number
 * stands for all that would be printed the same, so the answer is a range.
 */
final class ByHand {
  private static final Pattern UNIT =
      Pattern.compile(
          "(?<=\\d) (?:Btu/cu ft·°F|Btu/cu ft|Btu/ft·hr·°F|MJ/m³·°C|MJ/m³|W/m·°C|lb/cu in|MN/m³|°F·days|°C·days|°F|°C"
              + "|sq ft|in-lb|lb/in|psf/ft|ft|in|lb|psf|psi|pcf|mph|m²|kN·m|kN/m|kN|kPa/m|kPa"
              + "|MPa|kg/m³|m/s|m)(?![A-Za-z/²³·])");

  /** Marks a number that had a unit, and so is a measure that was rounded. */
  private static final String MEASURE = "~";

  private static final int FIGURES = 4;

  private final Deque<String> tokens;

  /** All that a printed number may stand for. */
  record Range(double least, double most) {
    static Range of(double one, double other) {
      return new Range(Math.min(one, other), Math.max(one, other));
    }

    Range plus(Range other) {
      return new Range(least + other.least, most + other.most);
    }

    Range times(Range other) {
      double[] all = {
        least * other.least, least * other.most, most * other.least, most * other.most
      };
      return new Range(Arrays.stream(all).min().orElse(0), Arrays.stream(all).max().orElse(0));
    }

    Range negative() {
      return new Range(-most, -least);
    }

    Range inverse() {
      if (least <= 0 && most >= 0) {
        throw new IllegalArgumentException("divides by what may be 0");
      }
      return of(1 / least, 1 / most);
    }

    Range power(double exponent) {
      // What is printed as 0 may be a little below it.
      double from = exponent == Math.rint(exponent) ? least : Math.max(0, least);
      return of(Math.pow(from, exponent), Math.pow(most, exponent));
    }

    boolean meets(Range other) {
      double slack = 1e-9 * Math.abs(most);
      return least <= other.most + slack && other.least <= most + slack;
    }

    double spread() {
      return most - least;
    }

    double middle() {
      return (least + most) / 2;
    }
  }

  private ByHand(String line) {
    String spaced = line.replaceAll("([()+/^])", " $1 ").strip();
    tokens = new ArrayDeque<>(Arrays.asList(spaced.split("\\s+")));
  }

  static Range work(String line) {
    ByHand hand = new ByHand(bare(line));
    Range sum = hand.sum();
    if (!hand.tokens.isEmpty()) {
      throw new IllegalArgumentException("left over of '" + line + "': " + hand.tokens);
    }
    return sum;
  }

  private static String bare(String line) {
    return UNIT.matcher(line).replaceAll(MEASURE);
  }

  private Range sum() {
    Range sum = product();
    while ("+".equals(tokens.peek()) || "-".equals(tokens.peek())) {
      sum = sum.plus(tokens.pop().equals("+") ? product() : product().negative());
    }
    return sum;
  }

  private Range product() {
    Range product = power();
    while ("x".equals(tokens.peek()) || "/".equals(tokens.peek())) {
      product = product.times(tokens.pop().equals("x") ? power() : power().inverse());
    }
    return product;
  }

  private Range power() {
    Range base = one();
    if ("^".equals(tokens.peek())) {
      tokens.pop();
      return base.power(power().middle());
    }
    return base;
  }

  private Range one() {
    String token = tokens.pop();
    if (token.equals("-")) {
      return one().negative();
    }
    if (!token.equals("(")) {
      return number(token);
    }
    Range inside = sum();
    tokens.pop();
    return inside;
  }

  private static int figures(String number) {
    return number.replaceAll("[-.]", "").replaceAll("^0+", "").length();
  }

  /** A number of less than four figures is what it is; every other may have been rounded. */
  private static Range number(String token) {
    boolean measure = token.endsWith(MEASURE);
    double value = Double.parseDouble(measure ? token.substring(0, token.length() - 1) : token);
    if (figures(measure ? token.substring(0, token.length() - 1) : token) < FIGURES) {
      return new Range(value, value);
    }
    if (value == 0) {
      return new Range(0, 0);
    }
    double half = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) + 1 - FIGURES) / 2;
    return new Range(value - half, value + half);
  }
}
