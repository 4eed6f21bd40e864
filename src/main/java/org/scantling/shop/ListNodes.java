package org.scantling.shop;

import java.util.Collection;
import java.util.List;
import org.scantling.print.JsonText;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Numbers and words as the lists write them into JSON. */
final class ListNodes {
  private ListNodes() {}

  static void number(ObjectNode node, String key, double number) {
    node.put(key, JsonText.rounded(number));
  }

  static void numbers(ObjectNode node, String key, Collection<Double> numbers) {
    ArrayNode array = node.putArray(key);
    numbers.forEach(each -> array.add(JsonText.rounded(each)));
  }

  static void words(ObjectNode node, String key, List<String> words) {
    words.forEach(node.putArray(key)::add);
  }
}
