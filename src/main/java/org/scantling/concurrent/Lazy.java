package org.scantling.concurrent;

import java.util.function.Supplier;

/**
 * A value that is worked out when it is first asked for, and only then; the work must be a pure
 * function of what does not change. Not safe to share between threads.
 */
public final class Lazy<T> implements Supplier<T> {
  private final Supplier<T> work;
  private T value;

  public Lazy(Supplier<T> work) {
    this.work = work;
  }

  @Override
  public T get() {
    if (value == null) {
      value = work.get();
    }
    return value;
  }
}
