package org.scantling.reasons;

/** One possible answer to a question that has options, with the numbers rules judge it by. */
public sealed interface Candidate extends Fact {
  Question question();

  String option();

  @Override
  default String reference() {
    return question().id() + "=" + option();
  }

  /**
   * A size from the stock table.
   *
   * @param plies boards side by side
   * @param breadthIn dressed thickness of one ply
   * @param depthIn dressed width, standing upright
   */
  record Size(Question question, String option, int plies, double breadthIn, double depthIn)
      implements Candidate {
    /** The greater of its dimensions over those of another size; above 1 where it is larger. */
    public double overRatio(double otherBreadthIn, double otherDepthIn) {
      return Math.max(breadthIn / otherBreadthIn, depthIn / otherDepthIn);
    }
  }

  /**
   * A number of parts, alike unless something is in the way.
   *
   * @param count how many parts
   * @param pitchIn length of one part, the longest
   * @param shortestIn length of the shortest part
   * @param stretchRatio pitch over the proven pitch
   */
  record Parts(
      Question question,
      String option,
      int count,
      double pitchIn,
      double shortestIn,
      double stretchRatio)
      implements Candidate {
    /** Parts that are alike. */
    public static Parts alike(Question question, int count, double pitchIn, double stretchRatio) {
      return new Parts(question, Integer.toString(count), count, pitchIn, pitchIn, stretchRatio);
    }

    /**
     * True of parts that are longer than the proven ones by no more than that, or nearer to them in
     * proportion than one more part would make them: between n and n + 1 parts the proven pitch
     * lies nearer to the longer ones up to a stretch of √((n + 1) / n).
     */
    public boolean keepsRhythm(double mostRatio) {
      return stretchRatio <= mostRatio || stretchRatio <= Math.sqrt((count + 1.0) / count);
    }
  }

  /**
   * A size for which the standard has no strength in the species and grade of its role, or a grade
   * in which it has none for the role's size.
   */
  record Ungraded(Question question, String option, String species, String grade)
      implements Candidate {}

  /**
   * A header in one piece, or in pieces that meet over posts.
   *
   * @param option bays of each piece from the first post on, such as 3+2+3
   * @param pieceCount how many pieces
   * @param longestIn the longest of them
   * @param boughtIn the shortest lengths sold that hold each, together
   * @param sharedCount posts over which both boards of a pair would be cut, one of them turned
   *     round
   */
  record Cut(
      Question question,
      String option,
      int pieceCount,
      double longestIn,
      double boughtIn,
      int sharedCount)
      implements Candidate {}

  /** A bare word. */
  record Plain(Question question, String option) implements Candidate {}
}
