package org.scantling.concurrent;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;

/**
 * A list of independent pieces of work, shared by all cores: whichever is free takes the next one.
 *
 * <p>A parallel stream cuts its list into parts beforehand; of few pieces that differ much in
 * length, one core then gets the long ones and the other waits. Here the longest should stand
 * first.
 */
public final class Cores {
  private Cores() {}

  /** True where something can be worked out on another core meanwhile. */
  public static boolean several() {
    return Runtime.getRuntime().availableProcessors() > 1;
  }

  /**
   * What each piece comes to, in the order of the list. The calling thread works too.
   *
   * @throws RuntimeException the fault of the first piece in the list that ended in one
   */
  public static <T, R> List<R> map(List<T> pieces, Function<T, R> work) {
    List<FutureTask<R>> tasks =
        pieces.stream().map(piece -> new FutureTask<>(() -> work.apply(piece))).toList();
    Queue<FutureTask<R>> waiting = new ConcurrentLinkedQueue<>(tasks);
    int helpers = Math.min(Runtime.getRuntime().availableProcessors(), tasks.size()) - 1;
    for (int i = 0; i < helpers; i++) {
      Thread thread = new Thread(() -> takeAll(waiting), "core");
      thread.setDaemon(true);
      thread.start();
    }
    takeAll(waiting);
    List<R> results = new ArrayList<>();
    for (FutureTask<R> task : tasks) {
      results.add(result(task));
    }
    return results;
  }

  private static void takeAll(Queue<? extends FutureTask<?>> waiting) {
    for (FutureTask<?> next = waiting.poll(); next != null; next = waiting.poll()) {
      next.run();
    }
  }

  /** What a task came to, waited for if need be. */
  static <R> R result(FutureTask<R> task) {
    try {
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for another core", e);
    }
  }
}
