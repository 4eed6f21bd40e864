package org.scantling.workings;

import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.PostScene;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Calculated;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/** Pressure and bending of a post together: each quantity of the interaction, then the sum. */
final class PostTrace {
  private static final String CHECK = "post.combined";

  private final CheckContext context;
  private final CalculationSteps steps;

  PostTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
  }

  /** Of a post that the ground holds. */
  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    check(context, CHECK).ifPresent(check -> add(list, check));
    return list;
  }

  /** A check of the post as it was answered. */
  static Optional<Checked> check(CheckContext context, String id) {
    return context.checks(POST_SIZE, context.answers().option(POST_SIZE)).stream()
        .filter(each -> each.id().equals(id))
        .findFirst();
  }

  private void add(List<CalculationStep> list, Checked check) {
    context
        .posts()
        .heldBy(context.ground())
        .hardest(context.timber(POST_SIZE), LoadCombination.of(check.combination()))
        .ifPresent(
            scene -> {
              list.addAll(BeamTrace.onPost(context, steps, check));
              list.addAll(lines(scene.pressed(), scene));
              list.addAll(
                  steps.of(
                      "post.combined.",
                      scene.moment().lines(),
                      about(scene).and("way", way(scene))));
              list.addAll(interaction(scene));
            });
  }

  static String way(PostScene scene) {
    return scene.along() ? "along" : "across";
  }

  /** From load and moments to the sum. */
  List<CalculationStep> interaction(PostScene scene) {
    return lines(scene, scene);
  }

  private List<CalculationStep> lines(Calculated told, PostScene scene) {
    return steps.of("post.combined.", told.lines(), about(scene));
  }

  private static Evidence about(PostScene scene) {
    return Evidence.saw("check", CHECK).and("combination", scene.combination().id());
  }
}
