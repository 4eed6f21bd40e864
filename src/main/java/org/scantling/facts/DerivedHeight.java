package org.scantling.facts;

import static org.scantling.reasons.Question.HEADROOM;
import static org.scantling.reasons.Question.POST_HEIGHT;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.design.Geometry;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;

/** How tall posts must be for the headroom, on ground that is level, in steps, or falls across. */
final class DerivedHeight {
  private final DesignProblem problem;
  private final Answers answers;
  private final Geometry geometry;

  DerivedHeight(DesignProblem problem, Answers answers, Geometry geometry) {
    this.problem = problem;
    this.answers = answers;
    this.geometry = geometry;
  }

  List<Fact> facts() {
    double stackIn = geometry.headroomIn() - geometry.posts().heightIn();
    double headroomIn = answers.number(HEADROOM);
    double fallIn = problem.fallIn(answers);
    double dropIn = problem.dropIn(answers);
    List<Fact> facts = new ArrayList<>();
    if (dropIn > 0) {
      facts.add(
          ByGeometry.worked(
              "row.drop", POST_HEIGHT, dropIn, Evidence.saw("drop", Measure.inches(dropIn))));
      facts.add(
          ByGeometry.worked(
              "post.height.across",
              POST_HEIGHT,
              headroomIn - stackIn + dropIn,
              Evidence.saw("headroom", Measure.inches(headroomIn))
                  .and("drop", Measure.inches(dropIn))));
    }
    facts.add(
        ByGeometry.worked(
            "post.height.headroom",
            POST_HEIGHT,
            headroomIn - stackIn,
            hanging(stackIn, Evidence.saw("headroom", Measure.inches(headroomIn)))
                .and("stack", Measure.inches(stackIn))));
    Evidence stepped =
        Evidence.saw("headroom", Measure.inches(headroomIn)).and("fall", Measure.inches(fallIn));
    facts.add(
        ByGeometry.worked(
            "post.height.stepped",
            POST_HEIGHT,
            headroomIn - stackIn + fallIn + dropIn,
            dropIn > 0 ? stepped.and("drop", Measure.inches(dropIn)) : stepped));
    facts.add(
        ByGeometry.worked(
            "post.height.stack",
            POST_HEIGHT,
            geometry.overallHeightIn() - geometry.posts().heightIn(),
            Evidence.none()));
    return facts;
  }

  /** Headers beside the posts hang down from their tops, and it is under them that one walks. */
  private static Evidence hanging(double stackIn, Evidence evidence) {
    return stackIn < 0 ? evidence.and("hang", Measure.inches(-stackIn)) : evidence;
  }
}
