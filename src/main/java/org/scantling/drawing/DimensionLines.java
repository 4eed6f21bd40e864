package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Dimensions on the sheet: witness lines start 4 px off and end 5 px past, oblique strokes, figures
 * over the line, read from below and from the right.
 */
final class DimensionLines {
  private static final double OFF_PX = 4;
  private static final double PAST_PX = 5;
  private static final double TICK_PX = 3.5;
  private static final double FIRST_TIER_PX = 34;
  private static final double TIER_PX = 28;
  private static final double OVER_PX = 5;
  private static final double OVER_TICKS_PX = 8;
  private static final double OVER_ENDS_PX = 10;
  private static final double OVER_OTHERS_PX = 27;
  private static final double NAMES_PX = 10;
  private static final double BESIDE_PX = 9;

  private final Draft draft;
  private final Crowd crowd;
  private final PaperBox bounds;

  DimensionLines(Draft draft, Crowd crowd) {
    this.draft = draft;
    this.crowd = crowd;
    this.bounds = draft.bounds();
  }

  /**
   * A figure that waits until all lines are drawn, so that it can keep off them.
   *
   * @param first true of the first one of several, which had better stand out before them all
   */
  private record Waiting(
      Drawn.Figure figure, Side side, PaperPoint from, PaperPoint to, boolean first) {
    double lackPx() {
      return LetterWidths.widthPx(figure.words(), Lettering.FIGURE) - from.toPx(to);
    }

    /** Towards which end of its line it goes first where there is no room over it. */
    int towards() {
      double wayPx = side.upright() ? to.downPx() - from.downPx() : to.rightPx() - from.rightPx();
      return first == (wayPx > 0) ? -1 : 1;
    }
  }

  void add(List<Drawn> all) {
    List<Waiting> waiting = new ArrayList<>();
    for (Drawn each : all) {
      if (each instanceof Drawn.Dimension chain) {
        chain(chain, waiting);
      } else if (each instanceof Drawn.Inner inner) {
        inner(inner, waiting);
      }
    }
    // Those that fit over their own line keep it; the others find what room is left.
    waiting.stream().filter(each -> each.lackPx() <= 0).forEach(this::figure);
    waiting.stream().filter(each -> each.lackPx() > 0).forEach(this::figure);
    all.stream()
        .filter(Drawn.Running.class::isInstance)
        .map(Drawn.Running.class::cast)
        .forEach(this::running);
    new MeasuredLines(draft, crowd)
        .add(
            all.stream()
                .filter(Drawn.Measured.class::isInstance)
                .map(Drawn.Measured.class::cast)
                .toList());
  }

  private PaperPoint onLine(Side side, int tier, PaperPoint stop) {
    double offPx = FIRST_TIER_PX + tier * TIER_PX;
    return switch (side) {
      case ABOVE -> new PaperPoint(stop.rightPx(), bounds.topPx() - offPx);
      case BELOW -> new PaperPoint(stop.rightPx(), bounds.bottomPx() + NAMES_PX + offPx);
      case LEFT -> new PaperPoint(bounds.leftPx() - offPx, stop.downPx());
      case RIGHT -> new PaperPoint(bounds.rightPx() + offPx, stop.downPx());
    };
  }

  private void chain(Drawn.Dimension chain, List<Waiting> waiting) {
    List<PaperPoint> line = new ArrayList<>();
    for (ScenePoint stop : chain.stops()) {
      PaperPoint from = draft.at(stop);
      PaperPoint to = onLine(chain.side(), chain.tier(), from);
      line.add(to);
      if (draft.windows().shows(stop.rightIn())) {
        witness(from, to);
        tick(to);
      }
    }
    PaperPoint first = line.get(0);
    PaperPoint last = line.get(line.size() - 1);
    past(last, first);
    past(first, last);
    for (int i = 0; i < chain.figures().size(); i++) {
      if (told(chain, i, line.get(i).toPx(line.get(i + 1)))) {
        waiting.add(
            new Waiting(
                chain.figures().get(i),
                chain.side(),
                line.get(i),
                line.get(i + 1),
                i == 0 && chain.figures().size() > 1));
      }
    }
  }

  /**
   * True of a length whose ends both are drawn; of one that runs into what is left out, where its
   * figure has room over its own line: beside it, it would be read of the next.
   */
  private boolean told(Drawn.Dimension chain, int i, double longPx) {
    boolean from = draft.windows().shows(chain.stops().get(i).rightIn());
    boolean to = draft.windows().shows(chain.stops().get(i + 1).rightIn());
    double wordsPx = LetterWidths.widthPx(chain.figures().get(i).words(), Lettering.FIGURE);
    return longPx > 0 && ((from && to) || ((from || to) && wordsPx <= longPx));
  }

