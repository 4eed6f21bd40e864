package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.concurrent.Lazy;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/**
 * A beam with its loads solved once, from which every combination for every candidate size follows
 * by addition.
 *
 * <p>Reactions, shears and moments of a beam of one size on firm supports do not depend on the
 * size.
 */
final class LoadedBeam {
  private final ContinuousBeam beam;
  private final BeamResult ownWeight;
  private final BeamResult dead;
  private final double deadFactor;
  private final BeamResult vines;
  private final TransientLoad liftedAtCorner;
  private final List<TransientLoad> passing;
  private final Lazy<Map<LoadCombination, Sags>> passingSags;

  LoadedBeam(ContinuousBeam beam, BeamLoads loads) {
    this.beam = beam;
    List<BeamResult> solved = beam.solve(cases(beam, loads));
    ownWeight = solved.get(0);
    dead = solved.get(1);
    vines = solved.get(2);
    TransientLoads passes = new TransientLoads(beam, loads, solved.subList(3, solved.size()));
    passing = passes.list();
    liftedAtCorner = passes.liftedAtCorner();
    deadFactor = 1;
    passingSags = new Lazy<>(this::sagsOfPassing);
  }

  private LoadedBeam(LoadedBeam one, double deadFactor) {
    this.beam = one.beam;
    this.ownWeight = one.ownWeight;
    this.dead = one.dead;
    this.deadFactor = deadFactor;
    this.vines = one.vines;
    this.liftedAtCorner = one.liftedAtCorner;
    this.passing = one.passing;
    this.passingSags = one.passingSags;
  }

  /**
   * The same beam, what it carries for good times a factor: of one size of crossbeam and another
   * only the weight differs, and all that comes and goes need not be added up again.
   */
  LoadedBeam withDeadTimes(double factor) {
    return new LoadedBeam(this, factor);
  }

  private static List<List<BeamLoad>> cases(ContinuousBeam beam, BeamLoads loads) {
    List<List<BeamLoad>> cases = new ArrayList<>();
    cases.add(List.of(beam.everywhere(1)));
    cases.add(loads.dead());
    cases.add(loads.vines());
    cases.addAll(TransientLoads.cases(loads));
    return cases;
  }

  ContinuousBeam beam() {
    return beam;
  }

  /** Under 1 lb on every inch of it. */
  BeamResult everywhere() {
    return ownWeight;
  }

  BeamResult vines() {
    return vines;
  }

  /** Every combination worth checking for a beam of that weight. */
  List<BeamCase> cases(double ownWeightLbPerIn) {
    BeamResult permanent = permanent(ownWeightLbPerIn);
    BeamResult lifted = lifted(ownWeightLbPerIn);
    List<BeamCase> cases = new ArrayList<>();
    for (TransientLoad each : passing) {
      cases.add(new BeamCase(lifts(each) ? lifted : permanent, each));
    }
    return cases;
  }

  /**
   * The most that each combination asks of a beam of that weight. What its permanent and its
   * passing load ask by themselves bounds what they ask together, so most cases need not be added
   * up.
   */
  Map<LoadCombination, BeamDemand> demands(double ownWeightLbPerIn) {
    Map<LoadCombination, BeamDemand> demands = new EnumMap<>(LoadCombination.class);
    Map<BeamResult, BeamDemand> permanents = new IdentityHashMap<>();
    for (BeamCase each : cases(ownWeightLbPerIn)) {
      BeamDemand permanent = permanents.computeIfAbsent(each.permanent(), this::demand);
      BeamDemand most = demands.get(each.combination());
      if (most == null || !each.passing().demandAtMost(permanent).within(most)) {
        demands.merge(each.combination(), demand(each.all()), BeamDemand::most);
      }
    }
    return demands;
  }

  /** The furthest that what comes and goes moves each span and the tips, by combination. */
  Map<LoadCombination, Sags> passingSags() {
    return passingSags.get();
  }

  private Map<LoadCombination, Sags> sagsOfPassing() {
    Map<LoadCombination, Sags> sags = new EnumMap<>(LoadCombination.class);
    for (TransientLoad each : passing) {
      Sags most = sags.get(each.combination());
      if (each.spread() && (most == null || !each.sagsAtMost().within(most))) {
        sags.merge(each.combination(), each.sags(), Sags::most);
      }
    }
    return sags;
  }

  /** What stays of a combination, on a beam of that weight. */
  BeamResult permanent(LoadCombination combination, double ownWeightLbPerIn) {
    return combination == LoadCombination.UPLIFT
        ? lifted(ownWeightLbPerIn)
        : permanent(ownWeightLbPerIn);
  }

  private BeamDemand demand(BeamResult result) {
    return BeamDemand.of(result, beam.cuts());
  }

  /** The beam lifted as hard as at a corner of the top, which its supports are held against. */
  BeamCase atCorner(double ownWeightLbPerIn) {
    return new BeamCase(lifted(ownWeightLbPerIn), liftedAtCorner);
  }

  /**
   * The same combinations, only what they do to the supports: lifted as hard as at a corner of the
   * top.
   */
  List<SupportCase> onSupports(double ownWeightLbPerIn) {
    BeamResult permanent = permanent(ownWeightLbPerIn);
    BeamResult lifted = lifted(ownWeightLbPerIn);
    List<SupportCase> cases = new ArrayList<>();
    for (TransientLoad each : passing) {
      BeamResult still = lifts(each) ? lifted : permanent;
      TransientLoad passes = lifts(each) ? liftedAtCorner : each;
      cases.add(new SupportCase(each.combination(), passes.onSupportsWith(still)));
    }
    return cases;
  }

  private BeamResult permanent(double ownWeightLbPerIn) {
    return BeamResult.combine(List.of(ownWeight, dead, vines), ownWeightLbPerIn, deadFactor, 1);
  }

  /** Vines hold the top down, so they are left out. */
  private BeamResult lifted(double ownWeightLbPerIn) {
    double share = LoadCombination.UPLIFT.factor(LoadKind.DEAD);
    return BeamResult.combine(
        List.of(ownWeight, dead), share * ownWeightLbPerIn, share * deadFactor);
  }

  private static boolean lifts(TransientLoad passing) {
    return passing.combination() == LoadCombination.UPLIFT;
  }
}
