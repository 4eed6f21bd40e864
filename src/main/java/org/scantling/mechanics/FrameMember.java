package org.scantling.mechanics;

/**
 * A straight piece between two nodes of a frame.
 *
 * <p>Its own axes: x runs from the start node to the end node, y points to the left of that way.
 *
 * @param name how loads and messages call it, unique in the frame
 * @param startNode name of the node it starts at
 * @param endNode name of the node it ends at
 * @param stiffness how stiff it is
 * @param hinges which ends pass on no moment; {@link Hinges#BOTH} makes a brace or tie
 */
public record FrameMember(
    String name, String startNode, String endNode, MemberStiffness stiffness, Hinges hinges) {

  /** A member joined rigidly at both ends. */
  public static FrameMember rigid(
      String name, String startNode, String endNode, MemberStiffness stiffness) {
    return new FrameMember(name, startNode, endNode, stiffness, Hinges.NONE);
  }

  /** A brace or tie: hinged at both ends. */
  public static FrameMember brace(
      String name, String startNode, String endNode, MemberStiffness stiffness) {
    return new FrameMember(name, startNode, endNode, stiffness, Hinges.BOTH);
  }
}
