package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.scantling.sayings.Sayings;

/** Which piece of header lies where: line by line of timber, from the first post on. */
final class HeaderLines {
  private static final Sayings SAYINGS = Sayings.of("set-out");

  private final Built built;
  private final Pieces pieces;

  /** A piece in its place. */
  private record Laid(String mark, double fromIn, boolean turned) {
    String word() {
      return turned ? SAYINGS.say("header.turned", "mark", mark) : mark;
    }
  }

  HeaderLines(Built built, Pieces pieces) {
    this.built = built;
    this.pieces = pieces;
  }

  List<SetOut.HeaderLine> lines() {
    Map<Double, List<Laid>> byLine = new TreeMap<>();
    for (Piece piece : pieces.of("header")) {
      for (Place place : piece.places()) {
        double firstIn = place.first().alongIn();
        double lastIn = place.last().alongIn();
        byLine
            .computeIfAbsent(place.first().acrossIn(), across -> new ArrayList<>())
            .add(new Laid(piece.mark(), Math.min(firstIn, lastIn), firstIn > lastIn));
      }
    }
    List<SetOut.HeaderLine> lines = new ArrayList<>();
    byLine.forEach((acrossIn, laid) -> lines.add(line(acrossIn, laid)));
    return lines;
  }

  private SetOut.HeaderLine line(double acrossIn, List<Laid> laid) {
    laid.sort(Comparator.comparingDouble(Laid::fromIn));
    double spacingIn = built.geometry().plan().rowSpacingIn();
    String row = acrossIn < spacingIn / 2 ? "A" : "B";
    boolean outside = acrossIn < 0 || acrossIn > spacingIn;
    String side = outside ? "header.outside" : "header.walk-side";
    return new SetOut.HeaderLine(
        SAYINGS.say(built.paired() ? side : "header.row", "row", row),
        laid.stream().map(Laid::word).toList(),
        laid.stream().anyMatch(Laid::turned));
  }
}
