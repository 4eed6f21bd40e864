package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.ground.PostGrip;
import org.scantling.ground.Uplift;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * A foot held down against what lifts it. Weight counts as the combination has it: 0.6 against the
 * wind, in full against a person.
 *
 * @param combination that lifts it
 * @param liftLb what the weight above has not held down already
 * @param post weight of the post
 * @param weighs post, concrete and soil
 * @param grip of tamped fill on the post; none in concrete
 */
public record HeldDown(
    LoadCombination combination,
    double liftLb,
    PostWeight post,
    Uplift weighs,
    Optional<PostGrip> grip)
    implements Calculated {
  double factor() {
    return combination.factor(LoadKind.DEAD);
  }

  double holdLb() {
    return factor() * weighs.weightLb() + grip.map(PostGrip::gripLb).orElse(0.0);
  }

  Check check() {
    return new Check(liftLb, holdLb());
  }

  /** Nothing where nothing lifts. */
  @Override
  public List<FormulaLine> lines() {
    if (!(liftLb > 0)) {
      return List.of();
    }
    List<FormulaLine> lines = new ArrayList<>(post.lines());
    FormulaLine hold =
        FormulaLine.of("hold", Measure.pounds(holdLb()))
            .with("lifted", Measure.pounds(liftLb))
            .with("factor", Measure.ratio(factor()))
            .with("post", Measure.pounds(post.weightLb()));
    if (grip.isPresent()) {
      lines.addAll(grip.get().lines());
      lines.add(hold.as("hold-grip").with("gripped", Measure.pounds(grip.get().gripLb())));
    } else {
      lines.addAll(weighs.concrete().lines());
      lines.add(hold.with("concrete", Measure.pounds(weighs.concreteLb())));
    }
    return lines;
  }
}
