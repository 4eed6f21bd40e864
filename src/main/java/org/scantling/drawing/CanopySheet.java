package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.sayings.Sayings;
import org.scantling.shop.Piece;
import org.scantling.shop.SetOut;

/** The top from above, on a sheet. */
final class CanopySheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double FIGURE_PX = 17;
  private static final double LEAST_PX_PER_IN = 1;
  private static final double MOST_PX_PER_IN = 3;

  private final Subject subject;
  private final Room room;

  CanopySheet(Subject subject, Room room) {
    this.subject = subject;
    this.room = room;
  }

  Sheet sheet() {
    Windows windows =
        Windows.fitting(
            subject.row(0).stream().map(SetOut.PostMark::alongIn).toList(),
            subject.geometry().headerTailIn(),
            room.widePx(),
            Math.max(LEAST_PX_PER_IN, FIGURE_PX / closestIn()),
            MOST_PX_PER_IN);
    Crowd crowd = new Crowd();
    Draft.of(
        CanopyScene.of(subject, 1 / windows.scalePxPerIn()), windows, new PaperPoint(0, 0), crowd);
    return new SheetBuilder(crowd, windows.scalePxPerIn())
        .sheet(
            "canopy",
            subject.title(),
            SAYINGS.say("canopy.view"),
            notes(windows),
            subject.lengths().metric());
  }

  /** Between the two nearest marks, whose figures stand side by side. */
  private double closestIn() {
    List<Double> atIn = CanopyScene.marks(subject).atIn();
    double closestIn = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < atIn.size(); i++) {
      closestIn = Math.min(closestIn, Math.abs(atIn.get(i + 1) - atIn.get(i)));
    }
    return closestIn;
  }

  private List<String> notes(Windows windows) {
    List<Piece> crossbeams = subject.pieces().of("crossbeam");
    String count = String.valueOf(crossbeams.stream().mapToInt(Piece::count).sum());
    String pieces =
        Stream.of("header", "crossbeam", "blocking")
            .flatMap(role -> subject.pieces().of(role).stream())
            .map(this::piece)
            .collect(Collectors.joining("; "));
    List<String> notes = new ArrayList<>();
    notes.add(
        SAYINGS.say(
            subject.top().stepped() ? "canopy.notes-stepped" : "canopy.notes", "count", count));
    notes.add(SAYINGS.say("canopy.pieces", "pieces", pieces));
    if (windows.isBroken()) {
      notes.add(SAYINGS.say("broken"));
    }
    return notes;
  }

  private String piece(Piece piece) {
    return SAYINGS.say(
        "canopy.piece",
        "mark",
        piece.mark(),
        "count",
        String.valueOf(piece.count()),
        "length",
        subject.lengths().said(piece.shape().lengthIn()));
  }
}
