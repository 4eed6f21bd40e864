package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.sayings.Sayings;
import org.scantling.shop.EndCut;
import org.scantling.shop.Piece;

/** The shaped tail of the crossbeams at full size, the tip on the left. */
final class TailSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");

  /** A px of a page is a 96th of an inch. Source: CSS Values and Units Level 3, 6.2. */
  private static final double PX_PER_IN = 96;

  /** What is drawn of the crossbeam past its tail. */
  private static final double PAST_IN = 1;

  private static final double NAME_PX = 30;

  private final Subject subject;

  TailSheet(Subject subject) {
    this.subject = subject;
  }

  Optional<Sheet> sheet() {
    List<Piece> shaped =
        subject.pieces().of("crossbeam").stream()
            .filter(each -> each.shape().first() instanceof EndCut.Shaped)
            .toList();
    return shaped.isEmpty() ? Optional.empty() : Optional.of(sheet(shaped));
  }

  private Sheet sheet(List<Piece> shaped) {
    EndCut.Shaped tail = (EndCut.Shaped) shaped.get(0).shape().first();
    double depthIn = shaped.get(0).shape().depthIn();
    double runIn = tail.outline().stream().mapToDouble(EndCut.Corner::backIn).max().orElseThrow();
    double longIn = runIn + PAST_IN;
    Crowd crowd = new Crowd();
    List<PaperPoint> profile = new ArrayList<>();
    profile.add(point(longIn, 0));
    FairCurve.of(tail).forEach(each -> profile.add(point(each.backIn(), each.downIn())));
    profile.add(point(longIn, depthIn));
    String marks = shaped.stream().map(Piece::mark).collect(Collectors.joining(", "));
    crowd.add(new Ink.Path(profile, false, Tone.NONE, LineClass.VISIBLE, shaped.get(0).mark()));
    crowd.add(Ink.Path.stroke(point(longIn, 0), point(longIn, depthIn), LineClass.THIN));
    String name =
        SAYINGS.say("template.name", "marks", marks, "size", shaped.get(0).shape().size());
    double roomPx = (longIn - tail.outline().get(1).backIn()) * PX_PER_IN;
    List<String> said =
        LetterWidths.widthPx(name, Lettering.MARK) < roomPx - NAME_PX
            ? List.of(name)
            : List.of(marks, shaped.get(0).shape().size());
    for (int i = 0; i < said.size(); i++) {
      crowd.add(
          new Ink.Letters(
              said.get(i),
              Lettering.MARK,
              point(longIn, 0).plus(-NAME_PX / 2, (i + 1) * NAME_PX),
              Anchor.END,
              false));
    }
    return new Sheet(
        "tail",
        SAYINGS.say("template.title", "marks", marks),
        SAYINGS.say(
            "template.says",
            "depth",
            subject.lengths().said(depthIn),
            "run",
            subject.lengths().said(runIn)),
        PX_PER_IN,
        List.of(),
        crowd.inks(),
        crowd.inks());
  }

  private static PaperPoint point(double backIn, double downIn) {
    return new PaperPoint(backIn * PX_PER_IN, downIn * PX_PER_IN);
  }
}
