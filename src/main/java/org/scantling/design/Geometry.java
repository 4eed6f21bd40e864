package org.scantling.design;

import java.util.List;

/**
 * Where everything stands: a walk of bays between two rows, seen from the datum post. Lengths in
 * inches, along the walk from the centre of the first post, across it from the centre of the near
 * row, upward from finished ground.
 *
 * @param plan rows and bays
 * @param posts uprights
 * @param headers timbers along the rows
 * @param crossbeams timbers across the walk
 */
public record Geometry(Plan plan, Posts posts, Headers headers, Crossbeams crossbeams) {

  /**
   * @param rowSpacingIn centre to centre of the rows
   * @param along the bays along the walk
   */
  public record Plan(double rowSpacingIn, Bays along) {
    /** So many equal bays. */
    public Plan(double rowSpacingIn, double bayIn, int bays) {
      this(rowSpacingIn, Bays.of(bays, bayIn));
    }

    public int bays() {
      return along.count();
    }

    /** The longest bay: all of them, where they are equal. */
    public double bayIn() {
      return along.longestIn();
    }
  }

  /**
   * @param breadthIn dressed breadth, square
   * @param heightIn ground to top
   */
  public record Posts(double breadthIn, double heightIn) {}

  /**
   * @param paired true for boards bolted to both sides of the posts, false for a timber on top
   * @param breadthIn dressed thickness of one ply
   * @param depthIn dressed depth
   * @param overhangIn past the outer face of the end post
   * @param notchIn recess over the post
   */
  public record Headers(
      boolean paired, double breadthIn, double depthIn, double overhangIn, double notchIn) {
    /** Boards side by side. */
    public int plies() {
      return paired ? 2 : 1;
    }
  }

  /**
   * @param perBay equal spaces between crossbeams in a bay, the longest where they are unequal
   * @param breadthIn dressed thickness
   * @param depthIn dressed depth
   * @param overhangIn past the outer face of the header
   * @param notchIn recess over the header
   * @param endMarginIn least distance from the centre of the last crossbeam to the end of the
   *     header
   * @param blocked true where a block stands between neighbours over each header
   * @param doubled true where two lie side by side at each row of posts, the others single
   */
  public record Crossbeams(
      int perBay,
      double breadthIn,
      double depthIn,
      double overhangIn,
      double notchIn,
      double endMarginIn,
      boolean blocked,
      boolean doubled) {
    private static final int PAIR = 2;

    /** One at every place, which stand by their own fastenings. */
    public Crossbeams(
        int perBay,
        double breadthIn,
        double depthIn,
        double overhangIn,
        double notchIn,
        double endMarginIn) {
      this(perBay, breadthIn, depthIn, overhangIn, notchIn, endMarginIn, false, false);
    }

    /** Timbers side by side at each row of posts. */
    public int pliesAtPosts() {
      return doubled ? PAIR : 1;
    }

    /** All timbers side by side at a row of posts. */
    public double breadthAtPostsIn() {
      return pliesAtPosts() * breadthIn;
    }

    /**
     * Least distance from its centre to the end of the header, all of its breadth on the header.
     */
    double leastToEndIn() {
      return Math.max(endMarginIn, breadthIn / 2);
    }

    /** Depth of a block, which stands on the header and ends flush with the crossbeams. */
    public double blockDepthIn() {
      return depthIn - notchIn;
    }
  }

  /** The same over another number of equal bays. */
  public Geometry inBays(int bays) {
    return new Geometry(
        new Plan(plan.rowSpacingIn(), plan.bayIn(), bays), posts, headers, crossbeams);
  }

  /** First to last post, centre to centre. */
  public double lengthIn() {
    return plan.along().overallIn();
  }

  /** Free width between the inner faces of the rows. */
  public double clearWidthIn() {
    return plan.rowSpacingIn() - posts.breadthIn();
  }

  /** Corner to corner of the longest bay, between post centres. */
  public double bayDiagonalIn() {
    return Math.hypot(plan.bayIn(), plan.rowSpacingIn());
  }

  /** Corner to corner of the whole, between post centres. */
  public double overallDiagonalIn() {
    return Math.hypot(lengthIn(), plan.rowSpacingIn());
  }

  public int postCount() {
    return 2 * (plan.bays() + 1);
  }

  /** From the centre of an end post to the end of the header. */
  public double headerTailIn() {
    return posts.breadthIn() / 2 + headers.overhangIn();
  }

  public double headerLengthIn() {
    return lengthIn() + 2 * headerTailIn();
  }

  /** Outer face to outer face of what carries the crossbeams on one row. */
  public double seatBreadthIn() {
    return headers.paired() ? posts.breadthIn() + 2 * headers.breadthIn() : headers.breadthIn();
  }

