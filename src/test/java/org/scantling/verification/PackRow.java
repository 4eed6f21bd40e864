package org.scantling.verification;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One expected value: where it is from, what goes in, what must come out and how near.
 *
 * @param file the file it stands in, under verification/rows
 * @param status seen (in print), second-hand (in somebody's copy), memory (recalled) or computed (a
 *     second computation, not print)
 * @param quantity what is computed, a key of {@link Quantities}
 * @param given what goes in, by name
 * @param scale what a difference is compared with: the value itself, unless the row says otherwise
 * @param reason why the tolerance is what it is
 */
record PackRow(
    String file,
    String id,
    String source,
    String edition,
    String table,
    String status,
    String quantity,
    Map<String, String> given,
    double expected,
    String unit,
    double tolerance,
    double scale,
    String reason) {
  /** The relative slack of the boundary rule in Check: some cells lie at half an inch exactly. */
  private static final double SLACK = 1e-9;

  static PackRow of(String file, Map<String, String> cells) {
    double expected = Double.parseDouble(cells.get("expected"));
    String scale = cells.getOrDefault("scale", "");
    return new PackRow(
        file,
        cells.get("id"),
        cells.get("source"),
        cells.get("edition"),
        cells.get("table"),
        cells.get("status"),
        cells.get("quantity"),
        pairs(cells.get("given")),
        expected,
        cells.get("unit"),
        Double.parseDouble(cells.get("tolerance")),
        scale.isBlank() ? Math.abs(expected) : Double.parseDouble(scale),
        cells.get("reason"));
  }

  private static Map<String, String> pairs(String text) {
    return Arrays.stream(text.split(";", -1))
        .map(pair -> pair.split("=", 2))
        .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
  }

  String text(String name) {
    String value = given.get(name);
    if (value == null) {
      throw new IllegalStateException(this + " is given no " + name + ", only " + given.keySet());
    }
    return value;
  }

  double number(String name) {
    return Double.parseDouble(text(name));
  }

  double number(String name, double otherwise) {
    return given.containsKey(name) ? number(name) : otherwise;
  }

  boolean yes(String name) {
    return switch (text(name)) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw new IllegalStateException(this + ": " + name + " must be yes or no");
    };
  }

  boolean seen() {
    return status.equals("seen");
  }

  boolean fromMemory() {
    return status.equals("memory");
  }

  boolean secondHand() {
    return status.equals("second-hand");
  }

  /** Printed somewhere, however it came to us; not a second computation. */
  boolean printed() {
    return seen() || secondHand() || fromMemory();
  }

  double toleranceRatio() {
    return tolerance / scale;
  }

  double differenceRatio(double ours) {
    return Math.abs(ours - expected) / scale;
  }

  boolean metBy(double ours) {
    return Math.abs(ours - expected) <= tolerance + SLACK * Math.abs(expected);
  }

  @Override
  public String toString() {
    return file + " " + id;
  }
}
