package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;

/**
 * A picture of one rule over the whole grid, one sign a site: the first axes down the side, the
 * others across, the last of them innermost.
 */
final class AgreementMap {
  static final String SAFER = "+";
  static final String EQUAL = "=";
  static final String NOT_ENOUGH = "x";
  static final String WITHOUT = " ";

  private final Agreement agreement;
  private final List<List<String>> down;
  private final List<List<String>> across;

  AgreementMap(Agreement agreement) {
    this.agreement = agreement;
    int split = agreement.axes().size() / 2;
    down = Grid.sites(agreement.axes().subList(0, split));
    across = Grid.sites(agreement.axes().subList(split, agreement.axes().size()));
  }

  /** The lines of the picture, each as wide as it needs. */
  List<String> of(String rule) {
    List<List<String>> rows = new ArrayList<>();
    int inner = agreement.axes().get(agreement.axes().size() - 1).values().size();
    for (List<String> side : down) {
      StringBuilder row = new StringBuilder();
      for (int i = 0; i < across.size(); i++) {
        row.append(i > 0 && i % inner == 0 ? " " : "").append(sign(rule, side, across.get(i)));
      }
      rows.add(List.of(label(side), row.toString()));
    }
    int wide = rows.stream().mapToInt(row -> row.get(0).length()).max().orElse(0);
    return rows.stream()
        .map(row -> row.get(0) + " ".repeat(wide - row.get(0).length()) + "  " + row.get(1))
        .map(String::stripTrailing)
        .toList();
  }

  private String sign(String rule, List<String> side, List<String> top) {
    List<String> site = new ArrayList<>(side);
    site.addAll(top);
    return agreement.at(rule, site).map(AgreementMap::sign).orElse(WITHOUT);
  }

  private static String sign(Standing standing) {
    return switch (standing) {
      case SAFER -> SAFER;
      case EQUAL -> EQUAL;
      case NOT_ENOUGH -> NOT_ENOUGH;
    };
  }

  private static String label(List<String> site) {
    return site.stream().map(AgreementMap::value).collect(Collectors.joining(", "));
  }

  /** A list of one climber is that climber. */
  static String value(String written) {
    return written.replaceAll("[\\[\\]{}]", "").replace("vine: ", "");
  }
}
