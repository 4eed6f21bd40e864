package org.scantling.confirm;

import java.util.List;
import java.util.function.Function;
import org.scantling.ground.EmbeddedPost;
import org.scantling.ground.LateralLoad;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Shear;

/**
 * Shear and bending in a post that the ground holds upright.
 *
 * <p>In tamped fill the soil pushes back above the point about which the post turns and the other
 * way below it, so that the post is bent hardest some way down and sheared several times harder
 * there than by the push at the ground. The depth taken is the one that the push itself asks for: a
 * hole that frost makes deeper shears less. In a collar of concrete the soil leans on the collar,
 * and the push at the ground is all that shears and bends the post.
 */
public final class PostInGround implements Ground {
  private final FootingWork.Foot foot;
  private final PostChecks.Standing standing;
  private final double depthIn;
  private final double dugIn;
  private final Limits limits;
  private final Function<String, Source> sources;

  /**
   * @param dugIn depth of the hole, in which the foot turns
   */
  public PostInGround(
      FootingWork.Foot foot,
      PostChecks.Standing standing,
      double dugIn,
      Limits limits,
      Function<String, Source> sources) {
    this.foot = foot;
    this.standing = standing;
    this.dugIn = dugIn;
    this.depthIn = foot.concrete() ? 0 : neededIn(foot, standing);
    this.limits = limits;
    this.sources = sources;
  }

  /** Depth of the hole, in which the foot turns. */
  public double dugIn() {
    return dugIn;
  }

  private static double neededIn(FootingWork.Foot foot, PostChecks.Standing standing) {
    return FootingWork.sideways(foot, standing).embedment(foot.postBreadthIn()).depthIn();
  }

  /** Most bending below the ground over that at the ground; 1 where nothing grows down there. */
  @Override
  public double bendingRatio(SidePush push) {
    LateralLoad load = new LateralLoad(push.forceLb(), push.resultantIn());
    return depthIn > 0 && load.momentInLb() > 0
        ? new EmbeddedPost(load, depthIn).greatestMomentInLb() / load.momentInLb()
        : 1;
  }

  /** How far the top moves because the foot turns in its hole; not at all on rock. */
  @Override
  public double turnIn(SidePush push, double windFactor) {
    LateralLoad load = new LateralLoad(windFactor * push.forceLb(), push.resultantIn());
    return foot.turnIn(load, dugIn, push.heightIn());
  }

  /** The shear of that stock size, with its worst combination. */
  public List<Checked> of(Material material) {
    CheckEnvelope worst = new CheckEnvelope("post", limits, sources);
    for (LoadCombination combination : LoadCombination.values()) {
      AdjustedValues values = material.lasting(limits.duration().of(combination));
      double shearLb =
          standing.pushes().stream()
              .mapToDouble(push -> shearLb(push, combination))
              .max()
              .orElseThrow();
      worst.add(
          "shear",
          combination,
          Shear.of(shearLb, material.section(), values.shear()).check(),
          Unit.PSI);
    }
    return worst.list();
  }

  /** By the push alone where the depth is 0: in concrete, or where nothing pushes. */
  private double shearLb(SidePush push, LoadCombination combination) {
    double forceLb = combination.factor(LoadKind.WIND) * push.forceLb();
    LateralLoad load = new LateralLoad(forceLb, push.resultantIn());
    return depthIn > 0 ? new EmbeddedPost(load, depthIn).greatestShearLb() : forceLb;
  }
}
