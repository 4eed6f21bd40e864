package org.scantling.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How a header is pieced together along its row: the bays that each piece reaches over, from the
 * first post on. Two pieces meet over the middle of a post; the first and the last carry the tails.
 *
 * <p>A whole header is one piece; one that steps from bay to bay is pieces of one bay each.
 * Whatever works on headers, checks as well as lists, reads the pieces here.
 *
 * @param bays of each piece, 1 or more each
 */
public record Splice(List<Integer> bays) {
  /** Both ends, and two alike between them that meet. */
  private static final int LEAST_PIECES = 4;

  private static final String JOINED = "+";

  public Splice {
    if (bays.isEmpty() || bays.stream().anyMatch(each -> each < 1)) {
      throw new IllegalArgumentException(
          "each piece of a header must reach over 1 bay or more, found " + bays);
    }
    bays = List.copyOf(bays);
  }

  /** One piece over all bays. */
  public static Splice whole(int bays) {
    return new Splice(List.of(bays));
  }

  /** A piece to every bay. */
  public static Splice bayByBay(int bays) {
    return new Splice(Collections.nCopies(bays, 1));
  }

  /** As an answer says it: {@code 4+3+3}. */
  public static Splice of(String way) {
    return new Splice(Arrays.stream(way.split("\\+")).map(Integer::valueOf).toList());
  }

  /** The answer that says it. */
  public String way() {
    return bays.stream().map(String::valueOf).collect(Collectors.joining(JOINED));
  }

  /** The same from the other end, as the second board of a pair lies. */
  public Splice turned() {
    List<Integer> other = new ArrayList<>(bays);
    Collections.reverse(other);
    return new Splice(other);
  }

  /**
   * A shorter one that ends alike: pieces in the middle that are as long as their neighbor are left
   * out until it has no more than so many bays, or four pieces; a single piece is that long.
   */
  public Splice shortened(int mostBays) {
    if (pieceCount() == 1) {
      return whole(Math.min(mostBays, bayCount()));
    }
    List<Integer> fewer = new ArrayList<>(bays);
    int middle = fewer.size() / 2;
    while (fewer.stream().mapToInt(Integer::intValue).sum() > mostBays
        && fewer.size() > LEAST_PIECES
        && fewer.get(middle).equals(fewer.get(middle - 1))) {
      fewer.remove(middle);
      middle = fewer.size() / 2;
    }
    return new Splice(fewer);
  }

  public int bayCount() {
    return bays.stream().mapToInt(Integer::intValue).sum();
  }

  public int pieceCount() {
    return bays.size();
  }

  /** The first post of a piece, both counted from 0. */
  public int firstPost(int piece) {
    return bays.subList(0, piece).stream().mapToInt(Integer::intValue).sum();
  }

  /** The last post of a piece, both counted from 0. */
  public int lastPost(int piece) {
    return firstPost(piece) + bays.get(piece);
  }

  /** Posts over which two pieces meet, counted from 0. */
  public List<Integer> cuts() {
    List<Integer> cuts = new ArrayList<>();
    for (int piece = 1; piece < pieceCount(); piece++) {
      cuts.add(firstPost(piece));
    }
    return cuts;
  }
}
