package org.scantling.rulecases;

import java.util.regex.Pattern;

/**
 * Numbers told by the table row they come from, so that cases follow the tables: {@code
 * "thumb:bay.longest"}, {@code "thumb:bay.longest + 1"}, {@code "vines:wisteria:hangingIn * 2"}.
 * Points before strokes, blanks around every sign.
 */
final class NumberWords {
  private static final Pattern SUM = Pattern.compile(" (?=[+-] )");
  private static final Pattern PRODUCT = Pattern.compile(" (?=[*/] )");

  private final TableCells cells;

  NumberWords(TableCells cells) {
    this.cells = cells;
  }

  double read(String words) {
    double sum = 0;
    for (String term : SUM.split(words)) {
      sum +=
          term.startsWith("- ")
              ? -product(term.substring(2))
              : product(term.startsWith("+ ") ? term.substring(2) : term);
    }
    return sum;
  }

  private double product(String words) {
    double product = 1;
    for (String factor : PRODUCT.split(words)) {
      if (factor.startsWith("/ ")) {
        product /= one(factor.substring(2));
      } else {
        product *= one(factor.startsWith("* ") ? factor.substring(2) : factor);
      }
    }
    return product;
  }

  private double one(String word) {
    if (word.contains(":")) {
      return cells.number(word);
    }
    try {
      return Double.parseDouble(word);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "'" + word + "' must be a number or a cell such as thumb:bay.longest");
    }
  }
}
