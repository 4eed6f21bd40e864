package org.scantling.engine;

import static org.scantling.engine.BeamStatics.moment;
import static org.scantling.engine.WorkingSteps.pounds;
import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.scantling.confirm.BeamAsk;
import org.scantling.confirm.BeamScene;
import org.scantling.confirm.BeamStory;
import org.scantling.confirm.Material;
import org.scantling.engine.BeamBurden.Part;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.Peak;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Question;
import org.scantling.reasons.Working;

/**
 * How a crossbeam or a header is worked: for each check the loads that work it hardest, the statics
 * of the beam under them, the stress and what is allowed.
 */
final class BeamWorkings {
  private final Bench bench;
  private final WorkingSteps steps;
  private final Question question;
  private final String member;
  private final String page;
  private final BeamStory story;
  private final BeamBurden.Each each;
  private final BeamStresses stresses;

  private BeamWorkings(
      Bench bench,
      WorkingSteps steps,
      Question question,
      String page,
      BeamStory story,
      BeamBurden.Each each) {
    this.page = page;
    this.bench = bench;
    this.steps = steps;
    this.question = question;
    this.member = question.subject();
    this.story = story;
    this.each = each;
    this.stresses = new BeamStresses(bench, story.material());
  }

  /** What the header presses on the post that carries most, told with the post. */
  static List<Working> onPost(Bench bench, WorkingSteps steps, Checked check) {
    return borne(bench, steps, check, BeamAsk.SUPPORT);
  }

  /** The same, told with the footing. */
  static List<Working> onFoot(Bench bench, WorkingSteps steps, Checked check) {
    return borne(bench, steps, check, BeamAsk.SUPPORT);
  }

  /** Where the wind lifts the header off its posts most, told with the footing. */
  static List<Working> liftsFoot(Bench bench, WorkingSteps steps, Checked check) {
    return borne(bench, steps, check, BeamAsk.LIFT);
  }

  private static List<Working> borne(Bench bench, WorkingSteps steps, Checked check, BeamAsk ask) {
    Material material = bench.timber(HEADER_SIZE);
    BeamWorkings on =
        new BeamWorkings(
            bench,
            steps,
            HEADER_SIZE,
            check.role(),
            bench.headers().storyOnPosts(material),
            BeamLoadWorkings.onPosts(bench));
    return on.story
        .hardest(ask, LoadCombination.of(check.combination()))
        .map(scene -> on.carried(on.new Task(check.id(), scene), ask))
        .orElse(List.of());
  }

  static BeamWorkings crossbeam(Bench bench, WorkingSteps steps) {
    Material material = bench.timber(CROSSBEAM_SIZE);
    return new BeamWorkings(
        bench,
        steps,
        CROSSBEAM_SIZE,
        CROSSBEAM_SIZE.subject(),
        bench.crossbeams().story(material),
        BeamLoadWorkings.onCrossbeam(bench));
  }

  static BeamWorkings header(Bench bench, WorkingSteps steps) {
    Material material = bench.timber(HEADER_SIZE);
    return new BeamWorkings(
        bench,
        steps,
        HEADER_SIZE,
        HEADER_SIZE.subject(),
        bench.headers().story(material),
        BeamLoadWorkings.onHeader(bench));
  }

  List<Working> list() {
    List<Checked> checks = bench.checks(question, bench.answers().option(question));
    List<Working> list = new ArrayList<>();
    for (BeamAsk ask : BeamAsk.values()) {
      checks.stream()
          .filter(check -> check.id().equals(member + "." + ask.check()))
          .max(Comparator.comparingDouble(check -> check.check().ratio()))
          .flatMap(check -> told(ask, check))
          .ifPresent(list::addAll);
    }
    return list;
  }

  private Optional<List<Working>> told(BeamAsk ask, Checked check) {
    LoadCombination combination = LoadCombination.of(check.combination());
    return story
        .hardest(ask, combination)
        .map(
            scene -> {
              Task task = new Task(check.id(), scene);
              return switch (ask) {
                case SAGGING -> bent(task, scene.all().mostSagging(), 1);
                case HOGGING -> bent(task, scene.all().mostHogging(), -1);
                case SHEAR -> sheared(task);
                case SEAT -> pressed(task);
                case SPAN_SAG -> new BeamSag(task).list();
                case SUPPORT, LIFT, TAIL_SAG -> List.of();
              };
            });
  }

  /** One check under the arrangement of loads that works it hardest. */
  final class Task {
    private final String check;
    private final BeamScene scene;

    Task(String check, BeamScene scene) {
      this.check = check;
      this.scene = scene;
    }

    BeamScene scene() {
      return scene;
    }

    BeamStatics under(Part part) {
      return new BeamStatics(this, new BeamBurden(scene, part, each));
    }

    BeamStresses stresses() {
      return stresses;
    }

    boolean onPosts() {
      return question == HEADER_SIZE;
    }

    int spaces() {
      return bench.geometry().crossbeams().perBay();
    }

