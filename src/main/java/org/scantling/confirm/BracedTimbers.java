package org.scantling.confirm;

/**
 * The timbers of a braced walk.
 *
 * @param post the posts, square
 * @param header the timbers along the rows
 * @param crossbeam the timbers across the walk at a row of posts: one, or two side by side
 * @param brace the knee braces, the same both ways
 * @param legIn length of a brace along the post and along the beam, between centre lines
 * @param fallRatio of the headers over their length in plan
 */
public record BracedTimbers(
    Material post,
    Material header,
    Material crossbeam,
    Material brace,
    double legIn,
    double fallRatio) {
  /** Under level headers. */
  public BracedTimbers(
      Material post, Material header, Material crossbeam, Material brace, double legIn) {
    this(post, header, crossbeam, brace, legIn, 0);
  }

  public BracedTimbers {
    if (!(legIn > 0) || Double.isInfinite(legIn)) {
      throw new IllegalArgumentException("brace leg " + legIn + " in must be above 0 and finite");
    }
  }

  /** Length of a brace at 45 degrees between the centres of its bolts. */
  double braceLengthIn() {
    return legIn * Math.sqrt(2);
  }
}
