package org.scantling.concurrent;

import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Something that will be needed soon, worked out on another core meanwhile. A fault in it shows
 * when it is asked for, and not at all if nobody asks.
 */
public final class BackgroundTask<T> implements Supplier<T> {
  private final FutureTask<T> task;

  private BackgroundTask(FutureTask<T> task) {
    this.task = task;
  }

  /** Begins the work. */
  public static <T> BackgroundTask<T> of(Supplier<T> work) {
    FutureTask<T> task = new FutureTask<>(work::get);
    Thread thread = new Thread(task, "background");
    thread.setDaemon(true);
    thread.start();
    return new BackgroundTask<>(task);
  }

  /**
   * Waits for the result if need be.
   *
   * @throws RuntimeException the fault that the work ended in
   */
  @Override
  public T get() {
    return Cores.result(task);
  }
}
