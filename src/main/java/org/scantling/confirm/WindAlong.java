package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.SideWind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * Wind along the walk, as it comes to each post.
 *
 * @param face one crossbeam with its two posts
 * @param timber wind on that
 * @param beams how many crossbeams in full wind are worth all of them
 * @param edge wind on the leafy end of the top
 * @param postCount posts that share what is on the top
 * @param push all of it on one post
 */
public record WindAlong(
    WindFace face, SideWind timber, Beams beams, LeafyEdge edge, int postCount, SidePush push)
    implements Calculated {
  /**
   * @param leeRatio share of the full wind that each crossbeam behind the first takes
   * @param count all of them
   * @param windwardCount as many in full wind are worth all
   */
  public record Beams(double leeRatio, int count, double windwardCount) {
    static Beams of(double leeRatio, int count) {
      return new Beams(leeRatio, count, 1 + leeRatio * (count - 1));
    }
  }

  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(pieces(FormulaLine.of("solid", Measure.squareFeet(face.solidIn2()))));
    lines.add(face.outline());
    lines.addAll(timber.lines());
    lines.add(
        FormulaLine.of("beams", Measure.ratio(beams.windwardCount()))
            .with("share", Measure.ratio(beams.leeRatio()))
            .with("count", Measure.count(beams.count())));
    lines.addAll(edge.linesIfAny());
    lines.add(
        edge.in(
            shared(FormulaLine.of("top", Measure.pounds(push.topLb())))
                .with("beams", Measure.ratio(beams.windwardCount()))
                .with("postCount", Measure.count(postCount))
                .with("at", Measure.inches(push.topAtIn()))));
    lines.add(
        shared(FormulaLine.of("spread", Measure.pounds(push.spreadLb())))
            .with("height", Measure.inches(push.heightIn())));
    return lines;
  }

  private FormulaLine shared(FormulaLine line) {
    return pieces(line)
        .with("force", Measure.pounds(timber.forceLb()))
        .with("solid", Measure.squareFeet(face.solidIn2()));
  }

  private FormulaLine pieces(FormulaLine line) {
    return line.with("crossbeams", Measure.squareFeet(face.beamsIn2()))
        .with("posts", Measure.squareFeet(face.onePostIn2()));
  }
}
