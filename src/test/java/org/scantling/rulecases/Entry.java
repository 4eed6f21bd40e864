package org.scantling.rulecases;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import tools.jackson.databind.JsonNode;

/** One JSON object; remembers which keys were read, and refuses those that nobody reads. */
final class Entry {
  private final String where;
  private final JsonNode node;
  private final NumberWords numbers;
  private final DoubleUnaryOperator nudge;
  private final Set<String> known = new TreeSet<>();

  /**
   * @param where the file and the case, for complaints
   * @param nudge what is done to every number before it is used
   */
  Entry(String where, JsonNode node, NumberWords numbers, DoubleUnaryOperator nudge) {
    if (!node.isObject()) {
      throw new CaseFault(where + ": found " + node + ", must be an object in { }");
    }
    this.where = where;
    this.node = node;
    this.numbers = numbers;
    this.nudge = nudge;
  }

  boolean has(String key) {
    known.add(key);
    return node.has(key);
  }

  String word(String key) {
    if (!has(key)) {
      throw new CaseFault(where + ": " + node + " must have " + key);
    }
    if (!node.get(key).isString() || node.get(key).asString().isBlank()) {
      throw new CaseFault(where + ": " + key + ": found " + node.get(key) + ", must be a word");
    }
    return node.get(key).asString();
  }

  String word(String key, String otherwise) {
    return has(key) ? word(key) : otherwise;
  }

  /** A number, or words that lead to one, such as {@code "thumb:bay.longest + 1"}. */
  double number(String key) {
    if (!has(key)) {
      throw new CaseFault(where + ": " + node + " must have " + key);
    }
    JsonNode value = node.get(key);
    if (value.isNumber()) {
      return nudge.applyAsDouble(value.asDouble());
    }
    try {
      return nudge.applyAsDouble(numbers.read(word(key)));
    } catch (IllegalArgumentException e) {
      throw new CaseFault(where + ": " + key + ": " + e.getMessage());
    }
  }

  double number(String key, double otherwise) {
    return has(key) ? number(key) : nudge.applyAsDouble(otherwise);
  }

  int count(String key) {
    JsonNode value = has(key) ? node.get(key) : node;
    if (!value.isInt() || value.asInt() < 1) {
      throw new CaseFault(where + ": " + node + " must have a whole number as " + key);
    }
    return value.asInt();
  }

  List<JsonNode> list(String key) {
    if (!has(key) || !node.get(key).isArray()) {
      throw new CaseFault(where + ": must have a list as " + key);
    }
    return List.copyOf(node.get(key).values());
  }

  /** The first key, which says what kind of thing the object is. */
  String kind(Set<String> kinds) {
    String first = node.propertyNames().stream().findFirst().orElse("");
    if (!kinds.contains(first)) {
      throw new CaseFault(where + ": " + node + " must begin with one of " + new TreeSet<>(kinds));
    }
    known.add(first);
    return first;
  }

  /** Call after everything is read. */
  void refuseOthers() {
    Map<String, JsonNode> others = new TreeMap<>();
    node.properties().stream()
        .filter(each -> !known.contains(each.getKey()))
        .forEach(each -> others.put(each.getKey(), each.getValue()));
    if (!others.isEmpty()) {
      throw new CaseFault(
          where + ": nothing reads " + others.keySet() + " here; accepted are " + known);
    }
  }

  String where() {
    return where;
  }
}
