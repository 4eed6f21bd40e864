package org.scantling.tables;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What may be priced beside timber, fasteners, wires and plants. */
@SuppressWarnings("ImmutableEnumChecker") // the list is filled by the constructor alone
public enum PricedItem {
  PAD("pad", Unit.EACH),
  GRAVEL("gravel", Unit.BAG, Unit.VOLUME),
  CONCRETE("concrete", Unit.BAG, Unit.VOLUME),
  TEMPORARY_BRACE("temporary-brace", Unit.EACH),
  STAKE("stake", Unit.EACH),
  BATTER_BOARD("batter-board", Unit.EACH),
  PACKING("packing", Unit.EACH),
  POST_CAP("post-cap", Unit.EACH),
  STRING("string", Unit.PACK),
  PRESERVATIVE("preservative", Unit.PACK),
  PLUG("plug", Unit.EACH),
  TENSIONER("tensioner", Unit.EACH),
  BRACKET("bracket", Unit.EACH),
  AUGER_RENTAL("auger-rental", Unit.JOB),
  DISPOSAL("disposal", Unit.VOLUME, Unit.JOB),
  DELIVERY("delivery", Unit.JOB, Unit.WEIGHT),
  LABOR_HOUR("labor-hour", Unit.HOUR),
  MATERIALS_TAX("materials-tax", Unit.PERCENT),
  MARKUP("markup", Unit.PERCENT),
  TAX("tax", Unit.PERCENT);

  /** What one price may be for. */
  enum Unit {
    EACH,
    PACK,
    BAG,
    VOLUME,
    WEIGHT,
    JOB,
    HOUR,
    PERCENT
  }

  private final String word;
  private final List<Unit> units;

  PricedItem(String word, Unit... units) {
    this.word = word;
    this.units = List.of(units);
  }

  /** The name that a price list has. */
  public String word() {
    return word;
  }

  List<Unit> units() {
    return units;
  }

  static Optional<PricedItem> find(String word) {
    return Arrays.stream(values()).filter(each -> WordForm.same(each.word, word)).findFirst();
  }
}
