package org.scantling.words;

import java.util.List;
import java.util.Optional;

/**
 * A list of words of which a key of the site or base file takes one.
 *
 * @param name what the list is called
 * @param keys the paths that take one of its words, the chief one first; places in lists left out
 * @param says what it is about
 * @param how how to find out which word is right
 * @param values in the order in which people are asked
 */
public record ClosedList(
    String name, List<String> keys, String says, String how, List<ListValue> values) {
  public ClosedList {
    keys = List.copyOf(keys);
    values = List.copyOf(values);
  }

  /** The key that the list is mostly for. */
  public String key() {
    return keys.get(0);
  }

  /** The value of a word that the list has. */
  public Optional<ListValue> find(String word) {
    return values.stream().filter(each -> each.value().equals(word)).findFirst();
  }

  /** The words as they are typed. */
  public List<String> words() {
    return values.stream().map(ListValue::value).toList();
  }
}
