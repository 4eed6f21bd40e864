package org.scantling.workings;

import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;

import java.util.Optional;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.BeamAsk;
import org.scantling.confirm.BeamScene;
import org.scantling.confirm.BeamStory;
import org.scantling.confirm.Material;
import org.scantling.loads.LoadCombination;
import org.scantling.reasons.Question;

/** A crossbeam or a header: its loads, its timber, and the page on which it is told. */
final class BeamMember {
  private final CheckContext context;
  private final CalculationSteps steps;
  private final Question question;
  private final String page;
  private final BeamStory story;
  private final BeamBurden.Each each;

  private BeamMember(
      CheckContext context,
      CalculationSteps steps,
      Question question,
      String page,
      BeamStory story,
      BeamBurden.Each each) {
    this.context = context;
    this.steps = steps;
    this.question = question;
    this.page = page;
    this.story = story;
    this.each = each;
  }

  static BeamMember crossbeam(CheckContext context, CalculationSteps steps) {
    Material material = context.timber(CROSSBEAM_SIZE);
    return new BeamMember(
        context,
        steps,
        CROSSBEAM_SIZE,
        CROSSBEAM_SIZE.subject(),
        context.crossbeams().story(material),
        BeamLoadTrace.onCrossbeam(context));
  }

  static BeamMember header(CheckContext context, CalculationSteps steps) {
    Material material = context.timber(HEADER_SIZE);
    return new BeamMember(
        context,
        steps,
        HEADER_SIZE,
        HEADER_SIZE.subject(),
        context.headers().story(material),
        BeamLoadTrace.onHeader(context));
  }

  /**
   * The header as what it stands on carries it.
   *
   * @param page where it is told: that of the post or the footing
   */
  static BeamMember headerOnPosts(CheckContext context, CalculationSteps steps, String page) {
    Material material = context.timber(HEADER_SIZE);
    return new BeamMember(
        context,
        steps,
        HEADER_SIZE,
        page,
        context.headers().storyOnPosts(material),
        BeamLoadTrace.onPosts(context));
  }

  /** The arrangement of loads under which it is worked hardest; empty where nothing works it. */
  Optional<BeamScene> hardest(BeamAsk ask, LoadCombination combination) {
    return story.hardest(ask, combination);
  }

  CheckContext context() {
    return context;
  }

  CalculationSteps steps() {
    return steps;
  }

  Question question() {
    return question;
  }

  /** How its own steps and checks begin. */
  String name() {
    return question.subject();
  }

  String page() {
    return page;
  }

  /** Its loads before any factor. */
  BeamBurden.Each each() {
    return each;
  }

  Material material() {
    return story.material();
  }

  /** Of a header's loads, what is counted on the board that is told: all where it is one timber. */
  double boardShareRatio() {
    double bothLb = context.headers().eachCrossbeam().personLb();
    return onPosts() && bothLb > 0 ? each.personLb() / bothLb : 1;
  }

  boolean onPosts() {
    return question == HEADER_SIZE;
  }
}
