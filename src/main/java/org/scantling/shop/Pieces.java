package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;

/**
 * Every piece of the structure.
 *
 * @param all posts first, along the load path
 * @param open what the proposal leaves to be settled before anything is cut
 */
public record Pieces(List<Piece> all, List<String> open) {
  public Pieces {
    all = List.copyOf(all);
    open = List.copyOf(open);
  }

  static Pieces of(Built built) {
    Tape tape = built.tape();
    List<Piece> all = new ArrayList<>();
    all.addAll(Marks.of(new Posts(built).all(), tape));
    all.addAll(Marks.of(new Headers(built).all(), tape));
    all.addAll(Marks.of(new Crossbeams(built).all(), tape));
    all.addAll(Marks.of(new Blocking(built).all(), tape));
    all.addAll(Marks.of(new Rails(built).all(), tape));
    all.addAll(Marks.of(new Pickets(built).pickets(), tape));
    all.addAll(Marks.of(new Pickets(built).blocks(), tape));
    all.addAll(Marks.of(Braces.of(built), tape));
    return new Pieces(all, OpenPoints.of(built));
  }

  /** The pieces of a role, in the order of their marks. */
  public List<Piece> of(String role) {
    return all.stream().filter(each -> each.shape().role().equals(role)).toList();
  }

  int count(String role) {
    return of(role).stream().mapToInt(Piece::count).sum();
  }

  /** The marks of crossbeams that lie over a post and are notched right across it. */
  List<String> overPosts() {
    return of("crossbeam").stream()
        .filter(
            piece ->
                piece.shape().recesses().stream()
                    .anyMatch(each -> each.seat().role().equals(Recess.Seat.BOARDS_AND_POST)))
        .map(Piece::mark)
        .toList();
  }
}
