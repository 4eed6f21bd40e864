package org.scantling.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.tables.WordForm;

/** Every key of a kind of file by its path, and where a key that it does not have may belong. */
final class KeyPlaces {
  private final Map<String, ShapeKeys.Key> byPath = new LinkedHashMap<>();
  private final Synonyms synonyms;

  KeyPlaces(Class<?> shape, Synonyms synonyms) {
    this.synonyms = synonyms;
    walk(shape, "");
  }

  private void walk(Class<?> shape, String above) {
    for (ShapeKeys.Key key : ShapeKeys.keys(shape)) {
      String path = above + key.key();
      byPath.put(path, key);
      if (key.isGroup() && !key.list()) {
        walk(key.type(), path + ".");
      }
    }
  }

  /**
   * The path that a key which stands in the wrong place, or under another name, probably means.
   *
   * @param above the path of its group with a dot at its end, or nothing
   * @param name the key
   * @param value what it holds, which must fit
   */
  Optional<String> meant(String above, String name, Node value) {
    List<String> places = new ArrayList<>();
    NearMiss.nearest(name, in(above)).ifPresent(key -> places.add(above + key));
    synonyms
        .key(name)
        .ifPresent(
            row -> {
              row.means().stream().filter(path -> within(above, path)).forEach(places::add);
              places.addAll(row.means());
            });
    List<String> elsewhere =
        byPath.keySet().stream().filter(path -> WordForm.same(last(path), name)).toList();
    long least = elsewhere.stream().mapToLong(KeyPlaces::depth).min().orElse(0);
    List<String> highest = elsewhere.stream().filter(path -> depth(path) == least).toList();
    if (highest.size() == 1) {
      places.addAll(highest);
    }
    return places.stream().filter(path -> fits(path, value)).findFirst();
  }

  /** The keys of a group. */
  List<String> in(String above) {
    return byPath.keySet().stream()
        .filter(path -> within(above, path))
        .map(KeyPlaces::last)
        .toList();
  }

  private static boolean within(String above, String path) {
    return path.startsWith(above) && path.indexOf('.', above.length()) < 0;
  }

  private static long depth(String path) {
    return path.chars().filter(letter -> letter == '.').count();
  }

  private boolean fits(String path, Node value) {
    ShapeKeys.Key key = byPath.get(path);
    if (key == null) {
      return false;
    }
    boolean empty = value instanceof Node.Scalar one && one.form() == Node.Form.EMPTY;
    boolean words = key.entry().words().length > 0;
    return empty || key.list() || words || key.isGroup() == value instanceof Node.Group;
  }

  static String last(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }
}
