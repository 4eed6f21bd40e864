package org.scantling.confirm;

import java.util.List;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.mechanics.BeamResult;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.BiaxialBending;
import org.scantling.timber.Factor;
import org.scantling.timber.Rectangle;

/**
 * What wind on its face does to a crossbeam the narrow way: it bows sideways between its seats and
 * at its tails, and is bent both ways at once. Its seats hold it sideways as they hold it up.
 */
final class SidewaysChecks {
  private final LoadedBeam loaded;
  private final BeamChecks.Seating seating;
  private final Limits limits;
  private final Function<String, Source> sources;

  SidewaysChecks(
      LoadedBeam loaded,
      BeamChecks.Seating seating,
      Limits limits,
      Function<String, Source> sources) {
    this.loaded = loaded;
    this.seating = seating;
    this.limits = limits;
    this.sources = sources;
  }

  List<Checked> of(Material material, SideBlow blow) {
    CheckEnvelope worst = new CheckEnvelope(seating.role(), limits, sources);
    sag(worst, material, blow);
    loaded
        .demands(material.weightLbPerIn())
        .forEach(
            (combination, demand) -> {
              if (combination.factor(LoadKind.WIND) > 0) {
                bothWays(worst, combination, demand, material, blow);
              }
            });
    return worst.list();
  }

  /** Wind comes and goes, so nothing creeps; the share of the span is that of the deep way. */
  private void sag(CheckEnvelope worst, Material material, SideBlow blow) {
    LoadCombination windy = LoadCombination.DEAD_WIND;
    double stiffness =
        material.lasting(1).elasticity().psi() * material.whole().turned().secondMomentIn4();
    double unit = windy.factor(LoadKind.WIND) * blow.lbPerIn() / stiffness;
    Sags sags = Sags.of(loaded.everywhere(), loaded.beam());
    for (int span = 0; span < loaded.beam().spanCount(); span++) {
      double spanIn = loaded.beam().supportAtIn(span + 1) - loaded.beam().supportAtIn(span);
      worst.addLasting("lateral-sag", windy, against(unit * sags.span(span), spanIn), Unit.INCH);
    }
    if (seating.tailIn() > 0) {
      // Twice a tail's length counts as span.
      Check tip = against(unit * sags.tip(), 2 * seating.tailIn());
      worst.addLasting("lateral-sag", windy, tip, Unit.INCH);
    }
  }

  private Check against(double sagIn, double spanIn) {
    return new Check(sagIn, spanIn / limits.totalDeflectionDivisor());
  }

  private void bothWays(
      CheckEnvelope worst,
      LoadCombination combination,
      BeamDemand demand,
      Material material,
      SideBlow blow) {
    AdjustedValues values = material.lasting(limits.duration().of(combination));
    double sideLbPerIn = combination.factor(LoadKind.WIND) * blow.lbPerIn();
    BeamResult side = loaded.everywhere();
    Rectangle whole = material.whole();
    Bent span = new Bent(demand.saggingInLb(), sideLbPerIn * side.mostSagging().amount(), whole);
    Bent seat =
        new Bent(
            demand.hoggingInLb(),
            sideLbPerIn * side.mostHogging().amount(),
            whole.notched(seating.notchIn()));
    for (Bent one : List.of(span, seat)) {
      Check check = one.check(values, stability(material, values), blow.flatUseFactor());
      worst.add("biaxial", combination, check, Unit.RATIO);
    }
  }

  private BeamStability stability(Material material, AdjustedValues values) {
    Rectangle ply = material.section();
    double lengthIn = BeamLoading.UNIFORM.effectiveLengthIn(seating.unbracedIn(), ply.depthIn());
    return BeamStability.of(ply, lengthIn, values);
  }

  /** One place of the beam, bent both ways. */
  private record Bent(double deepInLb, double narrowInLb, Rectangle section) {
    Check check(AdjustedValues values, BeamStability stability, double flatUseFactor) {
      Bending edgewise = Bending.of(deepInLb, section, values, stability);
      Bending flatwise =
          Bending.of(
              narrowInLb,
              section.turned(),
              values.bendingStar().with(new Factor("C_fu", flatUseFactor)));
      return BiaxialBending.of(edgewise, flatwise, stability).check();
    }
  }
}
