package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.sayings.Sayings;

/** The joints and places that a structure has, each larger on a sheet of its own. */
final class DetailSheets {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double MOST_PX_PER_IN = 13;
  private static final double MOST_OF_A_HOLE_PX_PER_IN = 6;

  private final Subject subject;

  DetailSheets(Subject subject) {
    this.subject = subject;
  }

  /** Those that the structure has, from the top down. */
  List<DetailDrawing> there() {
    List<DetailDrawing> there = new ArrayList<>();
    for (DetailDrawing each : DetailDrawing.values()) {
      if (view(each).isPresent()) {
        there.add(each);
      }
    }
    return there;
  }

  /**
   * One of them.
   *
   * @throws IllegalArgumentException when the structure has none
   */
  Sheet sheet(DetailDrawing detail, Room room) {
    DetailView view =
        view(detail)
            .orElseThrow(() -> new IllegalArgumentException("no " + detail.word() + " is there"));
    double most = detail == DetailDrawing.FOOTING ? MOST_OF_A_HOLE_PX_PER_IN : MOST_PX_PER_IN;
    double scale = Math.min(most, room.widePx() / view.wideIn());
    Scene scene = new Scene();
    view.draw(scene, 1 / scale);
    Crowd crowd = new Crowd();
    Draft.of(scene, Windows.whole(scale), new PaperPoint(0, 0), crowd);
    return new SheetBuilder(crowd, scale)
        .sheet(
            detail.word(),
            subject.title(),
            SAYINGS.say("view." + detail.word()),
            view.notes(),
            subject.lengths().metric());
  }

  private Optional<DetailView> view(DetailDrawing detail) {
    return switch (detail) {
      case SEAT -> Optional.of(new SeatView(subject));
      case HEADER -> Optional.of(HeaderView.atEndPost(subject));
      case SPLICE -> HeaderView.splice(subject).map(DetailView.class::cast);
      case BRACE_ACROSS -> BraceView.of(subject, true).map(DetailView.class::cast);
      case BRACE_ALONG -> BraceView.of(subject, false).map(DetailView.class::cast);
      case RAIL -> RailView.of(subject).map(DetailView.class::cast);
      case FOOTING -> Optional.of(new FootingView(subject));
    };
  }
}
