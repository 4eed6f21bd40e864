package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * What the wind does to a post of the row on the higher ground, strength level. The crossbeams hold
 * the tops of both rows apart as far as they stand, so these move alike, and the shorter post,
 * which is the stiffer of two of one size, takes over a part of what leans on the taller.
 *
 * <p>Both are worked as held firmly at the ground. A foot that turns makes them more alike, so that
 * the shorter takes no more than this; and the taller is never eased by what the shorter takes.
 *
 * <p>Source: statics of two cantilevers tied at their tops.
 *
 * @param taller what the wind does to a post of the other row, by itself
 * @param own what it does to this one, by itself
 * @param overLb what this one takes over, at its top
 * @param push all of it
 */
public record SharedPush(SidePush taller, SidePush own, double overLb, SidePush push)
    implements Calculated {

  static SharedPush of(SidePush taller, SidePush own) {
    double tall = cube(taller.heightIn());
    double together = cube(own.heightIn()) + tall;
    double overLb = Math.max(0, tall / together * (atTopLb(taller) + atTopLb(own)) - atTopLb(own));
    double topLb = own.topLb() + overLb;
    double topAtIn =
        topLb > 0 ? (own.topLb() * own.topAtIn() + overLb * own.heightIn()) / topLb : own.topAtIn();
    return new SharedPush(
        taller, own, overLb, new SidePush(topLb, topAtIn, own.spreadLb(), own.heightIn()));
  }

  /** The force at the top of a post that would sway it as far. */
  private static double atTopLb(SidePush push) {
    return 3 * push.swayIn(1) / cube(push.heightIn());
  }

  private static double cube(double in) {
    return in * in * in;
  }

  /** What each would take at its top, what the shorter takes there of both, and its moment. */
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(atTop("own", own));
    lines.add(atTop("taller", taller));
    lines.add(
        FormulaLine.of("top", Measure.pounds(push.topLb()))
            .with("top", Measure.pounds(own.topLb()))
            .with("own", Measure.pounds(atTopLb(own)))
            .with("taller", Measure.pounds(atTopLb(taller)))
            .with("height", Measure.inches(own.heightIn()))
            .with("long", Measure.inches(taller.heightIn())));
    lines.addAll(push.lines());
    return lines;
  }

  private static FormulaLine atTop(String id, SidePush push) {
    return FormulaLine.of(id, Measure.pounds(atTopLb(push)))
        .with("top", Measure.pounds(push.topLb()))
        .with("at", Measure.inches(push.topAtIn()))
        .with("spread", Measure.pounds(push.spreadLb()))
        .with("height", Measure.inches(push.heightIn()));
  }
}
