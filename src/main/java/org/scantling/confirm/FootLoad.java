package org.scantling.confirm;

import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What stands on one foot in the combination that presses most.
 *
 * @param combination which
 * @param solved true where frames were solved for all of it, the post counted
 * @param reactionLb what the header hands the post
 * @param post weight of the post where it comes on top of that
 * @param loadLb all of it
 */
record FootLoad(
    LoadCombination combination, boolean solved, double reactionLb, PostWeight post, double loadLb)
    implements Calculated {
  static FootLoad of(HeaderChecks.PostLoad header, PostWeight post) {
    double loadLb = header.downLb() + post.weightLb();
    return new FootLoad(header.combination(), false, header.downLb(), post, loadLb);
  }

  static FootLoad solved(LoadCombination combination, double loadLb) {
    return new FootLoad(combination, true, loadLb, PostWeight.NONE, loadLb);
  }

  @Override
  public List<FormulaLine> lines() {
    return solved
        ? List.of()
        : List.of(
            FormulaLine.of("load", Measure.pounds(loadLb))
                .with("reaction", Measure.pounds(reactionLb))
                .with("post-weight", new Measure(post.ownLbPerIn(), Unit.POUND_PER_INCH))
                .with("height", Measure.inches(post.heightIn())));
  }
}
