package org.scantling.print;

import java.util.List;
import org.scantling.quantity.UnitSystem;

/**
 * How a text is to look.
 *
 * @param units feet and inches, or metric
 * @param colour whether headings may be set in bold by terminal codes
 * @param width columns, 40 or more
 * @param set paths that were set beside the site file
 */
public record PrintOptions(UnitSystem units, boolean colour, int width, List<String> set) {
  private static final int LEAST_WIDTH = 40;
  private static final int USUAL_WIDTH = 80;

  public PrintOptions {
    set = List.copyOf(set);
    if (width < LEAST_WIDTH) {
      throw new IllegalArgumentException("width " + width + " must be " + LEAST_WIDTH + " or more");
    }
  }

  public PrintOptions(UnitSystem units, boolean colour, int width) {
    this(units, colour, width, List.of());
  }

  /** The same, of a site file with some paths set beside it. */
  public PrintOptions setting(List<String> paths) {
    return new PrintOptions(units, colour, width, paths);
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
