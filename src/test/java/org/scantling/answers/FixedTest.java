package org.scantling.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.ValidationError;
import org.scantling.engine.Engine;
import org.scantling.problem.DesignProblem;
import org.scantling.property.House;
import org.scantling.property.Wish;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Question;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;

class FixedTest {
  private static final Engine ENGINE = new Engine(House.RULES, House.TABLES);
  private static final List<String> NONE = List.of();

  @Test
  void a_design_fixes_the_structure_and_nothing_that_only_the_site_can_say() {
    DesignProblem problem =
        new DesignProblem(
            Wish.plain().over(House.roseGate()),
            House.TABLES,
            new ResultCache(ResultCache.Retention.ONE_RUN));
    DesignProblem fixed = problem.withDesign(House.roseGate());
    assertThat(fixed.fixed().any()).isTrue();
    assertThat(fixed.fixed().has(Question.POST_SIZE)).isTrue();
    assertThat(fixed.fixed().has(Question.CLEAR_WIDTH)).isTrue();
    assertThat(fixed.fixed().has(Question.GROUND_SNOW)).isFalse();
    assertThat(fixed.fixed().has(Question.VINE)).isFalse();
    assertThat(fixed.fixed().has(Question.CROSSBEAM_JOINT)).isFalse();
    assertThat(fixed.bayCounts()).containsExactly(1);
    assertThat(problem.fixed().any()).isFalse();
    assertThat(problem.fixed(Question.POST_SIZE, problem.start(List.of()))).isEmpty();
  }

  @Test
  void where_the_top_is_stepped_the_fall_of_a_bay_is_lost_from_the_headroom() {
    DesignProblem problem =
        new DesignProblem(
                Wish.plain().over(House.roseGate()),
                House.TABLES,
                new ResultCache(ResultCache.Retention.ONE_RUN))
            .withDesign(House.roseGate());
    Answers level = problem.start(List.of()).with(Answer.option(Question.TOP_LINE, "level"));
    Answers stepped = problem.start(List.of()).with(Answer.option(Question.TOP_LINE, "stepped"));
    // Posts of 83 in and a header of 5.5 in, less a seat of 0.75 in at each.
    assertThat(headroom(problem, level)).isEqualTo(87);
    assertThat(headroom(problem, stepped)).isEqualTo(82.5);
    assertThat(headroom(problem, problem.start(List.of()))).isEqualTo(87);
  }

  @Test
  void a_pier_of_no_depth_is_left_to_the_rules() {
    BaseDesign onBrackets = standing("bracket", 0);
    Review review = ENGINE.check(site("bracket"), onBrackets, NONE, NONE);
    assertThat(review.decision(Question.FOOTING_DEPTH)).isPresent();
    assertThat(ENGINE.validationErrors(onBrackets, site("bracket"))).isEmpty();
    assertThat(ENGINE.validationErrors(standing("embedded", 0), site("auto")))
        .extracting("field")
        .containsExactly("posts.embedment");
  }

  @Test
  void crossbeams_are_doubled_at_posts_on_brackets_with_braces_and_as_thin_as_their_post() {
    assertThat(ENGINE.validationErrors(doubled("2x6", "bracket", true), site("bracket"))).isEmpty();
    assertThat(ENGINE.validationErrors(doubled("2x6", "bracket", false), site("bracket")))
        .extracting(ValidationError::field, ValidationError::found, ValidationError::accepted)
        .containsExactly(
            tuple(
                "crossbeams.at-posts",
                "doubled",
                "single, or left out, where no knee braces hold posts on brackets"));
    assertThat(ENGINE.validationErrors(doubled("4x6", "bracket", true), site("bracket")))
        .extracting(ValidationError::accepted)
        .containsExactly("single where two 4x6 side by side are broader than the post under them");
  }

