package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gives every kind of piece its mark: a letter for the role and a number. */
final class Marks {
  private static final Map<String, String> LETTERS =
      Map.of(
          "post", "P",
          "header", "H",
          "crossbeam", "C",
          "blocking", "B",
          "rail", "R",
          "picket", "T",
          "block", "S",
          "brace", "K");

  /** Roles whose pieces may be turned end for end. */
  private static final List<String> TURNING = List.of("header", "rail");

  private Marks() {}

  /** Pieces of one role, those alike under one mark. */
  static List<Piece> of(List<Placed> placed, Tape tape) {
    Map<Shape, List<Place>> alike = new LinkedHashMap<>();
    for (Placed each : placed) {
      Placed as = each;
      if (TURNING.contains(each.shape().role()) && !alike.containsKey(each.shape())) {
        Placed turned = Turned.of(each, tape);
        as = alike.containsKey(turned.shape()) ? turned : each;
      }
      alike.computeIfAbsent(as.shape(), shape -> new ArrayList<>()).add(as.place());
    }
    List<Piece> pieces = new ArrayList<>();
    for (Map.Entry<Shape, List<Place>> each : alike.entrySet()) {
      String letter = LETTERS.get(each.getKey().role());
      pieces.add(new Piece(letter + (pieces.size() + 1), each.getKey(), each.getValue()));
    }
    return pieces;
  }
}
