package org.scantling.concurrent;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is worked out when it is first asked for, and only then; the work must be a pure
 * function of what does not change. Not safe to share between threads.
 */
public final class Lazy<T> implements Supplier<T> {
  private final Supplier<T> work;
  private @Nullable T value;

  public Lazy(Supplier<T> work) {
    this.work = work;
  }

  @Override
  public T get() {
    T done = value;
    if (done == null) {
      done = work.get();
      value = done;
    }
    return done;
  }
}
