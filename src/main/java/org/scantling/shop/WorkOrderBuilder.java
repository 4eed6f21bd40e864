package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.scantling.sayings.Sayings;
import org.scantling.tables.StepRow;

/** Puts the order of work together from the rows that hold for this structure. */
final class WorkOrderBuilder {
  private static final Sayings SAYINGS = Sayings.of("order");

  private final Built built;
  private final Pieces pieces;
  private final Climbers climbers;

  WorkOrderBuilder(Built built, Pieces pieces, Climbers climbers) {
    this.built = built;
    this.pieces = pieces;
    this.climbers = climbers;
  }

  WorkOrder order(StepWords words) {
    Set<String> here = Occasions.of(built, pieces, climbers);
    List<WorkOrder.Step> steps = new ArrayList<>();
    int number = 0;
    for (StepRow row : built.tables().steps().rows()) {
      if (!row.upkeep() && here.containsAll(row.occasions())) {
        number += row.part().equals("step") ? 1 : 0;
        steps.add(new WorkOrder.Step(number, row.part(), words.fill(row), row.source()));
      }
    }
    return new WorkOrder(steps, lifts());
  }

  /** What is done once it stands, by the season. */
  Upkeep upkeep(StepWords words) {
    Set<String> here = Occasions.of(built, pieces, climbers);
    List<Upkeep.Care> care = new ArrayList<>();
    for (String season : StepRow.UPKEEP) {
      for (StepRow row : built.tables().steps().rows()) {
        if (row.part().equals(season) && here.containsAll(row.occasions())) {
          care.add(new Upkeep.Care(season, words.fill(row), row.source()));
        }
      }
    }
    return new Upkeep(care);
  }

  private List<WorkOrder.Lift> lifts() {
    List<WorkOrder.Lift> lifts = new ArrayList<>();
    for (Piece piece : pieces.all()) {
      double weightLb = Weights.of(built, piece);
      lifts.add(
          new WorkOrder.Lift(
              piece.mark(),
              SAYINGS.say("lift", "role", piece.shape().role(), "size", piece.shape().size()),
              weightLb,
              Weights.hands(built, weightLb)));
    }
    lifts.sort(Comparator.comparingDouble(WorkOrder.Lift::weightLb).reversed());
    return lifts;
  }
}
