package org.scantling.engine;

import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;

import java.util.Optional;
import org.scantling.confirm.BeamAsk;
import org.scantling.confirm.BeamStory;
import org.scantling.confirm.Material;
import org.scantling.loads.LoadCombination;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;

/** A crossbeam or a header: its loads, its timber, and the page on which it is told. */
final class BeamMember {
  private final Bench bench;
  private final WorkingSteps steps;
  private final Question question;
  private final String page;
  private final BeamStory story;
  private final BeamBurden.Each each;
  private final BeamStresses stresses;

  private BeamMember(
      Bench bench,
      WorkingSteps steps,
      Question question,
      String page,
      BeamStory story,
      BeamBurden.Each each) {
    this.bench = bench;
    this.steps = steps;
    this.question = question;
    this.page = page;
    this.story = story;
    this.each = each;
    this.stresses = new BeamStresses(bench, story.material());
  }

  static BeamMember crossbeam(Bench bench, WorkingSteps steps) {
    Material material = bench.timber(CROSSBEAM_SIZE);
    return new BeamMember(
        bench,
        steps,
        CROSSBEAM_SIZE,
        CROSSBEAM_SIZE.subject(),
        bench.crossbeams().story(material),
        BeamLoadWorkings.onCrossbeam(bench));
  }

  static BeamMember header(Bench bench, WorkingSteps steps) {
    Material material = bench.timber(HEADER_SIZE);
    return new BeamMember(
        bench,
        steps,
        HEADER_SIZE,
        HEADER_SIZE.subject(),
        bench.headers().story(material),
        BeamLoadWorkings.onHeader(bench));
  }

  /**
   * The header as what it stands on carries it.
   *
   * @param page where it is told: that of the post or the footing
   */
  static BeamMember headerOnPosts(Bench bench, WorkingSteps steps, String page) {
    Material material = bench.timber(HEADER_SIZE);
    return new BeamMember(
        bench,
        steps,
        HEADER_SIZE,
        page,
        bench.headers().storyOnPosts(material),
        BeamLoadWorkings.onPosts(bench));
  }

  /** A check under the loads that work it hardest; empty where nothing works it. */
  Optional<BeamTask> hardest(BeamAsk ask, Checked check) {
    return story
        .hardest(ask, LoadCombination.of(check.combination()))
        .map(scene -> new BeamTask(this, check.id(), scene));
  }

  Bench bench() {
    return bench;
  }

  WorkingSteps steps() {
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

  BeamStresses stresses() {
    return stresses;
  }

  /** Of a header's loads, what is counted on the board that is told: all where it is one timber. */
  double boardShareRatio() {
    double bothLb = bench.headers().eachCrossbeam().personLb();
    return onPosts() && bothLb > 0 ? each.personLb() / bothLb : 1;
  }

  boolean onPosts() {
    return question == HEADER_SIZE;
  }
}
