package org.scantling.concurrent;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.Queue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * More pieces of work than fit into memory, shared by cores: a few are under way at a time, and
 * what they come to is handed over in the order of the pieces.
 *
 * @param cores how many work at once, 1 for the calling thread alone
 * @param window how many pieces are held at most, waiting, under way or done
 */
public record InOrder(int cores, int window) {
  public InOrder {
    if (cores < 1 || window < 1) {
      throw new IllegalArgumentException("cores and window must be at least 1");
    }
  }

  /**
   * Works all pieces. Pieces are taken and results handed over by the calling thread.
   *
   * @throws RuntimeException the fault of the first piece that ended in one
   */
  public <T, R> void map(
      Iterator<? extends T> pieces, Function<? super T, ? extends R> work, Consumer<R> results) {
    if (cores == 1) {
      pieces.forEachRemaining(piece -> results.accept(work.apply(piece)));
      return;
    }
    ExecutorService workers = Executors.newFixedThreadPool(cores, InOrder::helper);
    try {
      Queue<FutureTask<R>> held = new ArrayDeque<>();
      while (pieces.hasNext()) {
        T piece = pieces.next();
        FutureTask<R> task = new FutureTask<>(() -> work.apply(piece));
        held.add(task);
        workers.execute(task);
        while (held.size() >= window || firstIsDone(held)) {
          results.accept(Cores.result(held.remove()));
        }
      }
      while (!held.isEmpty()) {
        results.accept(Cores.result(held.remove()));
      }
    } finally {
      workers.shutdownNow();
    }
  }

  private static boolean firstIsDone(Queue<? extends Future<?>> held) {
    Future<?> first = held.peek();
    return first != null && first.isDone();
  }

  private static Thread helper(Runnable work) {
    Thread thread = new Thread(work, "core");
    thread.setDaemon(true);
    return thread;
  }
}
