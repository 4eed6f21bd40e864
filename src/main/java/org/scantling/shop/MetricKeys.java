package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Gives the lists of a metric job metric names beside those in inches, pounds and feet. */
final class MetricKeys {
  /**
   * A measure and what it is called in either system.
   *
   * @param factor from the first unit to the second
   */
  record Twin(String key, String metricKey, double factor, int places) {
    double of(double number) {
      return BigDecimal.valueOf(number * factor)
          .setScale(places, RoundingMode.HALF_UP)
          .doubleValue();
    }
  }

  static final double CU_M_IN_A_CU_FT = Unit.CUBIC_FOOT.toMetric(1);
  static final double M_IN_A_FT = 0.3048;
  private static final double KG_IN_A_LB = Unit.POUND_WEIGHT.toMetric(1);
  private static final double N_IN_A_LB = 4.4482216;

  /** What a maker rates is a force, all else in pounds a weight. */
  static final Twin FORCE = new Twin("Lb", "N", N_IN_A_LB, 0);

  static final Twin WEIGHT = new Twin("Lb", "Kg", KG_IN_A_LB, 1);
  static final Twin LENGTH = new Twin("In", "Mm", Inches.IN_MILLIMETRES, 1);
  static final Twin RUN = new Twin("", "M", M_IN_A_FT, 2);
  static final Twin INCH_RUN = new Twin("", "M", M_IN_A_FT / Inches.PER_FOOT, 3);
  static final Twin VOLUME = new Twin("", "M3", CU_M_IN_A_CU_FT, 3);

  private MetricKeys() {}

  static void add(JsonNode node) {
    if (node instanceof ObjectNode object) {
      for (String key : List.copyOf(object.propertyNames())) {
        JsonNode value = object.get(key);
        twin(object, key, value);
        add(value);
      }
      quantities(object);
    } else if (node instanceof ArrayNode array) {
      array.forEach(MetricKeys::add);
    }
  }

  private static void twin(ObjectNode object, String key, JsonNode value) {
    Twin twin = twin(key);
    if (!key.endsWith(twin.key())) {
      return;
    }
    String metric = key.substring(0, key.length() - twin.key().length()) + twin.metricKey();
    if (value.isNumber()) {
      object.put(metric, twin.of(value.doubleValue()));
    } else if (value instanceof ArrayNode array) {
      ArrayNode metres = object.putArray(metric);
      array.forEach(each -> metres.add(twin.of(each.doubleValue())));
    }
  }

  private static Twin twin(String key) {
    if (!key.endsWith("Lb")) {
      return LENGTH;
    }
    return key.startsWith("rated") ? FORCE : WEIGHT;
  }

  /** Lines of the buying list say their unit beside the number. */
  private static void quantities(ObjectNode line) {
    String unit = line.path("quantityUnit").asString("");
    if (unit.equals("ft") || unit.equals("cu ft")) {
      Twin twin = unit.equals("ft") ? RUN : VOLUME;
      for (String key : List.of("needed", "spare")) {
        line.put(key + twin.metricKey(), twin.of(line.path(key).doubleValue()));
      }
    }
  }
}
