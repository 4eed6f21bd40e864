package org.scantling.print;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.scantling.quantity.Check;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON with keys in a stable order and numbers rounded to a thousandth. */
public final class JsonText {
  private static final int PLACES = 3;
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private JsonText() {}

  public static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  /**
   * @throws IllegalArgumentException for a number that is not finite
   */
  public static double rounded(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("number " + number + " must be finite");
    }
    return BigDecimal.valueOf(number).setScale(PLACES, RoundingMode.HALF_UP).doubleValue();
  }

  /**
   * A ratio to a limit. Where it is so far past it that its number has lost its meaning, {@code
   * beyond} says how: what leans over or bows out however strong it is, or nearly everything is
   * missing.
   */
  static void ratio(ObjectNode node, double ratio) {
    node.put("ratio", rounded(ratio));
    if (Check.beyondTelling(ratio)) {
      node.put("beyond", ratio >= Check.LEANS_OVER ? "leans-over" : "over-10-times");
    }
  }

  public static String print(JsonNode node) {
    return MAPPER.writeValueAsString(node).replace("\r\n", "\n") + "\n";
  }
}
