package org.scantling.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** The walk from its side, on a sheet. */
final class SideSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double LEAST_PX_PER_IN = 1.7;
  private static final double MOST_PX_PER_IN = 3;

  private final Subject subject;
  private final Room room;

  SideSheet(Subject subject, Room room) {
    this.subject = subject;
    this.room = room;
  }

  Sheet sheet() {
    Windows windows =
        Windows.fitting(
            subject.row(0).stream().map(SetOut.PostMark::alongIn).toList(),
            subject.geometry().headerTailIn(),
            room.widePx() - 2 * room.groundPx(),
            LEAST_PX_PER_IN,
            MOST_PX_PER_IN);
    double scale = windows.scalePxPerIn();
    Crowd crowd = new Crowd();
    Draft.of(SideScene.of(subject, 1 / scale, room), windows, new PaperPoint(0, 0), crowd);
    return new SheetBuilder(crowd, scale)
        .sheet(
            "side",
            subject.title(),
            SAYINGS.say("side.view"),
            notes(windows),
            subject.lengths().metric());
  }

  private List<String> notes(Windows windows) {
    List<String> notes = new ArrayList<>();
    List<SetOut.PostMark> row = subject.row(0);
    SetOut.PostMark first = row.get(0);
    SetOut.PostMark last = row.get(row.size() - 1);
    Map<String, String> blanks = new HashMap<>();
    blanks.put("posts", String.valueOf(row.size()));
    blanks.put("from", first.name());
    blanks.put("to", last.name());
    blanks.put("length", subject.lengths().said(last.alongIn()));
    blanks.put(
        "height",
        subject.lengths().said(subject.lineIn() + first.topOverLineIn() - subject.groundIn(first)));
    blanks.put("hole", subject.lengths().said(subject.setOut().ground().holeIn()));
    boolean rock = subject.structure().footings().onRock();
    blanks.put(
        rock ? "rock" : "bed",
        subject
            .lengths()
            .said(rock ? subject.rockIn().orElseThrow() : subject.setOut().ground().bedIn()));
    notes.add(SAYINGS.say("side.notes", blanks));
    notes.addAll(slope(subject));
    if (windows.isBroken()) {
      notes.add(SAYINGS.say("broken"));
    }
    return notes;
  }

  /** How the ground falls, where it does. */
  static List<String> slope(Subject subject) {
    List<String> notes = new ArrayList<>(along(subject));
    notes.addAll(across(subject));
    return notes;
  }

  /** How the ground falls from row to row, where it does. */
  static List<String> across(Subject subject) {
    double acrossIn = subject.setOut().ground().acrossIn();
    return acrossIn == 0
        ? List.of()
        : List.of(
            SAYINGS.say(
                acrossIn > 0 ? "across.lower" : "across.higher",
                "fall",
                subject.lengths().said(Math.abs(acrossIn))));
  }

  private static List<String> along(Subject subject) {
    double fallIn = subject.setOut().ground().fallIn();
    if (fallIn == 0) {
      return List.of();
    }
    List<SetOut.PostMark> row = subject.row(0);
    String fall = subject.lengths().said(Math.abs(fallIn));
    String from = row.get(fallIn > 0 ? 0 : row.size() - 1).name();
    String to = row.get(fallIn > 0 ? row.size() - 1 : 0).name();
    return List.of(SAYINGS.say("slope", "fall", fall, "from", from, "to", to));
  }
}
