package org.scantling.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.confirm.BeamAsk;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;
import org.scantling.reasons.Working;

/**
 * How a crossbeam or a header is worked: for each check the loads that work it hardest, the statics
 * of the beam under them, the stress and what is allowed.
 */
final class BeamWorkings {
  private final Bench bench;
  private final BeamMember member;

  private BeamWorkings(Bench bench, BeamMember member) {
    this.bench = bench;
    this.member = member;
  }

  static BeamWorkings crossbeam(Bench bench, WorkingSteps steps) {
    return new BeamWorkings(bench, BeamMember.crossbeam(bench, steps));
  }

  static BeamWorkings header(Bench bench, WorkingSteps steps) {
    return new BeamWorkings(bench, BeamMember.header(bench, steps));
  }

  /** What the header presses on the post that carries most, told with the post or the footing. */
  static List<Working> onPost(Bench bench, WorkingSteps steps, Checked check) {
    return borne(bench, steps, check, BeamAsk.SUPPORT);
  }

  /** Where the wind lifts the header off its posts most, told with the footing. */
  static List<Working> liftsFoot(Bench bench, WorkingSteps steps, Checked check) {
    return borne(bench, steps, check, BeamAsk.LIFT);
  }

  private static List<Working> borne(Bench bench, WorkingSteps steps, Checked check, BeamAsk ask) {
    return BeamMember.headerOnPosts(bench, steps, check.role())
        .hardest(ask, check)
        .map(task -> new BeamPlaces(task).carried(ask))
        .orElse(List.of());
  }

  List<Working> list() {
    Question question = member.question();
    List<Checked> checks = bench.checks(question, bench.answers().option(question));
    List<Working> list = new ArrayList<>();
    for (BeamAsk ask : BeamAsk.values()) {
      checks.stream()
          .filter(check -> check.id().equals(member.name() + "." + ask.check()))
          .max(Comparator.comparingDouble(check -> check.check().ratio()))
          .flatMap(check -> told(ask, check))
          .ifPresent(list::addAll);
    }
    return list;
  }

  private Optional<List<Working>> told(BeamAsk ask, Checked check) {
    return member
        .hardest(ask, check)
        .map(
            task ->
                switch (ask) {
                  case SAGGING -> new BeamPlaces(task).sagging();
                  case HOGGING -> new BeamPlaces(task).hogging();
                  case SHEAR -> new BeamPlaces(task).sheared();
                  case SEAT -> new BeamPlaces(task).pressed();
                  case SPAN_SAG -> new BeamSag(task).list();
                  case SUPPORT, LIFT -> List.of();
                });
  }
}
