package org.scantling.shop;

import java.util.List;
import java.util.Optional;
import org.scantling.design.Site;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** Everything between a finished proposal and the first hole. */
public final class Lists {
  private final Built built;
  private final Pieces pieces;
  private final Climbers climbers;
  private final Optional<Yard> yard;
  private Buying buying;

  private Lists(Built built, Optional<Yard> yard) {
    this.built = built;
    this.pieces = Pieces.of(built);
    this.climbers = new Planting(built).climbers();
    this.yard = yard;
  }

  /**
   * The lists of a proposal.
   *
   * @param site the site it was made for
   * @param yard the yard's own lengths and prices, where there are some
   * @throws IllegalArgumentException when the proposal holds no structure
   */
  public static Lists of(Proposal proposal, Site site, Tables tables, Optional<Yard> yard) {
    return new Lists(new Built(proposal, site, tables), yard);
  }

  public String title() {
    return built.title();
  }

  /** The pieces by their marks. */
  public Pieces pieces() {
    return pieces;
  }

  /** Pieces that are marked and cut together. */
  public List<Gang> gangs() {
    return Gang.of(pieces);
  }

  /** Worked out once, when it is first asked for: sawing takes longest. */
  public Buying buying() {
    if (buying == null) {
      buying = new Purchase(built, pieces, climbers, yard).buying();
    }
    return buying;
  }

  public SetOut setOut() {
    return new SettingOut(built).setOut();
  }

  /** The order of work, its numbers in those units. */
  public WorkOrder order(UnitSystem units) {
    return new Working(built, pieces, climbers)
        .order(new StepWords(built, pieces, climbers, units));
  }

  public Climbers climbers() {
    return climbers;
  }
}
