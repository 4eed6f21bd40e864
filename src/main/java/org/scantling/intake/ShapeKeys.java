package org.scantling.intake;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads the shape records: which keys a group has and what each accepts. */
final class ShapeKeys {
  private ShapeKeys() {}

  /**
   * One key of a group.
   *
   * @param key as it is written in a file
   * @param type a shape record, or the type of a single value
   * @param list whether it holds a list of these
   * @param entry what it accepts
   */
  record Key(String key, Class<?> type, boolean list, Entry entry) {
    boolean isGroup() {
      return type.isRecord();
    }

    /** Words fixed by the contract, else none. */
    List<String> fixedWords() {
      return List.of(entry.words());
    }
  }

  static List<Key> keys(Class<?> shape) {
    return Arrays.stream(shape.getRecordComponents()).map(ShapeKeys::key).toList();
  }

  /** {@code clearWidth} is written {@code clear-width}. */
  static String hyphened(String name) {
    return name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  private static Key key(RecordComponent part) {
    boolean list = List.class.equals(part.getType());
    Class<?> type = part.getType();
    if (list && part.getGenericType() instanceof ParameterizedType generic) {
      type = (Class<?>) generic.getActualTypeArguments()[0];
    }
    return new Key(hyphened(part.getName()), type, list, part.getAnnotation(Entry.class));
  }
}
