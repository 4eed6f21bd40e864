package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.design.Geometry;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Worked;

/** What follows for braces, rails and pickets at the sides of the walk. */
final class DerivedSides {
  private final DesignProblem problem;
  private final CheckContext context;
  private final Answers answers;

  DerivedSides(DesignProblem problem, CheckContext context) {
    this.problem = problem;
    this.context = context;
    this.answers = context.answers();
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>(problem.tables().checks().rows());
    facts.addAll(new BraceRoom(context).facts());
    if (problem.railed()) {
      facts.add(railRoom());
      facts.add(housedFaces());
    }
    problem
        .site()
        .base()
        .sidePanels()
        .ifPresent(
            panels -> {
              double gapIn = problem.site().base().posts().bayIn() / (panels.pickets() + 1);
              double bayIn = answers.number(BAY);
              int count = (int) Math.max(0, Math.ceil(bayIn / gapIn - 1e-9) - 1);
              facts.add(
                  ByGeometry.worked(
                      "picket.count",
                      PICKETS,
                      count,
                      Evidence.saw("gap", Measure.inches(gapIn))
                          .and("bay", Measure.inches(bayIn))));
            });
    return facts;
  }

  /** The height at which a rail leaves just so much free below the header, on the lower side. */
  private Worked railRoom() {
    Geometry geometry = context.geometry();
    double underIn =
        geometry.headers().paired()
            ? geometry.posts().heightIn() - geometry.headers().depthIn()
            : geometry.posts().heightIn();
    double freeIn = problem.tables().thumb("rail.room-least").amount();
    double railIn = problem.stock().row(answers.option(RAIL_SIZE)).widthIn();
    double roomIn =
        underIn - freeIn - railIn / 2 - problem.fallIn(answers) - problem.dropIn(answers);
    return ByGeometry.worked(
        "rail.height-room",
        RAIL_HEIGHT,
        Math.max(0, roomIn),
        Evidence.saw("free", Measure.inches(freeIn))
            .and("under", Measure.inches(underIn))
            .and("rail", Measure.inches(railIn)));
  }

  /** A post between two bays has a rail on either side. */
  private Worked housedFaces() {
    int faces = Integer.parseInt(answers.option(BAYS)) > 1 ? 2 : 1;
    return ByGeometry.worked("post.housed-faces", RAIL_NOTCH, faces, Evidence.none());
  }
}
