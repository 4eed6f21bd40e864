package org.scantling.problem;

import static org.scantling.reasons.Question.HEADER_SIZE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.scantling.answers.Stock;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.StockMatch;
import org.scantling.reasons.StyleMatch;
import org.scantling.tables.SizeRow;

/**
 * The sizes a question may be answered with: what the market has for the role, and the proven size
 * where it has it for any other, for what has stood is worth trying first.
 */
public final class Offer {
  private final Stock stock;
  private final List<Proven> proven;

  Offer(Stock stock, List<Proven> proven) {
    this.stock = stock;
    this.proven = proven.stream().filter(Offer::isSize).toList();
  }

  /** Options for a size question, smallest first. */
  public List<String> sizes(Question question, boolean pairedHeaders) {
    List<String> sizes = new ArrayList<>(stock.options(question, pairedHeaders));
    proven.stream()
        .filter(each -> each.question() == question && stock.sells(each.option()))
        .map(Proven::option)
        .filter(option -> question != HEADER_SIZE || pairedHeaders == Stock.plies(option) > 1)
        .filter(option -> !sizes.contains(option))
        .forEach(sizes::add);
    sizes.sort(Comparator.comparingInt(option -> stock.row(option).rankCount()));
    return sizes;
  }

  /** What stands in for each proven size that cannot be had, or not in the other header style. */
  List<Fact> matches() {
    List<Fact> matches = new ArrayList<>();
    for (Proven each : proven) {
      if (!stock.sells(each.option())) {
        match(each).ifPresent(matches::add);
      }
      if (each.question() == HEADER_SIZE) {
        otherStyle(each).ifPresent(matches::add);
      }
    }
    return matches;
  }

  private Optional<StockMatch> match(Proven each) {
    SizeRow wanted = stock.row(each.option());
    return nearest(
            sizes(each.question(), Stock.plies(each.option()) > 1),
            row -> row.thicknessIn() >= wanted.thicknessIn() && row.widthIn() >= wanted.widthIn())
        .map(option -> new StockMatch(each.question(), each.option(), option));
  }

  private Optional<StyleMatch> otherStyle(Proven header) {
    boolean paired = Stock.plies(header.option()) == 1;
    double depthIn = stock.row(header.option()).widthIn();
    return nearest(sizes(HEADER_SIZE, paired), row -> row.widthIn() >= depthIn)
        .map(option -> new StyleMatch(style(paired), header.option(), option));
  }

  /** The smallest that will do, or where none does the largest there is; empty where none is. */
  private Optional<String> nearest(List<String> sizes, Predicate<SizeRow> noSmaller) {
    return sizes.stream()
        .filter(option -> noSmaller.test(stock.row(option)))
        .findFirst()
        .or(() -> sizes.stream().reduce((smaller, larger) -> larger));
  }

  private static String style(boolean paired) {
    return WayOfBuilding.headers(paired);
  }

  private static boolean isSize(Proven each) {
    return each.question().attribute().equals("size");
  }
}
