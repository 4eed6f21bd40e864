package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.design.Site;
import org.scantling.intake.Intake;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** What thumb and calculation say by themselves, held against what they say together. */
class ThumbTrialsTest {
  private final RuleBase rules = RuleBase.load();
  private final Tables tables = Tables.load();
  private final Engine engine = new Engine(rules, tables);

  private Map<Question, List<RuleNote>> thumbs() {
    Map<Question, List<RuleNote>> thumbs = new EnumMap<>(Question.class);
    thumbs.put(Question.CROSSBEAM_SIZE, notes("crossbeams.size.depth-to-span"));
    thumbs.put(Question.POST_SIZE, notes("posts.size.tall", "posts.size.spindly"));
    thumbs.put(Question.FOOTING_DEPTH, notes("footings.depth.least"));
    return thumbs;
  }

  private List<RuleNote> notes(String... ids) {
    return List.of(ids).stream().map(rules.notes()::get).toList();
  }

  @Test
  void the_answer_is_no_less_than_the_thumb_and_no_less_than_the_calculation() {
    compare(new Scenarios().everyThird(), 15);
  }

  @Tag("slow")
  @Test
  void the_answer_of_every_site_is_no_less_than_the_thumb_and_no_less_than_the_calculation() {
    compare(new Scenarios().sites(), 30);
  }

  private void compare(List<Intake> sites, int most) {
    int compared = 0;
    for (Intake intake : sites) {
      Proposal proposal = Scenarios.proposal(intake);
      for (ThumbTrial trial : engine.thumbs(intake.site(), thumbs())) {
        boolean imperial = tables.sizes().find(trial.thumb()).isPresent();
        if (proposal.proposed()
            && trial.question().attribute().equals("size")
            && imperial
            && !(doubled(proposal) && trial.question() == Question.CROSSBEAM_SIZE)) {
          compare(trial, proposal.decision(trial.question()).orElseThrow());
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(most);
  }

  /** The thumb is tried beside single crossbeams, which have to be larger than two of a pair. */
  private static boolean doubled(Proposal proposal) {
    return proposal
        .decision(Question.CROSSBEAMS_AT_POSTS)
        .filter(each -> each.proposed().equals(new Outcome.Word("doubled")))
        .isPresent();
  }

  private void compare(ThumbTrial trial, Decision decision) {
    int thumb = rank(trial.thumb());
    int calculated = rank(trial.calculated());
    int answer = rank(((Outcome.Word) decision.proposed()).text());
    assertThat(answer).as(trial.toString()).isGreaterThanOrEqualTo(Math.max(thumb, calculated));
    assertThat(trial.standing())
        .as(trial.toString())
        .isEqualTo(
            thumb == calculated
                ? Standing.EQUAL
                : thumb > calculated ? Standing.SAFER : Standing.NOT_ENOUGH);
    assertThat(trial.spoke() || thumb == smallest(trial)).as(trial.toString()).isTrue();
  }

  private int rank(String size) {
    return tables.size(size).rankCount();
  }

  private int smallest(ThumbTrial trial) {
    String market = tables.size(trial.thumb()).market();
    return tables.sizes(trial.question().subject(), market).get(0).rankCount();
  }

  @Test
  void a_depth_by_thumb_stands_beside_the_depth_that_is_worked_out() {
    Site site = new Scenarios().sites().get(0).site();
    ThumbTrial depth =
        engine.thumbs(site, thumbs()).stream()
            .filter(each -> each.question() == Question.FOOTING_DEPTH)
            .findFirst()
            .orElseThrow();
    assertThat(depth.thumb()).isEqualTo("2'-6\"");
    assertThat(depth.calculated()).isNotEqualTo("0\"");
  }
}
