package org.scantling.workings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.BeamAsk;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;

/**
 * How a crossbeam or a header is worked: for each check the loads that work it hardest, the statics
 * of the beam under them, the stress and what is allowed.
 */
final class BeamTrace {
  private final CheckContext context;
  private final BeamMember member;
  private final BeamStresses stresses;

  private BeamTrace(CheckContext context, BeamMember member) {
    this.context = context;
    this.member = member;
    this.stresses = new BeamStresses(member);
  }

  static BeamTrace crossbeam(CheckContext context, CalculationSteps steps) {
    return new BeamTrace(context, BeamMember.crossbeam(context, steps));
  }

  static BeamTrace header(CheckContext context, CalculationSteps steps) {
    return new BeamTrace(context, BeamMember.header(context, steps));
  }

  /** What the header presses on the post that carries most, told with the post or the footing. */
  static List<CalculationStep> onPost(CheckContext context, CalculationSteps steps, Checked check) {
    return borne(context, steps, check, BeamAsk.SUPPORT);
  }

  /** Where the wind lifts the header off its posts most, told with the footing. */
  static List<CalculationStep> liftsFoot(
      CheckContext context, CalculationSteps steps, Checked check) {
    return borne(context, steps, check, BeamAsk.LIFT);
  }

  private static List<CalculationStep> borne(
      CheckContext context, CalculationSteps steps, Checked check, BeamAsk ask) {
    BeamMember header = BeamMember.headerOnPosts(context, steps, check.role());
    return BeamTask.hardest(header, ask, check)
        .map(task -> new BeamPlaces(task, new BeamStresses(header)).carried(ask))
        .orElse(List.of());
  }

  List<CalculationStep> list() {
    Question question = member.question();
    List<Checked> checks = context.checks(question, context.answers().option(question));
    List<CalculationStep> list = new ArrayList<>();
    for (BeamAsk ask : BeamAsk.values()) {
      checks.stream()
          .filter(check -> check.id().equals(member.name() + "." + ask.check()))
          .max(Comparator.comparingDouble(check -> check.check().ratio()))
          .flatMap(check -> told(ask, check))
          .ifPresent(list::addAll);
    }
    return list;
  }

  private Optional<List<CalculationStep>> told(BeamAsk ask, Checked check) {
    return BeamTask.hardest(member, ask, check)
        .map(
            task ->
                switch (ask) {
                  case SAGGING -> new BeamPlaces(task, stresses).sagging();
                  case HOGGING -> new BeamPlaces(task, stresses).hogging();
                  case SHEAR -> new BeamPlaces(task, stresses).sheared();
                  case SEAT -> new BeamPlaces(task, stresses).pressed();
                  case SPAN_SAG -> new BeamSag(task, stresses).list();
                  case SUPPORT, LIFT -> List.of();
                });
  }
}
