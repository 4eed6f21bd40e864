package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.PostInGround;
import org.scantling.confirm.SidePush;
import org.scantling.design.Site;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;
import org.scantling.reasons.Working;
import org.scantling.tables.ExposureRow;
import org.scantling.tables.SizeRow;
import org.scantling.timber.Rectangle;

/**
 * How the loads behind the checks of the finished answers were worked, and what the timber is
 * allowed, for going over by hand.
 */
final class LoadWorkings {
  private final Job job;
  private final Bench bench;
  private final WorkingSteps steps;

  LoadWorkings(Job job, Answers answers) {
    this.job = job;
    this.bench = job.bench(answers).asDug();
    this.steps = new WorkingSteps(job.tables());
  }

  List<Working> list() {
    LoadWorks loads = new LoadWorks(job, bench.answers(), bench.geometry());
    List<Working> list = new ArrayList<>();
    Site.Climate climate = job.site().climate();
    climate
        .weather()
        .snow()
        .map(snow -> new GivenSnowWorks(job.tables(), snow).workings(steps))
        .ifPresent(list::addAll);
    list.addAll(new GivenWindWorks(job.tables(), climate).workings(steps));
    list.add(step(loads.flatSnow()));
    list.add(heightFactor());
    loads.hillWind().map(LoadWorkings::factor).ifPresent(list::add);
    list.add(step(loads.wind()));
    SideWorkings across = SideWorkings.across(bench, steps);
    SideWorkings along = SideWorkings.along(bench, steps);
    list.addAll(across.list());
    list.addAll(along.list());
    if (!bench.onBrackets()) {
      list.addAll(post());
    }
    list.addAll(new TopWorkings(bench, steps).list());
    list.addAll(new BeamLoadWorkings(bench, steps).list());
    list.addAll(new StressWorkings(bench, steps).list());
    list.addAll(BeamWorkings.crossbeam(bench, steps).list());
    list.addAll(BeamWorkings.header(bench, steps).list());
    if (bench.upright()) {
      list.addAll(new FootingWorkings(bench, steps).list());
    }
    if (bench.onBrackets()) {
      list.addAll(BracedWorkings.of(bench, steps));
    } else {
      list.addAll(new PostWorkings(bench, steps).list());
      list.addAll(new NotchWorkings(bench, steps).list());
    }
    return list;
  }

  private static Working factor(Worked worked) {
    Measure result = Measure.ratio(worked.number());
    return new Working(worked.id(), result, worked.evidence(), worked.source());
  }

  private static Working step(Worked worked) {
    Measure result = new Measure(worked.number(), worked.question().unit());
    return new Working(worked.id(), result, worked.evidence(), worked.source());
  }

  private Working heightFactor() {
    ExposureRow exposure = job.tables().exposure(bench.answers().option(EXPOSURE));
    double heightFt = bench.geometry().overallHeightIn() / Inches.PER_FOOT;
    double countedFt = Math.max(heightFt, exposure.leastHeightFt());
    double kz = LoadWorks.growing(exposure).kzFactor(countedFt * Inches.PER_FOOT);
    return steps.of(
        "wind.height-factor",
        Measure.ratio(kz),
        Evidence.saw("height", new Measure(countedFt, Unit.FOOT))
            .and("lowest", new Measure(exposure.leastHeightFt(), Unit.FOOT))
            .and("gradient", new Measure(exposure.gradientHeightFt(), Unit.FOOT))
            .and("alpha", Measure.ratio(exposure.alphaFactor()))
            .and("exposure", exposure.id()));
  }

  /** Bending of a post that the ground holds, by the push that bends it harder. */
  private List<Working> post() {
    PostInGround ground = bench.ground();
    SidePush across = bench.standing().across();
    SidePush along = bench.standing().along();
    boolean sideways = bentInLb(across, ground) >= bentInLb(along, ground);
    SidePush push = sideways ? across : along;
    double momentInLb = WorkingSteps.WIND_SHARE * bentInLb(push, ground);
    SizeRow size = bench.stock().row(bench.answers().option(POST_SIZE));
    Rectangle section = new Rectangle(size.thicknessIn(), size.widthIn());
    return List.of(
        steps.of(
            "post.moment",
            new Measure(momentInLb, Unit.INCH_POUND),
            Evidence.saw("way", sideways ? "across" : "along")
                .and("moment", new Measure(push.momentAtInLb(0), Unit.INCH_POUND))
                .and("groundRatio", Measure.ratio(ground.bendingRatio(push)))),
        steps.of(
            "post.stress",
            new Measure(momentInLb / section.sectionModulusIn3(), Unit.PSI),
            Evidence.saw("moment", new Measure(momentInLb, Unit.INCH_POUND))
                .and("breadth", Measure.inches(size.thicknessIn()))
                .and("depth", Measure.inches(size.widthIn()))));
  }

  private static double bentInLb(SidePush push, PostInGround ground) {
    return push.momentAtInLb(0) * ground.bendingRatio(push);
  }
}
