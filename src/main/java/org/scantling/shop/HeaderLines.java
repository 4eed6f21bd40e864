package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which piece of header lies where: line by line of timber, from the first post on. */
final class HeaderLines {
  private final Built built;
  private final Pieces pieces;

  /** A piece in its place. */
  private record Laid(String mark, double fromIn, boolean turned) {
    String word() {
      return turned ? mark + " turned" : mark;
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
    boolean near = acrossIn < spacingIn / 2;
    String row = near ? "row A" : "row B";
    boolean outside = acrossIn < 0 || acrossIn > spacingIn;
    String side = outside ? ", outside" : ", walk side";
    return new SetOut.HeaderLine(
        built.paired() ? row + side : row, laid.stream().map(Laid::word).toList());
  }
}
