package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Pieces that are clamped side by side, their first ends flush, and marked with lines across all of
 * them.
 *
 * @param marks the pieces
 * @param count how many together
 * @param from the end that is flush
 * @param linesIn where the lines go, both edges of every notch, from that end
 * @param depthIn how deep they are cut
 */
public record Gang(
    List<String> marks, int count, String from, List<Double> linesIn, double depthIn) {
  private static final double HAIR = 1e-6;

  public Gang {
    marks = List.copyOf(marks);
    linesIn = List.copyOf(linesIn);
  }

  /** Sets of two and more pieces of one size with the same notches. */
  static List<Gang> of(Pieces pieces) {
    Map<Object, List<Piece>> alike = new LinkedHashMap<>();
    for (Piece piece : pieces.all()) {
      Shape shape = piece.shape();
      if (!shape.recesses().isEmpty()) {
        List<Object> cuts = new ArrayList<>(List.of(shape.role(), shape.size()));
        shape
            .recesses()
            .forEach(each -> cuts.add(List.of(each.fromIn(), each.widthIn(), each.depthIn())));
        alike.computeIfAbsent(cuts, key -> new ArrayList<>()).add(piece);
      }
    }
    List<Gang> gangs = new ArrayList<>();
    for (List<Piece> set : alike.values()) {
      int count = set.stream().mapToInt(Piece::count).sum();
      if (count > 1) {
        gangs.add(gang(set, count));
      }
    }
    return gangs;
  }

  private static Gang gang(List<Piece> set, int count) {
    Shape shape = set.get(0).shape();
    TreeSet<Double> lines = new TreeSet<>();
    for (Recess each : shape.recesses()) {
      lines.add(each.fromIn());
      lines.add(each.toIn());
    }
    // A notch that is open at an end of the piece needs no line there.
    lines.removeIf(line -> line < HAIR || line > shape.lengthIn() - HAIR);
    return new Gang(
        set.stream().map(Piece::mark).toList(),
        count,
        shape.ends().first(),
        new ArrayList<>(lines),
        shape.recesses().get(0).depthIn());
  }
}
