package org.scantling.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Finds the row that answers for a timber. */
final class TimberLookup {
  private TimberLookup() {}

  static List<SizeRow> sizes(Table<SizeRow> sizes, String role, String market) {
    List<SizeRow> ranked = new ArrayList<>();
    for (SizeRow size : sizes.rows()) {
      if (size.market().equals(market) && size.serves(role)) {
        int place = ranked.size();
        while (place > 0 && ranked.get(place - 1).rankCount() > size.rankCount()) {
          place--;
        }
        ranked.add(place, size);
      }
    }
    return List.copyOf(ranked);
  }

  static DesignValueRow designValues(
      Table<DesignValueRow> values, String species, String grade, SizeRow size) {
    Set<String> known = new TreeSet<>();
    for (DesignValueRow row : values.rows()) {
      if (row.species().equals(species)
          && row.grade().equals(grade)
          && row.memberClass() == size.memberClass()
          && row.nominalWidth().holds(size.nominalWidthIn())) {
        return row;
      }
      known.add(row.species());
    }
    throw new IllegalArgumentException(
        "design-values.csv has no "
            + String.join(" ", grade, species, size.memberClass().word())
            + " for "
            + size.id()
            + "; its species are "
            + String.join(", ", known));
  }

  static StockLengthRow stockLengths(Table<StockLengthRow> lengths, SizeRow size) {
    for (StockLengthRow row : lengths.rows()) {
      if (row.market().equals(size.market()) && row.stockFamily().equals(size.stockFamily())) {
        return row;
      }
    }
    throw new IllegalArgumentException(
        "stock-lengths.csv has no lengths of family " + size.stockFamily() + " for " + size.id());
  }
}
