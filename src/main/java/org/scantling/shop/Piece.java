package org.scantling.shop;

import java.util.List;

/**
 * Pieces cut alike.
 *
 * @param mark a letter for the role and a number
 * @param shape what each is cut to
 * @param places where each lies
 */
public record Piece(String mark, Shape shape, List<Place> places) {
  public Piece {
    places = List.copyOf(places);
  }

  public int count() {
    return places.size();
  }
}
