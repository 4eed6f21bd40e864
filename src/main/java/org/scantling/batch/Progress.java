package org.scantling.batch;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.function.LongSupplier;
import org.scantling.sayings.Sayings;

/** How far a batch has come, on one line of a terminal that is written over. */
public final class Progress {
  private static final int BAR = 24;
  private static final int WIDTH = 79;
  private static final long NANOS_BETWEEN = 250_000_000L;
  private static final double PERCENT = 100.0;

  private final PrintWriter terminal;
  private final LongSupplier nanos;
  private final LongSupplier done;
  private final OptionalLong all;
  private long shownAt;
  private boolean shown;

  /**
   * @param nanos the time that has passed since some moment
   * @param done how many bytes were taken in
   * @param all how many there are, where that is known
   */
  public Progress(PrintWriter terminal, LongSupplier nanos, LongSupplier done, OptionalLong all) {
    this.terminal = terminal;
    this.nanos = nanos;
    this.shownAt = nanos.getAsLong();
    this.done = done;
    this.all = all;
  }

  /** Says it, unless it was said a moment ago. */
  public void show(long lines, long wrong) {
    long now = nanos.getAsLong();
    if (now - shownAt < NANOS_BETWEEN) {
      return;
    }
    shownAt = now;
    shown = true;
    over(line(lines, wrong));
  }

  /** What is shown. */
  String line(long lines, long wrong) {
    String[] blanks = {
      "lines", number(lines), "wrong", wrong > 0 ? number(wrong) : "", "bar", "", "percent", ""
    };
    if (all.isPresent() && all.getAsLong() > 0) {
      double share = Math.min(1, (double) done.getAsLong() / all.getAsLong());
      int full = (int) (share * BAR);
      blanks[5] = "[" + "#".repeat(full) + "-".repeat(BAR - full) + "]";
      blanks[7] = String.valueOf((int) (share * PERCENT));
    }
    return Sayings.of("batch").say("progress", blanks);
  }

  /** Leaves the line empty. */
  public void end() {
    if (shown) {
      over("");
      terminal.print('\r');
      terminal.flush();
    }
  }

  private void over(String text) {
    terminal.print("\r" + text + " ".repeat(Math.max(0, WIDTH - text.length())));
    terminal.flush();
  }

  private static String number(long count) {
    return String.format(Locale.ROOT, "%,d", count);
  }
}
