package org.scantling.print;

import java.util.List;
import org.scantling.words.ClosedList;
import org.scantling.words.ListValue;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The words that a site file accepts, for programs. */
public final class ChoicesJson {
  private ChoicesJson() {}

  public static String of(List<ClosedList> lists) {
    ObjectNode root = JsonText.object();
    root.put("schema", "scantling/choices/1");
    ArrayNode all = root.putArray("lists");
    lists.forEach(list -> all.add(list(list)));
    return JsonText.print(root);
  }

  private static ObjectNode list(ClosedList list) {
    ObjectNode node = JsonText.object();
    node.put("name", list.name());
    node.put("key", list.key());
    list.keys().forEach(node.putArray("keys")::add);
    node.put("says", list.says());
    node.put("how", list.how());
    ArrayNode values = node.putArray("values");
    list.values().forEach(each -> values.add(value(each)));
    return node;
  }

  private static ObjectNode value(ListValue value) {
    ObjectNode node = JsonText.object();
    node.put("value", value.value());
    node.put("name", value.name());
    node.put("how", value.how());
    node.putObject("source")
        .put("kind", value.source().kind().word())
        .put("citation", value.source().text());
    return node;
  }
}
