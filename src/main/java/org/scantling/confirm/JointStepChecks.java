package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;

/**
 * The end of a timber that hangs on the side of a post, where the top steps down and the upper
 * timber lies on that post: what the steel part that carries it must be rated for.
 */
public final class JointStepChecks {
  private final JointForces forces;
  private final JointRules rules;

  public JointStepChecks(JointForces forces, JointRules rules) {
    this.forces = forces;
    this.rules = rules;
  }

  /** Weight, and lift together with side push, each with its worst combination. */
  public List<Checked> of(JointFix fix) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    for (JointForce force : forces.onCutEnd()) {
      double duration = rules.limits().duration().of(force.combination());
      // The maker's value is for normal duration: less for what lasts longer, no more for wind.
      double downLb = fix.rated().downLb() * Math.min(1, duration);
      worst.add("step", force.combination(), new Check(force.downLb(), downLb), Unit.POUND);
      JointHold hold = new JointHold(fix.rated().liftLb(), fix.rated().sideLb(), List.of());
      worst.add("step-uplift", force.combination(), hold.together(force), Unit.POUND);
    }
    return worst.list();
  }
}
