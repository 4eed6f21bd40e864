package org.scantling.engine;

import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.rulebase.Fired;

/** Findings of rules that never were, for the resolvers to weigh. */
public final class SampleFindings {
  private static final Source SOURCE =
      new Source(SourceKind.COMMON_PRACTICE, "common practice, no source", false);

  private SampleFindings() {}

  static Fired atLeast(Question question, String rule, double number) {
    return fired(rule, Finding.atLeast(question, number, Evidence.none()));
  }

  static Fired atMost(Question question, String rule, double number) {
    return fired(rule, Finding.atMost(question, number, Evidence.none()));
  }

  public static Fired prefer(Question question, String rule, Priority priority, double number) {
    return fired(rule, new Finding.PreferNumber(question, priority, number, Evidence.none()));
  }

  public static Fired prefer(Question question, String rule, Priority priority, String option) {
    return fired(rule, new Finding.PreferOption(question, priority, option, Evidence.none()));
  }

  public static Fired reject(Question question, String rule, String option, double ratio) {
    return fired(rule, new Finding.Reject(question, option, rule, ratio, Evidence.none()));
  }

  /** A stop of a worked check, which tells what is asked and what there is. */
  static Fired fails(Question question, String rule, String option, double ratio) {
    Evidence worked =
        Evidence.saw("demand", Measure.ratio(ratio)).and("capacity", Measure.ratio(1));
    return fired(rule, new Finding.Reject(question, option, rule, ratio, worked));
  }

  static List<String> rules(List<Reason> reasons) {
    return reasons.stream().map(each -> each.note().id()).toList();
  }

  private static Fired fired(String rule, Finding finding) {
    RuleNote note = new RuleNote(rule, Phase.POSTS, "a/rule", SOURCE);
    return new Fired(finding, note, List.of("what " + rule + " read"));
  }
}
