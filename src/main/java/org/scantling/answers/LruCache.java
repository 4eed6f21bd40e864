package org.scantling.answers;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Results by what they were worked out from, the longest unused forgotten first. A key must hold,
 * by value, everything that its result depends on; then nothing that is remembered can be wrong.
 */
final class LruCache<K, V> {
  private final Map<K, V> results;

  /**
   * @param most results that are kept, above 0
   */
  LruCache(int most) {
    this.results =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  V of(K key, Supplier<V> work) {
    V result = results.get(key);
    if (result == null) {
      result = work.get();
      results.put(key, result);
    }
    return result;
  }
}
