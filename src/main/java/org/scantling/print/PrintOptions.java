package org.scantling.print;

import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Stated;

/**
 * How a text is to look.
 *
 * @param units feet and inches, or metric
 * @param colour whether headings may be set in bold by terminal codes
 * @param width columns, 40 or more
 * @param set paths that were set beside the site file
 * @param inKilopascals paths that were written in kilopascals
 */
public record PrintOptions(
    UnitSystem units, boolean colour, int width, List<String> set, List<String> inKilopascals) {
  private static final int LEAST_WIDTH = 40;
  private static final int USUAL_WIDTH = 80;

  public PrintOptions {
    set = List.copyOf(set);
    inKilopascals = List.copyOf(inKilopascals);
    if (width < LEAST_WIDTH) {
      throw new IllegalArgumentException("width " + width + " must be " + LEAST_WIDTH + " or more");
    }
  }

  public PrintOptions(UnitSystem units, boolean colour, int width) {
    this(units, colour, width, List.of(), List.of());
  }

  /** The same, of a site file with some paths set beside it. */
  public PrintOptions setting(List<String> paths) {
    return new PrintOptions(units, colour, width, paths, inKilopascals);
  }

  /** The same, of a site file that has the loads at some paths in kilopascals. */
  public PrintOptions inKilopascals(List<String> paths) {
    return new PrintOptions(units, colour, width, set, paths);
  }

  /** A load of the site file as the file has it, whatever the units of the page. */
  Stated asWritten(Stated stated) {
    return stated.value() instanceof Outcome.Amount amount
            && amount.measure().unit() == Unit.PSF
            && inKilopascals.contains(stated.demand().path())
        ? new Stated(
            stated.demand(), new Outcome.Amount(Measure.psfFromKpa(amount.measure().amount())))
        : stated;
  }

  /** True for a path that was set, by itself or with what it is part of. */
  boolean set(String path) {
    return set.stream().anyMatch(each -> (plain(path) + ".").startsWith(plain(each) + "."));
  }

  /** Without the places in a list. */
  private static String plain(String path) {
    return path.replaceAll("\\[\\d+]", "");
  }

  /** Plain text of 80 columns. */
  public static PrintOptions plain(UnitSystem units) {
    return new PrintOptions(units, false, USUAL_WIDTH);
  }
}
