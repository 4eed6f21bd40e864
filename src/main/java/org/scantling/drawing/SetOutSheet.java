package org.scantling.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** The set-out plan, on a sheet. */
final class SetOutSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double LEAST_PX_PER_IN = 1;
  private static final double MOST_PX_PER_IN = 3;

  private final Subject subject;
  private final Room room;

  SetOutSheet(Subject subject, Room room) {
    this.subject = subject;
    this.room = room;
  }

  Sheet sheet() {
    Windows windows =
        Windows.fitting(
            subject.row(0).stream().map(SetOut.PostMark::alongIn).toList(),
            subject.setOut().ground().batterIn(),
            room.widePx(),
            LEAST_PX_PER_IN,
            MOST_PX_PER_IN);
    Crowd crowd = new Crowd();
    Draft.of(SetOutScene.of(subject, windows, room), windows, new PaperPoint(0, 0), crowd);
    return new SheetBuilder(crowd, windows.scalePxPerIn())
        .sheet(
            "set-out",
            subject.title(),
            SAYINGS.say("set-out.view"),
            notes(windows),
            subject.lengths().metric());
  }

  private List<String> notes(Windows windows) {
    DrawnLengths lengths = subject.lengths();
    SetOut setOut = subject.setOut();
    List<SetOut.PostMark> row = subject.row(0);
    Map<String, String> blanks = new HashMap<>();
    blanks.put("posts", String.valueOf(setOut.posts().size()));
    blanks.put("across", lengths.said(subject.row(1).get(0).acrossIn()));
    blanks.put("length", lengths.said(row.get(row.size() - 1).alongIn()));
    blanks.put("hole", lengths.said(setOut.ground().holeIn()));
    List<String> notes = new ArrayList<>();
    notes.add(SAYINGS.say("set-out.notes", blanks));
    if (SetOutScene.sameDig(setOut)) {
      notes.add(SAYINGS.say("set-out.dig", "dig", lengths.said(row.get(0).digIn())));
    }
    notes.add(square(setOut));
    notes.addAll(SideSheet.slope(subject));
    if (windows.isBroken()) {
      notes.add(SAYINGS.say("broken"));
    }
    return notes;
  }

  /** How the corners are proved, with the longest diagonal, which is the one to hold to. */
  private String square(SetOut setOut) {
    return setOut
        .overallDiagonal()
        .map(
            each ->
                SAYINGS.say(
                    "set-out.diagonals",
                    "from",
                    each.from(),
                    "to",
                    each.to(),
                    "length",
                    subject.lengths().said(each.lengthIn())))
        .orElseGet(() -> SAYINGS.say("set-out.diagonal"));
  }
}