  /** From the centre of a row to the tip of a crossbeam. */
  public double crossbeamTailIn() {
    return seatBreadthIn() / 2 + crossbeams.overhangIn();
  }

  public double crossbeamLengthIn() {
    return plan.rowSpacingIn() + 2 * crossbeamTailIn();
  }

  private CrossbeamLine line(int onTail) {
    return new CrossbeamLine(plan.along(), crossbeams.perBay(), onTail);
  }

  /** From crossbeam to crossbeam, where it is most. */
  public double crossbeamSpacingIn() {
    return line(0).spacingIn();
  }

  /** The same in one bay. */
  public double crossbeamSpacingIn(int bay) {
    return line(0).spacingIn(bay);
  }

  /** From crossbeam to crossbeam, where it is least. */
  public double narrowestSpacingIn() {
    double least = crossbeamSpacingIn(0);
    for (int bay = 1; bay < plan.bays() && !plan.along().even(); bay++) {
      least = Math.min(least, crossbeamSpacingIn(bay));
    }
    return least;
  }

  /** Spaces between the crossbeams of a bay. */
  public int spacesIn(int bay) {
    return line(0).spacesIn(bay);
  }

  /** Breadth of timber over one spacing, taken over the bay with the fewest crossbeams. */
  public double breadthPerSpacingIn() {
    return crossbeams.breadthIn()
        + (crossbeams.breadthAtPostsIn() - crossbeams.breadthIn()) / line(0).fewestSpaces();
  }

  /** From face to face of neighbouring crossbeams: what a block between them is long. */
  public double crossbeamGapIn() {
    return crossbeamSpacingIn() - crossbeams.breadthIn();
  }

  /** The same where it is least, beside those at the posts. */
  public double narrowestGapIn() {
    double least = narrowestGapIn(0);
    for (int bay = 1; bay < plan.bays() && !plan.along().even(); bay++) {
      least = Math.min(least, narrowestGapIn(bay));
    }
    return least;
  }

  private double narrowestGapIn(int bay) {
    double besideIn = spacesIn(bay) > 1 ? crossbeams.breadthIn() : crossbeams.breadthAtPostsIn();
    return crossbeamSpacingIn(bay) - (crossbeams.breadthAtPostsIn() + besideIn) / 2;
  }

  /** Blocks between crossbeams on both headers; none where they stand by themselves. */
  public int blockCount() {
    return crossbeams.blocked() ? 2 * (crossbeamCount() - 1) : 0;
  }

  /** Crossbeams past each end post that still find a seat on the header. */
  public int crossbeamsOnTail() {
    return crossbeamsOnTail(headers.overhangIn());
  }

  /** The same were the headers to run out that far past the end posts. */
  public int crossbeamsOnTail(double overhangIn) {
    double reachIn = posts.breadthIn() / 2 + overhangIn - crossbeams.leastToEndIn();
    return (int) Math.max(0, Math.floor(reachIn / crossbeamSpacingIn() + 1e-9));
  }

  public int crossbeamCount() {
    return line(crossbeamsOnTail()).count();
  }

  /** Timbers across the walk, both of each pair counted. */
  public int crossbeamPieceCount() {
    return crossbeamCount() + (crossbeams.pliesAtPosts() - 1) * (plan.bays() + 1);
  }

  /**
   * Centres of the crossbeams along the walk, from the centre of the first post; the first may be
   * negative.
   */
  public List<Double> crossbeamsAtIn() {
    return line(crossbeamsOnTail()).placesIn();
  }

  /** The same with what lies on each. */
  public List<CrossbeamPlace> crossbeamPlaces() {
    return line(crossbeamsOnTail()).places();
  }

  /** Top of the headers, where the crossbeams sit. */
  public double headerTopIn() {
    return headers.paired()
        ? posts.heightIn()
        : posts.heightIn() - headers.notchIn() + headers.depthIn();
  }

  /** Bottom edge of the crossbeams, which are let down over the headers by their notch. */
  public double crossbeamUndersideIn() {
    return headerTopIn() - crossbeams.notchIn();
  }

  /**
   * Free height under the lowest timber over the way. The inner board of a paired header hangs past
   * the post's face into the way; a header on top of its posts stays between their faces.
   */
  public double headroomIn() {
    return headers.paired()
        ? Math.min(crossbeamUndersideIn(), headerTopIn() - headers.depthIn())
        : crossbeamUndersideIn();
  }

  /** Highest point of the structure. */
  public double overallHeightIn() {
    return crossbeamUndersideIn() + crossbeams.depthIn();
  }
}
