package org.scantling.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Turns the rows of a file into its records: one switch, no reflection. */
final class TypedRows {
  private TypedRows() {}

  static <T extends TableRow> Table<T> table(TableFile file, Class<T> type, Collection<Row> rows) {
    List<T> typed = new ArrayList<>(rows.size());
    for (Row row : rows) {
      typed.add(type.cast(typed(file, row)));
    }
    return new Table<>(file.fileName(), typed);
  }

  private static TableRow typed(TableFile file, Row row) {
    switch (file) {
      case DESIGN_VALUES:
        return DesignValueRow.read(row);
      case ADJUSTMENT_FACTORS:
        return AdjustmentRow.read(row);
      case SIZES:
        return SizeRow.read(row);
      case STOCK_LENGTHS:
        return StockLengthRow.read(row);
      case SOILS:
        return SoilRow.read(row);
      case ZONES:
        return ZoneRow.read(row);
      case FROST_PLACES:
        return FrostPlaceRow.read(row);
      case FREEZING_INDEX:
        return FreezingIndexRow.read(row);
      case VINES:
        return VineRow.read(row);
      case USERS:
        return UserRow.read(row);
      case EXPOSURE:
        return ExposureRow.read(row);
      case WIND:
        return WindRow.read(row);
      case FASTENERS:
        return FastenerRow.read(row);
      case CHECKS:
        return CheckRow.read(row);
      case DEFAULTS:
        return DefaultWord.read(row);
      case JOINTS:
        return JointRow.read(row);
      case CAUTIONS:
        return CautionRow.read(row);
      case BASE_CHANGES:
        return BaseChangeRow.read(row);
      case OPTION_AXES:
        return OptionAxisRow.read(row);
      case OPTION_COUNTS:
        return OptionCountRow.read(row);
      case NEAR_MISSES:
        return NearMissRow.read(row);
      case LOOK:
        return LookRow.read(row);
      case DEMANDS:
        return DemandRow.read(row);
      case CLIMBERS:
        return ClimberRow.read(row);
      case PACKS:
        return PackRow.read(row);
      case WORKINGS:
        return CalculationRow.read(row);
      case SYMBOLS:
        return SymbolRow.read(row);
      case STEPS:
        return StepRow.read(row);
      case WORK:
        return WorkRow.read(row);
      case SYNONYMS:
        return SynonymRow.read(row);
      case EDGES:
        return EdgeRow.read(row);
      case SHOP:
      case SNOW:
      case LIVE:
      case AUTHORITY:
      case THUMB:
        return NumberRow.read(row);
    }
    throw new IllegalStateException("no record for " + file);
  }
}
