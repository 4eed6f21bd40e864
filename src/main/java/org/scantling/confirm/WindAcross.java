package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.FoliageWind;
import org.scantling.loads.SideWind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * Wind square to the walk, as it comes to the hardest-pressed post.
 *
 * @param face the part of a side that leans on it
 * @param timber wind on the timber of that
 * @param leaves wind on what climbs between the timbers
 * @param edge wind on the edge of what lies on the top
 * @param push all of it on the post
 */
public record WindAcross(
    WindFace face, SideWind timber, FoliageWind leaves, LeafyEdge edge, SidePush push)
    implements Calculated {
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(pieces(FormulaLine.of("solid", Measure.squareFeet(face.solidIn2()))));
    lines.add(face.outline());
    lines.addAll(timber.lines());
    lines.addAll(leaves.lines());
    lines.addAll(edge.linesIfAny());
    FormulaLine top = shared(FormulaLine.of("top", Measure.pounds(push.topLb())));
    lines.add(edge.in(top.with("at", Measure.inches(push.topAtIn()))));
    lines.add(
        shared(FormulaLine.of("spread", Measure.pounds(push.spreadLb())))
            .with("leaves", Measure.pounds(leaves.worstLb()))
            .with("height", Measure.inches(push.heightIn())));
    return lines;
  }

  private FormulaLine shared(FormulaLine line) {
    return pieces(line)
        .with("force", Measure.pounds(timber.forceLb()))
        .with("solid", Measure.squareFeet(face.solidIn2()));
  }

  private FormulaLine pieces(FormulaLine line) {
    return line.with("headers", Measure.squareFeet(face.beamsIn2()))
        .with("ends", Measure.squareFeet(face.endsIn2()))
        .with("posts", Measure.squareFeet(face.postsIn2()))
        .with("rails", Measure.squareFeet(face.railsIn2()))
        .with("pickets", Measure.squareFeet(face.picketsIn2()))
        .with("share", Measure.ratio(face.picketTopRatio()));
  }
}
