package org.scantling.drawing;

import java.util.List;
import java.util.OptionalInt;
import org.scantling.shop.Bore;
import org.scantling.shop.Recess;
import org.scantling.shop.Shape;

/**
 * The end of a header at a post.
 *
 * @param atFirst true where it is the end that distances are measured from
 * @param postAtIn middle of the post, from the first end
 */
record HeaderEnd(Subject.Lying lying, boolean atFirst, double postAtIn) {

  /** The end nearest to a place along the walk. */
  static HeaderEnd of(Subject.Lying lying, double alongIn) {
    double firstIn = lying.place().first().alongIn();
    double lastIn = lying.place().last().alongIn();
    double share = (alongIn - firstIn) / (lastIn - firstIn);
    double postAtIn = share * lying.place().first().toIn(lying.place().last());
    return new HeaderEnd(
        lying, Math.abs(alongIn - firstIn) <= Math.abs(alongIn - lastIn), postAtIn);
  }

  private Shape shape() {
    return lying.shape();
  }

  /** Where the end lies, from the first end. */
  double endAtIn() {
    return atFirst ? 0 : shape().lengthIn();
  }

  /** How far a place of the piece lies from this end. */
  double fromEndIn(double atIn) {
    return Math.abs(atIn - endAtIn());
  }

  /** The word for it in the name of a figure. */
  String word() {
    return atFirst ? "first" : "last";
  }

  /** The holes at the post. */
  List<Bore> bores(double reachIn) {
    return shape().bores().stream()
        .filter(each -> Math.abs(each.atIn() - postAtIn) <= reachIn)
        .toList();
  }

  int indexOf(Bore bore) {
    return shape().bores().indexOf(bore);
  }

  /** The notch over the post, by its place in the list. */
  OptionalInt notch() {
    for (int i = 0; i < shape().recesses().size(); i++) {
      Recess each = shape().recesses().get(i);
      if (each.fromIn() <= postAtIn + 1 && each.toIn() >= postAtIn - 1) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
