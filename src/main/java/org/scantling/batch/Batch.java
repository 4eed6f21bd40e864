package org.scantling.batch;

import java.util.function.Consumer;
import org.scantling.concurrent.InOrder;

/**
 * Many sites answered one by one, in the order of their lines; of a file of any length only a few
 * lines are held in memory at a time.
 *
 * @param sites the lines
 * @param answering what each comes to
 * @param cores by how many, and how many lines are held
 */
public record Batch(SiteSource sites, LineAnswering answering, InOrder cores) {
  /** What is held for each core: enough that none waits for one long line. */
  private static final int HELD = 8;

  /** On so many cores. */
  public static Batch of(SiteSource sites, LineAnswering answering, int cores) {
    return new Batch(sites, answering, new InOrder(cores, cores * HELD));
  }

  /** Answers every line. */
  public void run(Consumer<LineAnswer> results) {
    cores.<RawLine, LineAnswer>map(sites, this::answer, results);
  }

  /**
   * Answers every line after those that an earlier run has answered.
   *
   * @throws BatchException where the last of those is answered otherwise today
   */
  public void goOn(Answered before, Consumer<LineAnswer> results) {
    while (before.last() > 0 && sites.hasNext()) {
      RawLine line = sites.next();
      if (line.number() == before.last()) {
        before.compare(answer(line));
        run(results);
        return;
      }
      if (line.number() > before.last()) {
        break;
      }
    }
    if (before.last() > 0) {
      throw before.otherwise();
    }
    run(results);
  }

  /** How much of the lines was taken in, in bytes. */
  public long bytesRead() {
    return sites.bytesRead();
  }

  private LineAnswer answer(RawLine line) {
    return answering.of(line.number(), sites.read(line));
  }
}
