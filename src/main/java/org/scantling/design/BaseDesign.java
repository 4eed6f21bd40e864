package org.scantling.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A fixed structure: the proven base design, or a design that is to be checked.
 *
 * @param title what it is called
 * @param proven where and since when it has stood, if it has
 * @param posts the uprights and how they stand
 * @param headers the timbers along the rows
 * @param crossbeams the timbers across the walk
 * @param sidePanels rails and pickets between the posts of a row
 * @param braces knee braces
 * @param materials species and grades, where the file says them
 */
public record BaseDesign(
    String title,
    Optional<Proven> proven,
    Posts posts,
    Headers headers,
    Crossbeams crossbeams,
    Optional<SidePanels> sidePanels,
    Optional<Braces> braces,
    Optional<Site.Materials> materials) {

  /** A design whose file says nothing of its timber but sizes. */
  public BaseDesign(
      String title,
      Optional<Proven> proven,
      Posts posts,
      Headers headers,
      Crossbeams crossbeams,
      Optional<SidePanels> sidePanels,
      Optional<Braces> braces) {
    this(title, proven, posts, headers, crossbeams, sidePanels, braces, Optional.empty());
  }

  /**
   * The same design with the side panels and the braces of another, where its file does not speak
   * of them.
   *
   * @param unsaid paths that the file leaves out
   */
  public BaseDesign completedBy(BaseDesign other, List<String> unsaid) {
    return new BaseDesign(
        title,
        proven,
        posts,
        headers,
        crossbeams,
        unsaid.contains("side-panels") ? other.sidePanels() : sidePanels,
        unsaid.contains("braces") ? other.braces() : braces,
        materials);
  }

  /** The same design with holes that are still to be dug as deep and as wide as it takes. */
  public BaseDesign withoutHoles() {
    return with(
        new Posts(
            posts.size(),
            posts.rowSpacingIn(),
            posts.along(),
            posts.heightIn(),
            0,
            posts.footing(),
            posts.backfill(),
            OptionalDouble.empty()));
  }

  /** The same design on other posts. */
  public BaseDesign with(Posts other) {
    return new BaseDesign(title, proven, other, headers, crossbeams, sidePanels, braces, materials);
  }

  /** The same design with other crossbeams. */
  public BaseDesign with(Crossbeams other) {
    return new BaseDesign(title, proven, posts, headers, other, sidePanels, braces, materials);
  }

  /**
   * Where the base has stood.
   *
   * @param builtYear first year of service
   * @param climate the climate of that place
   * @param soil soil class of that place
   * @param vine the climber it has carried
   * @param slopePercent fall of the ground there, from the first post to the last
   * @param record what happened to it since
   */
  public record Proven(
      int builtYear,
      Site.Climate climate,
      Optional<String> soil,
      Optional<String> vine,
      double slopePercent,
      List<Event> record) {
    public Proven {
      record = List.copyOf(record);
    }

    /** Of which nothing is told since it was built. */
    public Proven(
        int builtYear,
        Site.Climate climate,
        Optional<String> soil,
        Optional<String> vine,
        double slopePercent) {
      this(builtYear, climate, soil, vine, slopePercent, List.of());
    }

    /** On level ground. */
    public Proven(
        int builtYear, Site.Climate climate, Optional<String> soil, Optional<String> vine) {
      this(builtYear, climate, soil, vine, 0);
    }
  }

  /**
   * One thing that happened to a structure that stands.
   *
   * @param date the year, the month or the day: 2012, 2012-10 or 2012-10-29
   * @param kind storm, snow, inspection or repair
   * @param what what it was, or what was found or done
   * @param photo name of a photograph of it
   */
  public record Event(String date, String kind, String what, Optional<String> photo) {}

  /**
   * @param size nominal size, such as 4x4
   * @param rowSpacingIn centre to centre of the rows
   * @param along the bays along the walk
   * @param heightIn from finished ground to the top of the post
   * @param embedmentIn depth below finished ground
   * @param footing embedded, concrete or bracket
   * @param backfill tamped-soil, gravel or concrete, where given
   * @param holeDiameterIn width of the hole, where given
   */
  public record Posts(
      String size,
      double rowSpacingIn,
      Bays along,
      double heightIn,
      double embedmentIn,
      String footing,
      Optional<String> backfill,
      OptionalDouble holeDiameterIn) {
    /** So many equal bays. */
    public Posts(
        String size,
        double rowSpacingIn,
        double bayIn,
        int bays,
        double heightIn,
        double embedmentIn,
        String footing,
        Optional<String> backfill,
        OptionalDouble holeDiameterIn) {
      this(
          size,
          rowSpacingIn,
          Bays.of(bays, bayIn),
          heightIn,
          embedmentIn,
          footing,
          backfill,
          holeDiameterIn);
    }

    /** The longest bay: all of them, where they are equal. */
    public double bayIn() {
      return along.longestIn();
    }

    public int bays() {
      return along.count();
    }
  }

  /**
   * @param style on-top or paired
   * @param size nominal size of one ply
   * @param overhangIn past the outer face of the end post
   * @param notchIn depth of the recess that seats it on the post
   */
  public record Headers(String style, String size, double overhangIn, double notchIn) {}

  /**
   * @param size nominal size
   * @param count over the whole structure, two side by side counted once
   * @param overhangIn past the outer face of the header
   * @param notchIn depth of the recess over the header
   * @param endCut the shape of the tails
   * @param atPosts single, or doubled where two lie side by side at each row of posts
   */
  public record Crossbeams(
      String size,
      int count,
      double overhangIn,
      double notchIn,
      Optional<EndCut> endCut,
      String atPosts) {
    /** One at every place. */
    public Crossbeams(
        String size, int count, double overhangIn, double notchIn, Optional<EndCut> endCut) {
      this(size, count, overhangIn, notchIn, endCut, WayOfBuilding.SINGLE_AT_POSTS);
    }
  }

  /**
   * @param kind slant, plumb or curve
   * @param dropIn how far the cut drops from the top edge
   * @param runIn how far it runs along the timber
   */
  public record EndCut(String kind, double dropIn, double runIn) {}

  /**
   * @param rail nominal size of the level pieces
   * @param railHeightIn height of the rail above ground
   * @param pickets upright pieces a panel
   */
  public record SidePanels(String rail, double railHeightIn, int pickets) {}

  /**
   * @param size nominal size
   * @param legIn length along the post and along the header or crossbeam
   */
  public record Braces(String size, double legIn) {}
}
