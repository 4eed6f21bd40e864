package org.scantling.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.design.WayOfBuilding;
import org.scantling.tables.FastenerRow;

/** How much of each piece of work a structure takes, by the rows of work.csv. */
final class WorkAmounts {
  private static final int CORNERS = 4;
  private static final int ENDS = 2;

  private final Built built;
  private final Pieces pieces;
  private final Climbers climbers;
  private final Holes holes;
  private final Map<String, Double> amounts = new LinkedHashMap<>();

  private WorkAmounts(Built built, Pieces pieces, Climbers climbers) {
    this.built = built;
    this.pieces = pieces;
    this.climbers = climbers;
    this.holes = new Holes(built);
  }

  /** By the ids of the rows; a row that is not there has nothing to do. */
  static Map<String, Double> of(Built built, Pieces pieces, Climbers climbers) {
    WorkAmounts work = new WorkAmounts(built, pieces, climbers);
    work.ground();
    work.posts();
    work.cuts();
    work.lifts();
    work.fastenings();
    work.sides();
    work.planting();
    work.clearing();
    work.amounts.values().removeIf(amount -> !(amount > 0));
    return work.amounts;
  }

  private void ground() {
    int posts = built.geometry().postCount();
    add("setout.corner", CORNERS);
    add("setout.hole", posts);
    String soil = "dig." + built.soil();
    add(built.tables().work().find(soil).isPresent() ? soil : "dig.other", holes.dugCuFt());
    add("dig.deep", holes.dugDeepCuFt());
    add("fill.bed", posts);
    add("fill." + WayOfBuilding.TAMPED_SOIL, holes.putBackCuFt());
    add("fill." + WayOfBuilding.GRAVEL, holes.gravelFillCuFt());
    add("fill." + WayOfBuilding.CONCRETE, holes.concreteCuFt());
  }

  private void posts() {
    add("posts.stand", built.geometry().postCount());
    add("posts.brace", new Sundries(built, pieces).braces());
    add("posts.anchor", built.inTheGround() ? 0 : built.geometry().postCount());
    for (Piece piece : pieces.all()) {
      add("posts.top", piece.shape().spareIn() > 0 ? piece.count() : 0);
    }
  }

  /** The end of a piece that is left long is cut where it stands, and not before. */
  private void cuts() {
    for (Piece piece : pieces.all()) {
      Shape shape = piece.shape();
      int shaped =
          (shape.first() instanceof EndCut.Shaped ? 1 : 0)
              + (shape.last() instanceof EndCut.Shaped ? 1 : 0);
      int later = shape.spareIn() > 0 ? 1 : 0;
      add("cut.shaped", piece.count() * shaped);
      add("cut.end", piece.count() * (ENDS - shaped - later));
      add("notch.cut", piece.count() * shape.recesses().size());
      add("bore.hole", piece.count() * shape.bores().size());
    }
    add("treat.cut", new Sundries(built, pieces).cuts());
  }

  private void lifts() {
    for (String role : List.of("header", "crossbeam")) {
      for (Piece piece : pieces.of(role)) {
        int hands = Weights.hands(built, Weights.of(built, piece));
        add(hands == 1 ? "lift.one" : hands == 2 ? "lift.two" : "lift.more", piece.count());
      }
    }
  }

  /** Screws of temporary braces and blocks go in with them. */
  private void fastenings() {
    for (Fixing fixing : Fixings.of(built, pieces)) {
      add(fastening(fixing), fixing.count());
    }
    String screw = built.tables().defaults().row("brace.temporary-screw").word();
    int temporary = Fixings.braceScrews(built, pieces) + Fixings.blockScrews(built, pieces);
    add(fastening(built.tables().fastener(screw)), -temporary);
  }

  /** Nuts and washers go on with their bolts. */
  private String fastening(Fixing fixing) {
    if (fixing.rating().isPresent()) {
      return "fasten.part";
    }
    return built
        .tables()
        .fasteners()
        .find(fixing.id())
        .map(WorkAmounts::fastening)
        .orElse(fixing.id().startsWith("rod.") ? "fasten.bolt" : "");
  }

  private static String fastening(FastenerRow row) {
    boolean turned = row.type().equals("bolt") || row.type().equals("lag");
    return turned ? "fasten.bolt" : "fasten.screw";
  }

  private void sides() {
    add("sides.rail", pieces.count("rail"));
    add("sides.picket", pieces.count("picket"));
    add("sides.block", pieces.count("block"));
    add("sides.blocking", pieces.count(Blocking.ROLE));
    add("sides.brace", pieces.count("brace"));
  }

  private void planting() {
    add("plant.climber", climbers.plants().size());
    add("plant.run", climbers.runs().stream().mapToInt(Climbers.WireRun::times).sum());
    add("plant.eye", climbers.eyes());
    add("plant.hole", climbers.holes());
  }

  private void clearing() {
    add("clear.brace", new Sundries(built, pieces).braces());
    add("clear.soil", holes.toRemoveCuFt());
    add("clear.job", 1);
  }

  private void add(String row, double amount) {
    if (!row.isEmpty()) {
      amounts.merge(row, amount, Double::sum);
    }
  }
}