    double spacingIn() {
      return bench.geometry().crossbeamSpacingIn();
    }

    int crossbeamsOnTail() {
      return bench.geometry().crossbeamsOnTail();
    }

    /** A load as it is counted on this beam: by the inch, or of each crossbeam. */
    Measure load(double amount) {
      return onPosts() ? pounds(amount) : BeamStatics.perInch(amount);
    }

    /** One person, and how they lever where they stand on the tail of a crossbeam. */
    Evidence person(Evidence evidence) {
      Evidence with = evidence.and("person", pounds(bench.topLoads().personLb()));
      return onPosts()
          ? with.and("reach", Measure.inches(bench.geometry().crossbeamTailIn()))
              .and("rows", Measure.inches(bench.geometry().plan().rowSpacingIn()))
          : with;
    }

    /** A step of this member's own kind. */
    Working step(String what, Measure result, Evidence evidence) {
      return of(member + "." + what, result, evidence);
    }

    /** A step that crossbeams and headers have alike. */
    Working both(String what, Measure result, Evidence evidence) {
      return of("beam." + what, result, evidence);
    }

    private Working of(String id, Measure result, Evidence evidence) {
      Evidence all =
          evidence.and("member", page).and("check", check).and("combination", combination().id());
      boolean piece = onPosts() && scene.leftTailIn() == 0;
      return steps.of(
          id, result, piece ? all.and("pieces", Measure.count(scene.beam().spanCount())) : all);
    }

    LoadCombination combination() {
      return scene.lying().combination();
    }
  }

  /**
   * @param side 1 where the underside is pulled, -1 where the top is
   */
  private List<Working> bent(Task task, Peak peak, int side) {
    BeamScene scene = task.scene();
    BeamStatics statics = task.under(Part.ALL);
    int support = supportAt(scene, peak.atIn());
    int span = scene.spanOf(peak.atIn());
    if (support >= 0) {
      statics.moments(Set.of(support));
    } else if (span >= 0 && span < scene.beam().spanCount()) {
      statics.moments(Set.of(span, span + 1));
      statics.moment(span, peak.atIn() - scene.beam().supportAtIn(span));
    } else {
      return List.of();
    }
    List<Working> list = new ArrayList<>(statics.lines());
    list.addAll(stresses.bending(task, moment(side * peak.amount()), side < 0));
    return list;
  }

  private static int supportAt(BeamScene scene, double atIn) {
    for (int support = 0; support < scene.beam().supportCount(); support++) {
      if (Math.abs(scene.beam().supportAtIn(support) - atIn) < NEAR_IN) {
        return support;
      }
    }
    return -1;
  }

  private static final double NEAR_IN = 1e-6;

  private List<Working> sheared(Task task) {
    BeamScene scene = task.scene();
    int support = 0;
    int other = 0;
    double most = -1;
    for (int near = 0; near < scene.beam().supportCount(); near++) {
      for (int far : new int[] {near - 1, near + 1}) {
        double shearLb = Math.abs(task.under(Part.ALL).shear(near, far));
        if (shearLb > most + NEAR_IN) {
          most = shearLb;
          support = near;
          other = far;
        }
      }
    }
    BeamStatics statics = task.under(Part.ALL);
    statics.moments(ends(scene, support, other));
    statics.shear(support, other);
    List<Working> list = new ArrayList<>(statics.lines());
    list.addAll(stresses.shear(task, pounds(most)));
    return list;
  }

  private static Set<Integer> ends(BeamScene scene, int support, int other) {
    boolean tail = other < 0 || other >= scene.beam().supportCount();
    return tail ? Set.of() : Set.of(support, other);
  }

  private List<Working> pressed(Task task) {
    BeamStatics statics = task.under(Part.ALL);
    double reactionLb = borne(statics, task.scene(), 1);
    List<Working> list = new ArrayList<>(statics.lines());
    list.addAll(stresses.bearing(task, pounds(reactionLb)));
    return list;
  }

  private List<Working> carried(Task task, BeamAsk ask) {
    BeamStatics statics = task.under(Part.ALL);
    borne(statics, task.scene(), ask == BeamAsk.LIFT ? -1 : 1);
    return statics.lines();
  }

  /**
   * @param side 1 for the support that is pressed most, -1 for the one that is lifted most
   */
  private static double borne(BeamStatics statics, BeamScene scene, int side) {
    int most = 0;
    for (int support = 1; support < scene.beam().supportCount(); support++) {
      double moreLb = scene.all().reactionLb(support) - scene.all().reactionLb(most);
      if (side * moreLb > NEAR_IN) {
        most = support;
      }
    }
    statics.moments(about(scene, most));
    return statics.reaction(most);
  }

  private static Set<Integer> about(BeamScene scene, int support) {
    Set<Integer> about = new TreeSet<>();
    for (int each = support - 1; each <= support + 1; each++) {
      if (each >= 0 && each < scene.beam().supportCount()) {
        about.add(each);
      }
    }
    return about;
  }
}
