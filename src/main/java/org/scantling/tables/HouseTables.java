package org.scantling.tables;

import java.nio.file.Path;

/** The tables of the program with those of a house. */
public final class HouseTables {
  private HouseTables() {}

  /**
   * The tables of the program with a house's rows laid over them: a row of a known id replaces what
   * it writes and keeps what it leaves blank, a row of a new id is added where the table is open.
   * Further columns say who answers for a row, why it is so, and on what basis a standard is left.
   *
   * @param houseRules folder that holds tables of the same names and nothing else
   * @throws TableException at once, when anything in the folder cannot be used
   */
  public static Tables load(Path houseRules) {
    HouseRules house = HouseRules.read(houseRules);
    Tables tables = Tables.over(house);
    RowLinks.check(tables, Tables.load(), house);
    return tables.heldToStandards();
  }
}
