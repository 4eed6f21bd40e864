package org.scantling.spans;

import java.util.List;
import java.util.function.DoubleFunction;
import org.scantling.confirm.EvenBeamChecks;
import org.scantling.confirm.Limits;
import org.scantling.confirm.Material;
import org.scantling.confirm.TopLoads;
import org.scantling.reasons.Checked;
import org.scantling.tables.Tables;

/**
 * The checks of one crossbeam or header for a clear span.
 *
 * @param stripIn width of the top that it carries
 */
record BeamTrial(
    Tables tables, Role role, Material material, double stripIn, Assumptions assumed, Limits limits)
    implements DoubleFunction<List<Checked>> {

  @Override
  public List<Checked> apply(double clearIn) {
    Assumptions.Beam held = assumed.beam();
    double spanIn = clearIn + held.supportIn();
    EvenBeamChecks.Beam beam =
        new EvenBeamChecks.Beam(
            role.member(),
            spanIn,
            held.spanCount(),
            held.notchIn(),
            held.supportIn(),
            held.heldAlong() ? 0 : spanIn);
    Material checked = held.apart() ? material.onePly() : material;
    EvenBeamChecks checks =
        new EvenBeamChecks(beam, load(), limits, id -> tables.check(id).source());
    return held.shearOneDepthAway() ? checks.shearedOneDepthAway(checked) : checks.of(checked);
  }

  private EvenBeamChecks.Load load() {
    return new EvenBeamChecks.Load(
        TopLoads.lbPerIn(assumed.loads().deadPsf(), stripIn),
        TopLoads.lbPerIn(assumed.loads().livePsf(), stripIn),
        assumed.loads().personLb());
  }
}
