package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Length;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;
import org.scantling.tables.ItemKey;
import org.scantling.tables.PricedItem;

/** What goes into the holes, and what is left over from them. */
final class GroundLines {
  private static final Sayings SAYINGS = Sayings.of("buying");
  private static final double CU_FT_IN_A_CU_YD = 27;
  private static final String GROUND = "ground";
  private static final String CU_FT = "cu ft";

  private final Built built;
  private final Holes holes;
  private final List<BuyingLine> lines = new ArrayList<>();
  private double bagsLb;

  GroundLines(Built built) {
    this.built = built;
    this.holes = new Holes(built);
    pads();
    bags(PricedItem.GRAVEL, holes.gravelCuFt(), "stock.gravel-bag", gravelUse());
    bags(PricedItem.CONCRETE, holes.concreteCuFt(), "stock.concrete-bag", "concrete.use");
    soil();
  }

  List<BuyingLine> lines() {
    return List.copyOf(lines);
  }

  /** Weight of all that comes in bags. */
  double bagsLb() {
    return bagsLb;
  }

  private void pads() {
    if (holes.padded()) {
      int posts = built.geometry().postCount();
      double holeIn = built.footings().diameterIn();
      String width = metric() ? Length.millimetres(holeIn) : Length.feetAndInches(holeIn);
      lines.add(
          new BuyingLine(
              ItemKey.of(PricedItem.PAD),
              GROUND,
              SAYINGS.say("pad", "width", width),
              new BuyingLine.Quantity(posts, "pieces"),
              new BuyingLine.Quantity(0, "pieces"),
              posts,
              "piece",
              SAYINGS.say("pad.use"),
              OptionalLong.empty()));
    }
  }

  private boolean metric() {
    return built.tape() == Tape.MILLIMETRES;
  }

  private String gravelUse() {
    boolean filled =
        built.inTheGround() && built.footings().backfill().equals(WayOfBuilding.GRAVEL);
    return filled ? "gravel.fill" : "gravel.bed";
  }

  private void bags(PricedItem what, double cuFt, String bag, String use) {
    if (!(cuFt > 0)) {
      return;
    }
    String row = metric() ? bag + "-metric" : bag;
    double moreCuFt = cuFt * built.shop("stock.concrete-spare-share");
    int bags = (int) Math.ceil((cuFt + moreCuFt) / built.shop(row) - 1e-9);
    bagsLb += bags * built.shop(row + ".weight");
    lines.add(
        new BuyingLine(
            ItemKey.of(what),
            GROUND,
            SAYINGS.say(what.word()),
            new BuyingLine.Quantity(cuFt, CU_FT),
            new BuyingLine.Quantity(moreCuFt, CU_FT),
            bags,
            built.tables().defaults().row(row).word(),
            use(SAYINGS.say(use), cuFt + moreCuFt),
            OptionalLong.empty()));
  }

  /** Where there is much of it, it comes loose and not in bags. */
  private String use(String use, double cuFt) {
    String volume =
        metric()
            ? new Said(UnitSystem.METRIC).volume(cuFt)
            : Said.decimals(cuFt / CU_FT_IN_A_CU_YD, 1) + " cu yd";
    return cuFt < built.shop("stock.bulk-from")
        ? use
        : SAYINGS.say("bulk", "use", use, "volume", volume);
  }

  private void soil() {
    lines.add(
        new BuyingLine(
            ItemKey.of(PricedItem.DISPOSAL),
            GROUND,
            SAYINGS.say("soil"),
            new BuyingLine.Quantity(holes.toRemoveCuFt(), CU_FT),
            new BuyingLine.Quantity(0, CU_FT),
            0,
            "",
            SAYINGS.say("soil.use"),
            OptionalLong.empty()));
  }
}
