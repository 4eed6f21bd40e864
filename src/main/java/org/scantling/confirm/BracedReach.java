package org.scantling.confirm;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What of a braced plane is looked at in one case.
 *
 * @param posts counted from 0
 * @param braces of those posts, by name
 * @param pieces of the beam over and between those posts, its tails where it ends there
 * @param betweenTails the same without tails
 */
record BracedReach(
    List<Integer> posts, List<String> braces, List<String> pieces, List<String> betweenTails) {
  private static final int NEAR_POSTS = 2;

  static BracedReach whole(BracedPlane plane) {
    return between(plane, 0, plane.postCount() - 1);
  }

  /**
   * The part that something at one place works on by itself: two bays to either side. What it does
   * to posts farther on is less than what it does, from a nearer place, to their like.
   *
   * @param atIn from the first post
   */
  static BracedReach near(BracedPlane plane, double atIn) {
    int first = 0;
    while (first + NEAR_POSTS < plane.postCount() && plane.postAtIn(first + NEAR_POSTS) < atIn) {
      first++;
    }
    int last = plane.postCount() - 1;
    while (last - NEAR_POSTS >= 0 && plane.postAtIn(last - NEAR_POSTS) > atIn) {
      last--;
    }
    return between(plane, first, last);
  }

  private static BracedReach between(BracedPlane plane, int first, int last) {
    BracedLine beam = plane.beam();
    int from = first == 0 ? 0 : plane.markOver(first);
    int to = last == plane.postCount() - 1 ? beam.pieceCount() : plane.markOver(last);
    List<String> pieces = beam.pieces().subList(from, to);
    List<Integer> posts = IntStream.rangeClosed(first, last).boxed().toList();
    return new BracedReach(
        posts,
        posts.stream().flatMap(post -> plane.braces(post).stream()).toList(),
        pieces,
        beam.betweenTails().stream().filter(pieces::contains).toList());
  }
}
