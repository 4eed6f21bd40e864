package org.scantling.design;

import java.util.List;
import java.util.Optional;

/**
 * A resized structure: where everything stands, every kind of member, and the footings.
 *
 * @param geometry places and lengths
 * @param top how the tops of the posts run over the ground
 * @param headers the headers as they are cut
 * @param members pieces of one role and one length an entry
 * @param footings the holes
 * @param bolts where the bolts of paired headers sit; empty where headers lie on the posts
 * @param braces where the knee braces lie, if there are any
 */
public record Structure(
    Geometry geometry,
    TopLine top,
    CutHeaders headers,
    List<Member> members,
    Footings footings,
    Optional<Bolts> bolts,
    Optional<KneeBraces> braces) {
  public Structure {
    members = List.copyOf(members);
  }

  /**
   * The members of one role that are alike.
   *
   * @param role post, header, crossbeam, blocking, rail, picket or brace
   * @param size nominal size of one ply
   * @param plies boards side by side
   * @param breadthIn dressed thickness of one ply
   * @param depthIn dressed width, or what a block is ripped to
   * @param lengthIn length as built
   * @param count pieces
   * @param species species key
   * @param grade grade key
   * @param notches recesses, the same in every piece
   */
  public record Member(
      String role,
      String size,
      int plies,
      double breadthIn,
      double depthIn,
      double lengthIn,
      int count,
      String species,
      String grade,
      List<Notch> notches) {
    public Member {
      notches = List.copyOf(notches);
    }
  }

  /**
   * The bolts at one crossing of paired headers and a post, one above the other.
   *
   * @param fromTopIn from the top of the post to the upper bolt
   * @param apartIn from the upper to the lower
   * @param rowsApartIn between two such rows side by side; 0 for one
   */
  public record Bolts(double fromTopIn, double apartIn, double rowsApartIn) {}

  /**
   * @param face underside, top, inner or outer
   * @param atIn centre of the recess from the end of the piece, or from the foot of a post
   * @param widthIn along the piece
   * @param depthIn into the piece
   */
  public record Notch(String face, double atIn, double widthIn, double depthIn) {}

  /**
   * @param kind embedded or bracket
   * @param depthIn below finished ground
   * @param diameterIn width of the hole
   * @param count holes
   * @param backfill tamped-soil, gravel or concrete
   * @param onRock true where the holes stop on solid rock, with nothing under the foot
   */
  public record Footings(
      String kind, double depthIn, double diameterIn, int count, String backfill, boolean onRock) {
    /** A flat stone or pad lies under every post in the ground that no concrete holds. */
    public boolean padded() {
      return kind.equals(WayOfBuilding.EMBEDDED) && !backfill.equals(WayOfBuilding.CONCRETE);
    }
  }
}
