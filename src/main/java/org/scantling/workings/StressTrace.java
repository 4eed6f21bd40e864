package org.scantling.workings;

import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.timber.AdjustedStress;
import org.scantling.timber.AdjustedValues;

/** What the members are allowed: tabulated values times every factor but that of the load. */
final class StressTrace {
  /** The load's own factor is told of each combination, beside its check. */
  private static final double LASTING = 1;

  private final CheckContext context;
  private final CalculationSteps steps;

  StressTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
  }

  List<CalculationStep> list() {
    AdjustedValues crossbeam = context.timber(CROSSBEAM_SIZE).lasting(LASTING);
    AdjustedValues header = context.timber(HEADER_SIZE).lasting(LASTING);
    AdjustedValues post = context.timber(POST_SIZE).lasting(LASTING);
    return List.of(
        step("stress.bending.crossbeam", crossbeam.bending()),
        step("stress.shear.crossbeam", crossbeam.shear()),
        step("stress.bearing.crossbeam", crossbeam.bearing()),
        step("stress.stiffness.crossbeam", crossbeam.elasticity()),
        step("stress.buckling.crossbeam", crossbeam.elasticityMinimum()),
        step("stress.bending.header", header.bending()),
        step("stress.shear.header", header.shear()),
        step("stress.bearing.header", header.bearing()),
        step("stress.stiffness.header", header.elasticity()),
        step("stress.buckling.header", header.elasticityMinimum()),
        step("stress.bending.post", post.bending()),
        step("stress.shear.post", post.shear()),
        step("stress.compression.post", post.compression()),
        step("stress.buckling.post", post.elasticityMinimum()),
        step("stress.stiffness.post", post.elasticity()));
  }

  private CalculationStep step(String id, AdjustedStress stress) {
    return steps.as(id, stress.lasting().lines().get(0), Evidence.none());
  }
}
