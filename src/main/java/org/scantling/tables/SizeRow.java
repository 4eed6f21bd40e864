package org.scantling.tables;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * A size of timber as the yard sells it.
 *
 * @param id the name of the size, such as 2x6
 * @param market north-america or metric
 * @param memberClass which table of design values it is read from
 * @param thicknessIn dressed thickness
 * @param widthIn dressed width, the depth of a timber on edge
 * @param nominalThicknessIn nominal thickness, whose band of the tables is read
 * @param nominalWidthIn nominal width, whose band of the tables is read
 * @param roles what it may serve as: post, header, crossbeam, rail, brace
 * @param rankCount place in the order of sizes of its market, smaller timbers first
 * @param stockFamily which row of stock lengths it is sold in
 */
public record SizeRow(
    String id,
    String market,
    MemberClass memberClass,
    double thicknessIn,
    double widthIn,
    double nominalThicknessIn,
    double nominalWidthIn,
    List<String> roles,
    int rankCount,
    String stockFamily,
    Source source,
    String note)
    implements TableRow {

  private static final List<String> ROLES =
      List.of("post", "header", "board", "crossbeam", "rail", "brace");

  public SizeRow {
    roles = List.copyOf(roles);
  }

  static SizeRow read(Row row) {
    for (String role : row.list("roles")) {
      if (!ROLES.contains(role)) {
        throw row.refuse(
            "roles", RefusalWords.say("sizes.roles", "roles", String.join(", ", ROLES)));
      }
    }
    MemberClass due =
        MemberClass.of(row.positive("nominal_thickness_in"), row.positive("nominal_width_in"));
    if (MemberClass.read(row) != due) {
      throw row.refuse("member_class", RefusalWords.say("sizes.due", "class", due.word()));
    }
    return new SizeRow(
        row.text("id"),
        row.oneOf("market", Market.NORTH_AMERICA, Market.METRIC),
        MemberClass.read(row),
        row.positive("thickness_in"),
        row.positive("width_in"),
        row.positive("nominal_thickness_in"),
        row.positive("nominal_width_in"),
        row.list("roles"),
        (int) row.positive("rank"),
        row.text("stock_family"),
        row.source(),
        row.optional("note"));
  }

  /** True when the size may serve in that role. */
  public boolean serves(String role) {
    return roles.contains(role);
  }

  /** True when it is no thicker and no wider than another. */
  public boolean fitsIn(SizeRow other) {
    return thicknessIn <= other.thicknessIn && widthIn <= other.widthIn;
  }
}
