package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;

/**
 * The metal base that holds a post upright on its pier: what it must be rated for, and what the
 * post does when it turns as much as that base may.
 */
public final class JointBaseChecks {
  private final PostChecks posts;
  private final Material post;
  private final JointRules rules;

  /**
   * @param posts on that base, held by the ground as it is dug
   */
  public JointBaseChecks(PostChecks posts, Material post, JointRules rules) {
    this.posts = posts;
    this.post = post;
    this.rules = rules;
  }

  /** Moment; moment, lift and side push together; weight; and every check of the post on it. */
  public List<Checked> of(JointFix.Rated rated) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    posts.onItsBase(post).forEach(force -> add(worst, force, rated));
    List<Checked> checks = new ArrayList<>(worst.list());
    checks.addAll(posts.of(post));
    return checks;
  }

  /**
   * The maker's values are for wind, but for the weight, which is for normal duration: less for
   * what lasts longer. What bends, lifts and pushes at once adds up along a straight line.
   */
  private void add(CheckEnvelope worst, BaseForce force, JointFix.Rated rated) {
    LoadCombination combination = force.combination();
    double duration = rules.limits().duration().of(combination);
    double lasting = Math.min(1, duration / rules.limits().duration().of(LoadCombination.UPLIFT));
    double momentInLb = rated.momentInLb() * lasting;
    worst.add("base", combination, new Check(force.momentInLb(), momentInLb), Unit.INCH_POUND);
    double together =
        force.momentInLb() / momentInLb
            + force.liftLb() / (rated.liftLb() * lasting)
            + force.sideLb() / (rated.sideLb() * lasting);
    worst.add("base-together", combination, new Check(together, 1), Unit.RATIO);
    double downLb = rated.downLb() * Math.min(1, duration);
    worst.add("base-weight", combination, new Check(force.downLb(), downLb), Unit.POUND);
  }
}
