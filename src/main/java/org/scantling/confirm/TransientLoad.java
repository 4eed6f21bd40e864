package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.mechanics.SupportForces;

/**
 * The live load, snow or wind of one combination on one beam: what comes and goes. It is the same
 * for every size of beam that is tried. A long beam has hundreds and few of them work it hardest,
 * so they are added up only where the bounds of their parts do not settle it.
 */
final class TransientLoad {
  private final Lying lying;
  private final ContinuousBeam beam;
  private final List<Share> shares;

  /** A part of it, times a factor of 0 or more. */
  record Share(PartLoad part, double factor) {}

  TransientLoad(Lying lying, ContinuousBeam beam, List<Share> shares) {
    this.lying = lying;
    this.beam = beam;
    this.shares = shares;
  }

  Lying lying() {
    return lying;
  }

  LoadCombination combination() {
    return lying.combination();
  }

  BeamResult result() {
    return BeamResult.combine(results(), factors(0));
  }

  /** With what stays. */
  BeamResult with(BeamResult permanent) {
    return BeamResult.combine(after(permanent), factors(1));
  }

  SupportForces onSupportsWith(BeamResult permanent) {
    return BeamResult.combineOnSupports(after(permanent), factors(1));
  }

  private List<BeamResult> results() {
    return shares.stream().map(share -> share.part().result()).toList();
  }

  private List<BeamResult> after(BeamResult permanent) {
    List<BeamResult> all = new ArrayList<>(shares.size() + 1);
    all.add(permanent);
    shares.forEach(share -> all.add(share.part().result()));
    return all;
  }

  /** The factors of the shares, after that of what stays. */
  private double[] factors(int staying) {
    double[] factors = new double[staying + shares.size()];
    for (int i = 0; i < factors.length; i++) {
      factors[i] = i < staying ? 1 : shares.get(i - staying).factor();
    }
    return factors;
  }

  /** False where one person stands in for the live load; a person is checked for strength only. */
  boolean spread() {
    return lying.personAtIn().isEmpty();
  }

  /** No less than what it asks of the beam together with what stays. */
  BeamDemand demandAtMost(BeamDemand permanent) {
    BeamDemand most = permanent;
    for (Share share : shares) {
      most = most.and(share.part().demand(), share.factor());
    }
    return most;
  }

  /** No less than its sags. */
  Sags sagsAtMost() {
    Sags most = Sags.none(beam);
    for (Share share : shares) {
      most = most.and(share.part().sags(), share.factor());
    }
    return most;
  }

  Sags sags() {
    return Sags.of(result(), beam);
  }
}
