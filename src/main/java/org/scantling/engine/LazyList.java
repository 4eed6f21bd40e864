package org.scantling.engine;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.scantling.concurrent.Lazy;

/**
 * A list that is worked out when it is first read: what only few readers want costs the others
 * nothing. Unchangeable; not safe to share between threads before it has been read.
 */
final class LazyList<T> extends AbstractList<T> {
  private final Lazy<List<T>> list;

  /**
   * @param work a pure function of what does not change
   */
  LazyList(Supplier<List<T>> work) {
    this.list = new Lazy<>(() -> List.copyOf(work.get()));
  }

  @Override
  public T get(int index) {
    return list.get().get(index);
  }

  @Override
  public int size() {
    return list.get().size();
  }
}
