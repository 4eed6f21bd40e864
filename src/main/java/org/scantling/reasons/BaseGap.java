package org.scantling.reasons;

import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * In what two bases for one site are not alike, and by how much.
 *
 * @param base the one
 * @param than the other
 * @param what the row of base-changes.csv that counts it
 * @param place how early that row weighs, from 1
 * @param amount what the row comes to for the one; less is nearer to the site
 * @param thanAmount the same for the other
 * @param unit of both
 */
public record BaseGap(
    String base, String than, String what, int place, double amount, double thanAmount, Unit unit)
    implements Fact {

  /** Both with their amounts; where the other has nothing of it, none is said instead. */
  Evidence evidence() {
    Evidence both =
        Evidence.saw("design", base).and("rival", than).and("more", new Measure(amount, unit));
    return thanAmount > 0 ? both.and("less", new Measure(thanAmount, unit)) : both.and("none", "");
  }

  @Override
  public String reference() {
    return Question.BASE.id() + "=" + base + " " + what + " " + than;
  }
}
