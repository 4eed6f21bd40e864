package org.scantling.shop;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.design.FreeStretch;
import org.scantling.reasons.Source;

/**
 * Where everything goes on the ground, measured from the datum: the middle of the first post of the
 * near row, A1. Rows run away from it along the walk; row B lies across.
 *
 * @param posts one entry a post, the near row first
 * @param diagonals to check the corners by, between middles of posts
 * @param running distances along a row or a header, all from one end
 * @param spacers clear distances between the posts, for pieces that hold them apart while they are
 *     filled
 * @param headers which pieces lie where
 * @param spots what lies elsewhere than one would look for it: braces, steps, shifted crossbeams
 * @param free stretches along the walk in which no post may stand
 * @param ground what all holes share
 * @param tolerances how near is near enough
 */
public record SetOut(
    List<PostMark> posts,
    List<Diagonal> diagonals,
    List<Running> running,
    List<Spacer> spacers,
    List<HeaderLine> headers,
    List<Spot> spots,
    List<FreeStretch> free,
    Ground ground,
    List<Tolerance> tolerances) {
  public SetOut {
    posts = List.copyOf(posts);
    diagonals = List.copyOf(diagonals);
    running = List.copyOf(running);
    spacers = List.copyOf(spacers);
    headers = List.copyOf(headers);
    spots = List.copyOf(spots);
    free = List.copyOf(free);
    tolerances = List.copyOf(tolerances);
  }

  /**
   * @param name such as A1
   * @param mark the post that stands there
   * @param alongIn from the datum, level
   * @param onGroundIn the same with the tape on falling ground
   * @param acrossIn from row A
   * @param digIn hole below its own ground
   * @param bottomBelowLineIn bottom of the hole below the level line
   * @param footBelowLineIn underside of the post below the level line, negative above it
   * @param topOverLineIn top of the post at its middle over the level line
   * @param lengthIn of the post when its top is cut
   */
  public record PostMark(
      String name,
      String mark,
      double alongIn,
      double onGroundIn,
      double acrossIn,
      double digIn,
      double bottomBelowLineIn,
      double footBelowLineIn,
      double topOverLineIn,
      double lengthIn) {}

  /** Across each bay in turn, one way. */
  public List<Diagonal> bayDiagonals() {
    int inBays = diagonals.size() == 2 ? 2 : diagonals.size() - 2;
    return IntStream.iterate(0, place -> place < inBays, place -> place + 2)
        .mapToObj(diagonals::get)
        .toList();
  }

  /** Across the whole of several bays, one way. */
  public Optional<Diagonal> overallDiagonal() {
    return diagonals.size() == 2
        ? Optional.empty()
        : Optional.of(diagonals.get(diagonals.size() - 2));
  }

  /** A distance from the middle of one post to that of another, level. */
  public record Diagonal(String from, String to, double lengthIn) {}

  /**
   * @param line what is marked
   * @param what each mark is
   * @param fromIn where the tape is held, from the middle of the first post; what lies before it is
   *     negative
   * @param atIn the marks, from where the tape is held
   */
  public record Running(String line, String what, double fromIn, List<Double> atIn) {
    public Running {
      atIn = List.copyOf(atIn);
    }
  }

  /**
   * @param where between which posts
   * @param lengthIn clear, face to face
   * @param count how many such gaps
   */
  public record Spacer(String where, double lengthIn, int count) {}

  /**
   * A line of timber along a row.
   *
   * @param line which row, and which side of its posts
   * @param pieces marks from the first post on; turned ones have their first end towards the last
   *     post
   * @param turned true where one of them is
   */
  public record HeaderLine(String line, List<String> pieces, boolean turned) {
    public HeaderLine {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Something at a post, the same in both rows.
   *
   * @param posts such as A2, B2
   * @param what in words
   * @param measures named lengths, in the order in which they are read
   */
  public record Spot(String posts, String what, List<Named> measures) {
    public Spot {
      measures = List.copyOf(measures);
    }
  }

  /** A length with its name. */
  public record Named(String name, double lengthIn) {}

  /**
   * @param lineOverDatumIn the level line over the ground at A1
   * @param fallIn fall of the ground from the first post to the last
   * @param acrossIn fall of the ground from row A to row B, negative where row B stands higher
   * @param holeIn width of every hole
   * @param bedIn gravel, and the pad where there is one, under every post
   * @param padIn thickness of the pad in it
   * @param batterIn distance of the batter boards outside the corners
   * @param topsSlope true where the tops of the posts follow the ground
   */
  public record Ground(
      double lineOverDatumIn,
      double fallIn,
      double acrossIn,
      double holeIn,
      double bedIn,
      double padIn,
      double batterIn,
      boolean topsSlope) {}

  /**
   * @param what is held to it
   * @param withinIn greatest difference
   * @param overIn length over which it is measured, 0 where it is over all
   */
  public record Tolerance(String what, double withinIn, double overIn, Source source) {}
}
