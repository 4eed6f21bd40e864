package org.scantling.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The keys of a file that take one word of a list, by path. */
final class ListedKeys {
  private ListedKeys() {}

  /** Paths without places in lists, each with the words that it takes. */
  static Map<String, Collection<String>> of(Class<?> shape, Vocabulary vocabulary) {
    Map<String, Collection<String>> found = new TreeMap<>();
    walk(shape, "", vocabulary, found);
    return found;
  }

  private static void walk(
      Class<?> shape, String above, Vocabulary vocabulary, Map<String, Collection<String>> found) {
    for (ShapeKeys.Key key : ShapeKeys.keys(shape)) {
      String path = above + key.key();
      List<String> words = new ArrayList<>(key.fixedWords());
      words.addAll(vocabulary.of(key.entry().table()));
      if (!words.isEmpty() && !words.equals(List.of("none"))) {
        found.put(path, words);
      }
      if (key.isGroup()) {
        walk(key.type(), path + ".", vocabulary, found);
      }
    }
  }

  /** The path under which a shape record has a key, the first where it stands under several. */
  static Map<String, String> paths(Class<?> shape) {
    Map<String, String> found = new TreeMap<>();
    paths(shape, "", found);
    return found;
  }

  private static void paths(Class<?> shape, String above, Map<String, String> found) {
    for (ShapeKeys.Key key : ShapeKeys.keys(shape)) {
      String path = above + key.key();
      found.putIfAbsent(shape.getName() + " " + key.key(), path);
      if (key.isGroup()) {
        paths(key.type(), path + ".", found);
      }
    }
  }
}
