package org.scantling.workings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.BeamAsk;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.mechanics.Peak;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.BeamDiagram;
import org.scantling.reasons.Checked;

/**
 * Shear and moment of a crossbeam and a header, each under the loads that work its check hardest;
 * of the two checks of bending the one that is nearer to its limit.
 */
public final class BeamDiagrams {
  /** A moment under an even load is a parabola, which so many chords show. */
  private static final int CHORDS = 6;

  private static final double NOTHING = 1e-6;

  private final CheckContext context;
  private final CalculationSteps steps;

  public BeamDiagrams(DesignProblem problem, Answers answers) {
    this.context = problem.context(answers).asDug();
    this.steps = new CalculationSteps(problem.tables());
  }

  public List<BeamDiagram> list() {
    List<BeamDiagram> list = new ArrayList<>();
    for (BeamMember member :
        List.of(BeamMember.crossbeam(context, steps), BeamMember.header(context, steps))) {
      hardest(member, List.of(BeamAsk.SHEAR))
          .ifPresent(task -> list.add(of(member, task, BeamDiagram.Kind.SHEAR)));
      hardest(member, List.of(BeamAsk.SAGGING, BeamAsk.HOGGING))
          .ifPresent(task -> list.add(of(member, task, BeamDiagram.Kind.MOMENT)));
    }
    return list;
  }

  private Optional<BeamTask> hardest(BeamMember member, List<BeamAsk> asks) {
    List<Checked> checks =
        context.checks(member.question(), context.answers().option(member.question()));
    return asks.stream()
        .flatMap(
            ask ->
                checks.stream()
                    .filter(each -> each.id().equals(member.name() + "." + ask.check()))
                    .map(each -> new Asked(ask, each)))
        .max(Comparator.comparingDouble(each -> each.check().check().ratio()))
        .flatMap(each -> BeamTask.hardest(member, each.ask(), each.check()));
  }

  private record Asked(BeamAsk ask, Checked check) {}

  private static BeamDiagram of(BeamMember member, BeamTask task, BeamDiagram.Kind kind) {
    ContinuousBeam beam = task.scene().beam();
    List<Double> supports = new ArrayList<>();
    for (int support = 0; support < beam.supportCount(); support++) {
      supports.add(beam.supportAtIn(support));
    }
    List<BeamDiagram.At> curve =
        kind == BeamDiagram.Kind.SHEAR ? shears(task.scene().all()) : moments(task.scene().all());
    return new BeamDiagram(
        member.name(),
        task.check(),
        task.combination().id(),
        kind,
        beam.lengthIn(),
        supports,
        beam.cuts().stream().map(beam::supportAtIn).toList(),
        curve,
        extremes(curve));
  }

  private static List<BeamDiagram.At> shears(BeamResult result) {
    List<BeamDiagram.At> curve = new ArrayList<>();
    double[] stations = result.stationsIn();
    double[] before = result.shearsBeforeLb();
    double[] after = result.shearsAfterLb();
    for (int i = 0; i < stations.length; i++) {
      curve.add(new BeamDiagram.At(stations[i], before[i]));
      curve.add(new BeamDiagram.At(stations[i], after[i]));
    }
    return curve;
  }

  /** With the places where it is most, which lie between stations. */
  private static List<BeamDiagram.At> moments(BeamResult result) {
    TreeSet<Double> places = new TreeSet<>();
    double[] stations = result.stationsIn();
    for (int i = 0; i + 1 < stations.length; i++) {
      for (int chord = 0; chord < CHORDS; chord++) {
        places.add(stations[i] + (stations[i + 1] - stations[i]) * chord / CHORDS);
      }
    }
    places.add(stations[stations.length - 1]);
    for (Peak peak : List.of(result.mostSagging(), result.mostHogging())) {
      places.add(peak.atIn());
    }
    return places.stream().map(atIn -> new BeamDiagram.At(atIn, result.momentInLb(atIn))).toList();
  }

  private static List<BeamDiagram.At> extremes(List<BeamDiagram.At> curve) {
    List<BeamDiagram.At> extremes = new ArrayList<>();
    Comparator<BeamDiagram.At> byAmount = Comparator.comparingDouble(BeamDiagram.At::amount);
    BeamDiagram.At most = curve.stream().max(byAmount).orElseThrow();
    BeamDiagram.At least = curve.stream().min(byAmount).orElseThrow();
    if (most.amount() > NOTHING) {
      extremes.add(most);
    }
    if (least.amount() < -NOTHING) {
      extremes.add(least);
    }
    return extremes;
  }
}