  private void inner(Drawn.Inner inner, List<Waiting> waiting) {
    PaperPoint from = draft.at(inner.from());
    PaperPoint to = draft.at(inner.to());
    tick(from);
    tick(to);
    waiting.add(new Waiting(inner.figure(), Side.ABOVE, from, to, false));
  }

  private void witness(PaperPoint from, PaperPoint to) {
    double longPx = from.toPx(to);
    if (longPx > OFF_PX) {
      crowd.add(
          Ink.Path.stroke(
              from.towards(to, OFF_PX / longPx),
              from.towards(to, (longPx + PAST_PX) / longPx),
              LineClass.THIN));
    }
  }

  private void tick(PaperPoint at) {
    crowd.add(
        Ink.Path.stroke(at.plus(-TICK_PX, TICK_PX), at.plus(TICK_PX, -TICK_PX), LineClass.TICK));
  }

  /** The end of a dimension line beyond its last stroke. */
  private void past(PaperPoint from, PaperPoint to) {
    double longPx = from.toPx(to);
    if (longPx > 0) {
      crowd.add(Ink.Path.stroke(to, from.towards(to, (longPx + PAST_PX) / longPx), LineClass.THIN));
    }
  }

  private void figure(Waiting waiting) {
    Ink.Path line = Ink.Path.stroke(waiting.from(), waiting.to(), LineClass.THIN);
    List<Ink.Letters> candidates = candidates(waiting);
    Ink.Letters letters = crowd.first(candidates).orElse(candidates.get(0));
    crowd.add(new Ink.Measure(waiting.figure().of(), List.of(line), letters));
  }

  /** Over the middle of the line, else under it, else past one of its ends. */
  private static List<Ink.Letters> candidates(Waiting waiting) {
    boolean upright = waiting.side().upright();
    PaperPoint middle = waiting.from().towards(waiting.to(), 0.5);
    double wordsPx = LetterWidths.widthPx(waiting.figure().words(), Lettering.FIGURE);
    double besidePx = waiting.from().toPx(waiting.to()) / 2 + wordsPx / 2 + BESIDE_PX;
    double underPx = OVER_PX + LetterWidths.ascentPx(Lettering.FIGURE);
    double endPx = waiting.towards() * besidePx;
    List<Ink.Letters> candidates = new ArrayList<>();
    for (double[] off :
        new double[][] {
          {0, -OVER_PX},
          {0, -OVER_TICKS_PX},
          {0, underPx},
          {0, -OVER_ENDS_PX},
          {0, underPx + OVER_PX},
          {endPx, -OVER_PX},
          {-endPx, -OVER_PX},
          {endPx, underPx},
          {-endPx, underPx},
          {0, -OVER_OTHERS_PX},
          {0, underPx + OVER_OTHERS_PX}
        }) {
      PaperPoint at = upright ? middle.plus(off[1], off[0]) : middle.plus(off[0], off[1]);
      candidates.add(letters(waiting.figure(), at, Anchor.MIDDLE, upright));
    }
    return candidates;
  }

  private static Ink.Letters letters(
      Drawn.Figure figure, PaperPoint at, Anchor anchor, boolean turned) {
    return new Ink.Letters(figure.words(), Lettering.FIGURE, at, anchor, turned);
  }

  private void running(Drawn.Running running) {
    boolean below = running.side() == Side.BELOW;
    for (int i = 0; i < running.stops().size(); i++) {
      ScenePoint stop = running.stops().get(i);
      if (draft.windows().shows(stop.rightIn())) {
        PaperPoint from = draft.at(stop);
        PaperPoint to = onLine(running.side(), running.tier(), from);
        double halfPx = Lettering.FIGURE.sizePx() * 0.36;
        PaperPoint at = to.plus(halfPx, below ? OVER_PX : -OVER_PX);
        double longPx = from.toPx(to);
        Drawn.Figure figure = running.figures().get(i);
        crowd.add(
            new Ink.Measure(
                figure.of(),
                List.of(Ink.Path.stroke(from.towards(to, OFF_PX / longPx), to, LineClass.THIN)),
                letters(figure, at, below ? Anchor.END : Anchor.START, true)));
      }
    }
  }
}
