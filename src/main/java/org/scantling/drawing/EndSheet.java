package org.scantling.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** The walk from its end, on a sheet. */
final class EndSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double MOST_PX_PER_IN = 3.2;

  private final Subject subject;
  private final Room room;

  EndSheet(Subject subject, Room room) {
    this.subject = subject;
    this.room = room;
  }

  Sheet sheet() {
    double scale =
        Math.min(MOST_PX_PER_IN, room.acrossPx() / subject.geometry().crossbeamLengthIn());
    Crowd crowd = new Crowd();
    Draft.of(
        EndScene.of(subject, 1 / scale, room), Windows.whole(scale), new PaperPoint(0, 0), crowd);
    return new SheetBuilder(crowd, scale)
        .sheet(
            "end", subject.title(), SAYINGS.say("end.view"), notes(), subject.lengths().metric());
  }

  private List<String> notes() {
    DrawnLengths lengths = subject.lengths();
    List<SetOut.Spacer> spacers = subject.setOut().spacers();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("clear", lengths.said(spacers.get(spacers.size() - 1).lengthIn()));
    blanks.put("headroom", lengths.said(subject.top().headroomIn()));
    blanks.put("person", lengths.said(Person.HEIGHT_IN));
    List<String> notes = new ArrayList<>();
    notes.add(SAYINGS.say("end.notes", blanks));
    notes.addAll(SideSheet.across(subject));
    subject
        .machineIn()
        .ifPresent(wideIn -> notes.add(SAYINGS.say("end.machine", "width", lengths.said(wideIn))));
    return notes;
  }
}