  private static BaseDesign doubled(String size, String footing, boolean braced) {
    BaseDesign gate = standing(footing, 0);
    BaseDesign.Crossbeams one = gate.crossbeams();
    return new BaseDesign(
        gate.title(),
        gate.proven(),
        gate.posts(),
        gate.headers(),
        new BaseDesign.Crossbeams(
            size, one.count(), one.overhangIn(), one.notchIn(), one.endCut(), "doubled"),
        gate.sidePanels(),
        braced ? Optional.of(new BaseDesign.Braces("4x4", 16)) : Optional.empty());
  }

  @Test
  void sides_and_braces_that_the_file_does_not_speak_of_are_those_of_the_base() {
    BaseDesign sketch =
        new BaseDesign(
            "Sketch",
            Optional.empty(),
            House.roseGate().posts(),
            House.roseGate().headers(),
            House.roseGate().crossbeams(),
            Optional.empty(),
            Optional.empty());
    Review unsaid = ENGINE.check(site("auto"), sketch, List.of("side-panels"), NONE);
    Review none = ENGINE.check(site("auto"), sketch, NONE, NONE);
    assertThat(unsaid.checks()).extracting("id").contains("post.rail-notch");
    assertThat(none.checks()).extracting("id").doesNotContain("post.rail-notch");
  }

  @Test
  void crossbeams_that_do_not_divide_evenly_are_laid_out_and_told() {
    BaseDesign gate = House.roseGate();
    // 34 in at 11 1/3 in apart leaves room for four and none on the tails of 9 in.
    BaseDesign five =
        new BaseDesign(
            gate.title(),
            gate.proven(),
            gate.posts(),
            gate.headers(),
            new BaseDesign.Crossbeams("2x6", 5, 13, 0.75, Optional.empty()),
            gate.sidePanels(),
            gate.braces());
    Review review = ENGINE.check(site("auto"), five, NONE, NONE);
    assertThat(review.limits(Shortfall.Kind.TAKEN_OTHERWISE))
        .extracting(Shortfall::question)
        .containsExactly(Question.CROSSBEAM_COUNT);
    assertThat(review.passes()).isTrue();
  }

  @Test
  void no_joint_that_holds_is_a_failing_check_and_not_a_refusal() {
    Site stormy =
        Wish.plain()
            .length(45)
            .climate(new Wish.Climate(36, 25, 140, "D"))
            .vine("wisteria")
            .choices(new Wish.Choices("bracket", "auto", "code", "I", "open"))
            .over(House.roseGate());
    Review review = ENGINE.check(stormy, standing("bracket", 36), NONE, NONE);
    assertThat(review.refusal()).isEmpty();
    assertThat(review.failing()).extracting("id").contains("brace.joint");
    assertThat(review.limits()).noneMatch(each -> each.question().id().startsWith("joint."));
  }

  @Test
  void a_base_on_brackets_with_rails_is_proposed_and_keeps_its_record() {
    Site site = site("bracket", standing("bracket", 36));
    assertThat(ENGINE.propose(site, NONE).checkLimits().record()).isPresent();
  }

  private static double headroom(DesignProblem problem, Answers answers) {
    return problem
        .fixed()
        .answer(Question.HEADROOM, answers, 4.5, 0)
        .map(Answer::number)
        .orElseThrow();
  }

  private static Site site(String footing) {
    return site(footing, House.roseGate());
  }

  private static Site site(String footing, BaseDesign base) {
    return Wish.plain()
        .length(34)
        .climate(new Wish.Climate(30, 25, 105, "B"))
        .vine("climbing-rose")
        .choices(new Wish.Choices(footing, "auto", "code", "I", "open"))
        .over(base);
  }

  private static BaseDesign standing(String footing, double embedmentIn) {
    BaseDesign gate = House.roseGate();
    return new BaseDesign(
        gate.title(),
        gate.proven(),
        new BaseDesign.Posts(
            "4x4", 60, 45, 1, 82, embedmentIn, footing, Optional.empty(), OptionalDouble.empty()),
        gate.headers(),
        gate.crossbeams(),
        gate.sidePanels(),
        Optional.of(new BaseDesign.Braces("4x4", 11)));
  }
}
