package org.scantling.print;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.regex.Pattern;

/** Works a line of numbers as somebody with a pocket calculator: + - x / ^ and brackets. */
final class ByHand {
  private static final Pattern UNIT =
      Pattern.compile(
          "(?<=\\d) (?:sq ft|in-lb|ft|in|lb|psf|psi|mph|m²|kN·m|kN|kPa|MPa|m/s|m)\\b²?");

  private final Deque<String> tokens;

  private ByHand(String line) {
    String spaced = line.replaceAll("([()+/^])", " $1 ").strip();
    tokens = new ArrayDeque<>(Arrays.asList(spaced.split("\\s+")));
  }

  static double work(String line) {
    ByHand hand = new ByHand(bare(line));
    double sum = hand.sum();
    if (!hand.tokens.isEmpty()) {
      throw new IllegalArgumentException("left over of '" + line + "': " + hand.tokens);
    }
    return sum;
  }

  static String bare(String line) {
    return UNIT.matcher(line).replaceAll("");
  }

  private double sum() {
    double sum = product();
    while ("+".equals(tokens.peek()) || "-".equals(tokens.peek())) {
      sum += tokens.pop().equals("+") ? product() : -product();
    }
    return sum;
  }

  private double product() {
    double product = power();
    while ("x".equals(tokens.peek()) || "/".equals(tokens.peek())) {
      product *= tokens.pop().equals("x") ? power() : 1 / power();
    }
    return product;
  }

  private double power() {
    double base = one();
    if ("^".equals(tokens.peek())) {
      tokens.pop();
      return Math.pow(base, power());
    }
    return base;
  }

  private double one() {
    String token = tokens.pop();
    if (!token.equals("(")) {
      return Double.parseDouble(token);
    }
    double inside = sum();
    tokens.pop();
    return inside;
  }
}
