package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.confirm.WindOnWalk;
import org.scantling.design.Geometry;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.SolidityBands;
import org.scantling.loads.WallRule;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;

/** What the wind pushes sideways against: timbers, rails, pickets and leaves. */
final class WindLoading {
  private final CheckContext context;
  private final Answers answers;
  private final Tables tables;

  WindLoading(CheckContext context) {
    this.context = context;
    this.answers = context.answers();
    this.tables = context.tables();
  }

  WindOnWalk onWalk() {
    return new WindOnWalk(context.geometry(), sides(), rules());
  }

  /** The same, as it comes to posts of another height. */
  WindOnWalk onWalk(double postIn) {
    Geometry all = context.geometry();
    Geometry.Posts posts = new Geometry.Posts(all.posts().breadthIn(), postIn);
    return new WindOnWalk(
        new Geometry(all.plan(), posts, all.headers(), all.crossbeams()), sides(), rules());
  }

  private WindOnWalk.Sides sides() {
    if (!answers.has(RAIL_SIZE)) {
      return new WindOnWalk.Sides(0, 0, 0, 0);
    }
    double railIn = context.stock().row(answers.option(RAIL_SIZE)).widthIn();
    return new WindOnWalk.Sides(
        railIn,
        answers.number(RAIL_HEIGHT),
        answers.number(PICKETS),
        context.stock().picketEdgeIn());
  }

  private WindOnWalk.Rules rules() {
    VineRow vine = context.vine();
    return new WindOnWalk.Rules(
        answers.number(WIND_PRESSURE),
        new LatticeRule(bands(), wind("wind.gust"), wind("wind.least-pressure")),
        new FoliageCover(vine.sideFillLeafRatio(), vine.dragFactor()),
        new FoliageCover(vine.sideFillBareRatio(), vine.dragFactor()),
        new WindOnWalk.Shelter(thumb("wind.sheltered-share"), thumb("wind.sheltered-depths")),
        wall(),
        new WindOnWalk.Mat(
            vine.matIn(),
            new FoliageCover(vine.canopyFillLeafRatio(), vine.dragFactor()),
            new FoliageCover(vine.canopyFillBareRatio(), vine.dragFactor())));
  }

  /** What a closed side counts as: a wall as long as the shorter way through, which is cautious. */
  private WallRule wall() {
    double shorterIn =
        Math.min(context.geometry().headerLengthIn(), context.geometry().crossbeamLengthIn());
    double lengthRatio = shorterIn / context.geometry().overallHeightIn();
    return new WallRule(
        tables.windWall(lengthRatio).amount(), wind("wind.gust"), wind("wind.least-pressure"));
  }

  private SolidityBands bands() {
    List<SolidityBands.Band> bands =
        tables.wind().rows().stream()
            .filter(row -> row.id().startsWith("wind.lattice.flat."))
            .map(row -> new SolidityBands.Band(row.fromRatio(), row.amount()))
            .toList();
    return new SolidityBands(bands, wind("wind.lattice.solid-from"));
  }

  private double thumb(String id) {
    return tables.thumb(id).amount();
  }

  private double wind(String id) {
    return tables.wind(id).amount();
  }
}
