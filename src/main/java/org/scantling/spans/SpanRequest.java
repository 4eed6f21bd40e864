package org.scantling.spans;

import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * Which spans are wanted.
 *
 * @param sizes down the side
 * @param steps across the top: spacings of crossbeams, widths that a header carries, areas that a
 *     post carries, or heights of a post
 * @param timbers one table each
 */
public record SpanRequest(
    Role role,
    List<TimberSize> sizes,
    List<Measure> steps,
    List<TimberGrade> timbers,
    Assumptions assumptions) {
  public SpanRequest {
    sizes = List.copyOf(sizes);
    steps = List.copyOf(steps);
    timbers = List.copyOf(timbers);
  }

  /** True for posts of stated heights, whose greatest area is looked for. */
  public boolean byHeight() {
    return role == Role.POSTS && steps.get(0).unit() == Unit.INCH;
  }
}
