package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** The base and what is proposed, beside each other at one scale with a person between. */
final class ThenAndNowSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double LABELS_PX = 60;
  private static final double OUTER_PX = 70;
  private static final double BETWEEN_PX = 110;
  private static final double NEAR_PX = 20;
  private static final double LEAST_PX_PER_IN = 1.4;
  private static final double MOST_PX_PER_IN = 2.6;
  private static final double LABEL_PX = 240;
  private static final double UNDER_PX = 84;

  private final Subject subject;
  private final BaseFrame base;
  private final Room room;
  private final Larger larger;
  private final Crowd crowd = new Crowd();

  ThenAndNowSheet(Subject subject, BaseFrame base, Room room) {
    this.subject = subject;
    this.base = base;
    this.room = room;
    this.larger = Larger.of(subject.structure(), base);
  }

  /** How both are laid out. */
  private record Layout(Windows then, Windows now) {
    double scalePxPerIn() {
      return then.scalePxPerIn();
    }
  }

  Sheet sheet() {
    return room == Room.PHONE ? stacked() : beside();
  }

  /** The one above the other, where a screen is narrow. */
  private Sheet stacked() {
    Layout layout = layout();
    double pxIn = 1 / layout.scalePxPerIn();
    Geometry stood = base.geometry();
    Scene then = BaseScene.of(base, pxIn, NEAR_PX, BETWEEN_PX);
    Person.stand(then, stood.lengthIn() + stood.headerTailIn() + BETWEEN_PX / 2 * pxIn, 0);
    measureBase(then);
    label(then, stood, labelOfBase());
    Draft.of(then, layout.then(), new PaperPoint(0, 0), crowd);
    Scene now = SideScene.beside(subject, larger.growth(), pxIn, NEAR_PX, room);
    measure(now);
    label(now, subject.geometry(), labelOfProposal());
    double downPx = UNDER_PX + subject.geometry().overallHeightIn() * layout.scalePxPerIn();
    for (Ink each : crowd.inks()) {
      for (PaperPoint point : each.reach()) {
        downPx =
            Math.max(
                downPx,
                point.downPx()
                    + UNDER_PX
                    + subject.geometry().overallHeightIn() * layout.scalePxPerIn());
      }
    }
    Draft.of(now, layout.now(), new PaperPoint(0, downPx), crowd);
    return sheet(layout);
  }

  private Sheet beside() {
    Layout layout = layout();
    double pxIn = 1 / layout.scalePxPerIn();
    Geometry stood = base.geometry();
    double toFirstPostPx =
        BETWEEN_PX + NEAR_PX + subject.geometry().headerTailIn() * layout.scalePxPerIn();
    double atPx = layout.then().rightPx(stood.lengthIn() + stood.headerTailIn()) + toFirstPostPx;
    Scene then = BaseScene.of(base, pxIn, OUTER_PX, toFirstPostPx);
    Person.stand(then, stood.lengthIn() + stood.headerTailIn() + BETWEEN_PX / 2 * pxIn, 0);
    measureBase(then);
    label(then, stood, labelOfBase());
    Draft.of(then, layout.then(), new PaperPoint(0, 0), crowd);
    Scene now = SideScene.beside(subject, larger.growth(), pxIn, NEAR_PX, room);
    measure(now);
    label(now, subject.geometry(), labelOfProposal());
    Draft.of(now, layout.now(), new PaperPoint(atPx, 0), crowd);
    return sheet(layout);
  }

  private Sheet sheet(Layout layout) {
    return new SheetBuilder(crowd, layout.scalePxPerIn())
        .sheet(
            "then-and-now",
            subject.title(),
            SAYINGS.say("then.view"),
            notes(layout),
            subject.lengths().metric());
  }

  private List<Double> posts() {
    return subject.row(0).stream().map(SetOut.PostMark::alongIn).toList();
  }

  /** Whole where both can be read so; else the longer one is broken, or both. */
  private Layout layout() {
    List<Layout> ways = new ArrayList<>();
    for (boolean breakBase : new boolean[] {false, true}) {
      for (boolean breakProposal : new boolean[] {false, true}) {
        ways.add(layout(breakBase, breakProposal));
      }
    }
    return ways.stream()
        .filter(way -> way.scalePxPerIn() >= LEAST_PX_PER_IN)
        .findFirst()
        .orElseGet(
            () ->
                ways.stream()
                    .reduce(
                        (one, other) ->
                            other.scalePxPerIn() > one.scalePxPerIn() + 1e-9 ? other : one)
                    .orElseThrow());
  }

  private Layout layout(boolean breakBase, boolean breakProposal) {
    return room == Room.PHONE
        ? stackedLayout(breakBase, breakProposal)
        : besideLayout(breakBase, breakProposal);
  }

  /** At the scale at which the wider of both fits. */
  private Layout stackedLayout(boolean breakBase, boolean breakProposal) {
    List<Double> stood = BaseScene.posts(base.geometry());
    double baseIn = 2 * base.geometry().headerTailIn() + keptIn(stood, breakBase);
    double proposalIn = 2 * subject.geometry().headerTailIn() + keptIn(posts(), breakProposal);
    double gapPx = breakBase || breakProposal ? Windows.GAP_PX : 0;
    double scale =
        Math.min(
            MOST_PX_PER_IN,
            Math.min(
                (room.widePx() - BETWEEN_PX - gapPx) / baseIn,
                (room.widePx() - gapPx) / proposalIn));
    return new Layout(windows(stood, breakBase, scale), windows(posts(), breakProposal, scale));
  }

  private Layout besideLayout(boolean breakBase, boolean breakProposal) {
    List<Double> stood = BaseScene.posts(base.geometry());
    double inches = 2 * base.geometry().headerTailIn() + 2 * subject.geometry().headerTailIn();
    double roomPx = room.widePx() + LABELS_PX - 2 * OUTER_PX - BETWEEN_PX - NEAR_PX;
    for (Windows each : List.of(windows(stood, breakBase, 1), windows(posts(), breakProposal, 1))) {
      roomPx -= each.isBroken() ? Windows.GAP_PX : 0;
    }
    inches += keptIn(stood, breakBase) + keptIn(posts(), breakProposal);
    double scale = Math.min(MOST_PX_PER_IN, roomPx / inches);
    return new Layout(windows(stood, breakBase, scale), windows(posts(), breakProposal, scale));
  }

  private static Windows windows(List<Double> posts, boolean broken, double scalePxPerIn) {
    return broken ? Windows.ends(posts, scalePxPerIn) : Windows.whole(scalePxPerIn);
  }

  private static double keptIn(List<Double> posts, boolean broken) {
    Windows windows = windows(posts, broken, 1);
    double lastIn = posts.get(posts.size() - 1);
    return windows.rightPx(lastIn) - (windows.isBroken() ? Windows.GAP_PX : 0);
  }

  private void measureBase(Scene scene) {
    Geometry stood = base.geometry();
    double lowIn = -base.design().posts().embedmentIn();
    double leftIn = -stood.headerTailIn();
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(new ScenePoint(leftIn, 0), new ScenePoint(leftIn, stood.overallHeightIn())),
            List.of(subject.lengths().of("base over-all", stood.overallHeightIn()))));
    scene.add(
        new Drawn.Dimension(
            Side.BELOW,
            0,
            List.of(new ScenePoint(0, lowIn), new ScenePoint(stood.lengthIn(), lowIn)),
            List.of(subject.lengths().of("base length", stood.lengthIn()))));
  }

  private void measure(Scene scene) {
    List<SetOut.PostMark> row = subject.row(0);
    SetOut.PostMark first = row.get(0);
    SetOut.PostMark last = row.get(row.size() - 1);
    scene.add(
        new Drawn.Dimension(
            Side.BELOW,
            0,
            List.of(
                new ScenePoint(0, subject.bottomIn(first)),
                new ScenePoint(last.alongIn(), subject.bottomIn(last))),
            List.of(subject.lengths().of(first.name() + " " + last.name(), last.alongIn()))));
    scene.add(SideDimensions.overAll(subject));
  }

  private void label(Scene scene, Geometry geometry, List<String> lines) {
    double highIn = geometry.overallHeightIn() + Math.max(0, -subject.top().slopeRatio());
    for (int i = 0; i < lines.size(); i++) {
      Lettering lettering = i == 0 ? Lettering.MARK : Lettering.NOTE;
      scene.add(
          new Drawn.Note(
              LetterWidths.shortened(lines.get(i), lettering, LABEL_PX),
              lettering,
              List.of(
                  new Drawn.Spot(
                      new ScenePoint(-geometry.headerTailIn(), highIn),
                      0,
                      -24 - 17 * (lines.size() - 1 - i),
                      Anchor.START))));
    }
  }

  private List<String> labelOfBase() {
    List<String> lines = new ArrayList<>();
    lines.add(base.design().title());
    lines.add(
        base.design()
            .proven()
            .map(stood -> SAYINGS.say("then.since", "year", String.valueOf(stood.builtYear())))
            .orElseGet(() -> SAYINGS.say("then.base")));
    return lines;
  }

  private List<String> labelOfProposal() {
    List<String> lines = new ArrayList<>();
    lines.add(SAYINGS.say("then.proposed"));
    larger.names().ifPresent(lines::add);
    return lines;
  }

  private List<String> notes(Layout layout) {
    List<String> notes = new ArrayList<>();
    notes.add(
        SAYINGS.say(
            "then.notes",
            "base",
            base.design().title(),
            "person",
            subject.lengths().said(Person.HEIGHT_IN)));
    notes.add(larger.sentence());
    notes.addAll(deeper());
    notes.addAll(SideSheet.slope(subject));
    if (layout.then().isBroken() || layout.now().isBroken()) {
      notes.add(SAYINGS.say("broken"));
    }
    return notes;
  }

  /** How deep the posts stand, where that is more than it was. */
  private List<String> deeper() {
    double beforeIn = base.design().posts().embedmentIn();
    double nowIn = subject.structure().footings().depthIn();
    return !subject.onPiers() && nowIn > beforeIn && beforeIn > 0
        ? List.of(
            SAYINGS.say(
                "then.deeper",
                "now",
                subject.lengths().said(nowIn),
                "before",
                subject.lengths().said(beforeIn)))
        : List.of();
  }
}
