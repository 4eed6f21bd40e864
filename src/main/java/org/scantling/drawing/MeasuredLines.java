package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lines with their length written in them: the line is left out where the figure stands. */
final class MeasuredLines {
  private static final double ROOM_PX = 3;
  private static final double HAIR_PX = 0.01;
  private static final int STEPS = 400;

  private final Draft draft;
  private final Crowd crowd;

  MeasuredLines(Draft draft, Crowd crowd) {
    this.draft = draft;
    this.crowd = crowd;
  }

  void add(List<Drawn.Measured> all) {
    for (Drawn.Measured each : all) {
      List<Drawn.Measured> others = all.stream().filter(other -> other != each).toList();
      Optional<Ink.Letters> figure =
          each.along().stream()
              .map(share -> letters(each, share))
              .filter(crowd::roomFor)
              .filter(letters -> others.stream().noneMatch(other -> crosses(other, letters)))
              .findFirst();
      figure.ifPresentOrElse(letters -> add(each, letters), () -> crowd.add(part(each, 0, 1)));
    }
  }

  private PaperPoint at(Drawn.Measured measured, double share) {
    return draft.at(measured.from()).towards(draft.at(measured.to()), share);
  }

  private Ink.Letters letters(Drawn.Measured measured, double share) {
    PaperPoint at = at(measured, share).plus(0, Lettering.FIGURE.sizePx() * 0.36);
    return new Ink.Letters(measured.figure().words(), Lettering.FIGURE, at, Anchor.MIDDLE, false);
  }

  private boolean crosses(Drawn.Measured other, Ink.Letters letters) {
    return letters.box().grown(ROOM_PX).meets(draft.at(other.from()), draft.at(other.to()));
  }

  /** The line on both sides of its figure. */
  private void add(Drawn.Measured measured, Ink.Letters letters) {
    PaperBox room = letters.box().grown(ROOM_PX);
    List<Double> within = new ArrayList<>();
    for (int step = 0; step <= STEPS; step++) {
      if (room.meets(
          PaperBox.around(List.of(at(measured, (double) step / STEPS))).grown(HAIR_PX))) {
        within.add((double) step / STEPS);
      }
    }
    double fromShare = within.get(0);
    double toShare = within.get(within.size() - 1);
    crowd.add(
        new Ink.Measure(
            measured.figure().of(),
            List.of(part(measured, 0, fromShare), part(measured, toShare, 1)),
            letters));
  }

  private Ink.Path part(Drawn.Measured measured, double fromShare, double toShare) {
    return Ink.Path.stroke(at(measured, fromShare), at(measured, toShare), measured.line());
  }
}
