package org.scantling.shop;

import java.util.List;
import org.scantling.sayings.Sayings;

/**
 * What a piece is cut to.
 *
 * @param role post, header, crossbeam, blocking, rail, picket, brace or block
 * @param size nominal size
 * @param breadthIn dressed thickness
 * @param depthIn dressed width, or what is left of it where a block is ripped
 * @param lengthIn finished, over the long points of its ends
 * @param spareIn left on when it is cut, to be taken off where it stands
 * @param ends what the first and the last end are called
 * @param first how the first end is cut
 * @param last how the last end is cut
 * @param recesses notches and housings, from the first end on
 * @param bores holes, from the first end on
 */
public record Shape(
    String role,
    String size,
    double breadthIn,
    double depthIn,
    double lengthIn,
    double spareIn,
    Ends ends,
    EndCut first,
    EndCut last,
    List<Recess> recesses,
    List<Bore> bores) {
  public Shape {
    recesses = List.copyOf(recesses);
    bores = List.copyOf(bores);
  }

  /**
   * What the ends are called.
   *
   * @param first the end that distances are measured from
   * @param last the other
   */
  public record Ends(String first, String last) {
    /** By the names of their sayings. */
    static Ends named(String first, String last) {
      Sayings sayings = Sayings.of("pieces");
      return new Ends(sayings.say("end." + first), sayings.say("end." + last));
    }
  }

  /** Length to be cut from the stick. */
  public double cutIn() {
    return lengthIn + spareIn;
  }
}
