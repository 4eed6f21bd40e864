package org.scantling.engine;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.scantling.meanwhile.Once;

/**
 * A list that is worked out when it is first read: what only few readers want costs the others
 * nothing. Unchangeable; not safe to share between threads before it has been read.
 */
final class ListOnce<T> extends AbstractList<T> {
  private final Once<List<T>> list;

  /**
   * @param work a pure function of what does not change
   */
  ListOnce(Supplier<List<T>> work) {
    this.list = new Once<>(() -> List.copyOf(work.get()));
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
