package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What already lies on a sheet, and whether there is room for more writing beside it. */
final class Crowd {
  private static final double FROM_WORDS_PX = 2;
  private static final double FROM_LINES_PX = 1.2;

  private final List<Ink> inks = new ArrayList<>();
  private final List<PaperBox> words = new ArrayList<>();
  private final List<Ink.Path> strokes = new ArrayList<>();

  void add(Ink ink) {
    inks.add(ink);
    ink.strokes().forEach(each -> strokes.addAll(each.segments()));
    ink.writing().forEach(each -> words.add(each.box()));
  }

  List<Ink> inks() {
    return List.copyOf(inks);
  }

  boolean roomFor(Ink.Letters letters) {
    PaperBox offWords = letters.box().grown(FROM_WORDS_PX);
    PaperBox offLines = letters.box().grown(FROM_LINES_PX);
    return words.stream().noneMatch(offWords::meets)
        && strokes.stream().noneMatch(each -> meets(offLines, each));
  }

  static boolean meets(PaperBox box, Ink.Path segment) {
    return box.meets(segment.points().get(0), segment.points().get(1));
  }

  /** The first of several that has room. */
  Optional<Ink.Letters> first(List<Ink.Letters> candidates) {
    return candidates.stream().filter(this::roomFor).findFirst();
  }
}
