package org.scantling.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.scantling.design.Site;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.tables.DefaultWord;
import org.scantling.tables.PriceList;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** Everything between a finished proposal and the first hole. */
public final class Lists {
  private final Built built;
  private final Pieces pieces;
  private final Optional<PriceList> prices;
  private @Nullable Climbers climbers;
  private @Nullable List<TimberPlan> timber;
  private @Nullable Buying buying;

  private Lists(Built built, Optional<PriceList> prices) {
    this.built = built;
    this.prices = prices;
    this.pieces = Pieces.of(built);
  }

  /**
   * The lists of a proposal.
   *
   * @param site the site it was made for
   * @param yard the yard's own lengths and prices, where there are some
   * @throws IllegalArgumentException when the proposal holds no structure
   */
  public static Lists of(Proposal proposal, Site site, Tables tables, Optional<Yard> yard) {
    return new Lists(new Built(proposal, site, tables, yard), Optional.empty());
  }

  static Lists of(Built built) {
    return new Lists(built, Optional.empty());
  }

  /** The same with what things cost. */
  public Lists priced(Optional<PriceList> list) {
    return new Lists(built, list);
  }

  /** True where a list says what things cost. */
  boolean priced() {
    return prices.isPresent();
  }

  public String title() {
    return built.title();
  }

  /** How metric lengths of a list are rounded, where the list has lengths to go by. */
  Optional<String> rounding(ListKind kind) {
    return built.tables().defaults().find("rounding." + kind.word()).map(DefaultWord::word);
  }

  /** The pieces by their marks. */
  public Pieces pieces() {
    return pieces;
  }

  /**
   * Lag screws down through headers.
   *
   * @param deepIn how deep their heads are sunk
   * @param wideIn bit for the heads
   * @param leadIn hole for the thread in the post
   */
  record SunkHeads(double deepIn, double wideIn, double leadIn) {}

  /** How the holes on the tops of headers are bored, where there are any. */
  Optional<SunkHeads> sunkHeads() {
    return pieces.of("header").stream()
        .flatMap(piece -> piece.shape().bores().stream())
        .filter(bore -> bore.face().equals("top"))
        .findFirst()
        .map(
            bore ->
                new SunkHeads(
                    share("lag.head-sunk-share", bore),
                    share("lag.head-wide-share", bore),
                    share("lag.lead-share", bore)));
  }

  private double share(String row, Bore bore) {
    return built.tape().nearest(built.shop(row) * bore.diameterIn());
  }

  /** Species and grade of the pieces of a role. */
  PieceTimber timber(String role) {
    return built.timber(role);
  }

  /** Of what timber the pieces of a role are, where not everything is of the same. */
  Optional<String> timberNamed(String role) {
    return built.mixed() ? Optional.of(built.timber(role).words()) : Optional.empty();
  }

  /** True where both ends of a piece run out into the open, not over a post to meet another. */
  boolean endsFree(Piece piece) {
    return !piece.shape().role().equals("header")
        || (built.headerBays().size() == 1 && !built.top().stepped());
  }

  /** Breadth of the posts. */
  double postIn() {
    return built.geometry().posts().breadthIn();
  }

  /** Where posts stand on piers: how high over the ground their feet are. */
  OptionalDouble footOverGroundIn() {
    return built.inTheGround()
        ? OptionalDouble.empty()
        : OptionalDouble.of(-built.top().belowGroundIn(0, 0));
  }

  /** True where posts stand on brackets, and not in the ground or on post bases. */
  boolean onBrackets() {
    return built.onBrackets();
  }

  /** True where rails enter the posts from one side, so that left and right must be told. */
  boolean housedFromOneSide() {
    return new Posts(built).openToOneSide();
  }

  /** Pieces that are marked and cut together. */
  public List<Gang> gangs() {
    return Gang.of(pieces).stream().filter(gang -> !waits(gang)).toList();
  }

  /** Posts whose housings are marked once they stand have nothing to be cut together. */
  private boolean waits(Gang gang) {
    return built.railsFromLine()
        && pieces.of("post").stream().anyMatch(post -> gang.marks().contains(post.mark()));
  }

  /** True where housings are marked from the level line, on every post at another height. */
  boolean railsByThePost() {
    return built.railsFromLine() && !built.railsLevel();
  }

  /** How far all rails stand over the level line, where their housings are marked from it. */
  OptionalDouble railsOverLineIn() {
    return built.railsFromLine() && built.railsLevel()
        ? OptionalDouble.of(new RailLine(built, 0, 0).overLineIn(built))
        : OptionalDouble.empty();
  }

  /**
   * How the timber is sawn: worked out once, when it is first asked for, since it takes longest.
   */
  List<TimberPlan> timber() {
    if (timber == null) {
      timber = Timbers.of(built, pieces);
    }
    return timber;
  }

  public Buying buying() {
    if (buying == null) {
      Buying unpriced = new Purchase(built, pieces, climbers()).buying(timber());
      buying =
          prices
              .map(list -> unpriced.with(new LinePrices(list, built).priced(unpriced.lines())))
              .orElse(unpriced);
    }
    return buying;
  }

  /** How much of it there is to buy, dig and lift. */
  public JobSize size() {
    return JobSize.of(built, pieces);
  }

  /** How long it takes. */
  public WorkHours work() {
    return WorkHours.of(built, pieces, climbers());
  }

  /**
   * What it costs and how long it takes; without a list of prices nothing is priced but the timber
   * of a yard that has prices.
   *
   * @throws org.scantling.tables.YardException where a price is for a unit that nothing is bought
   *     by
   */
  public Estimate estimate() {
    Buying bought = new Purchase(built, pieces, climbers()).buying(timber());
    PriceList list = prices.orElse(new PriceList("", "", List.of()));
    WorkHours work = work();
    return new Estimate(
        title(),
        list.name(),
        Costing.of(built, bought, climbers(), work, list),
        work,
        new Estimate.Outline(
            built.geometry().lengthIn(),
            built.geometry().clearWidthIn(),
            built.geometry().headroomIn(),
            built.geometry().postCount(),
            climbers().plants().size()),
        new Estimate.Rounding(
            BigDecimal.valueOf(built.shop("hours.step")),
            BigDecimal.valueOf(built.shop("price.volume-step"))));
  }

  public SetOut setOut() {
    return new SettingOut(built, pieces).setOut();
  }

  /** The order of work, its numbers in those units. */
  public WorkOrder order(UnitSystem units) {
    return new WorkOrderBuilder(built, pieces, climbers())
        .order(new StepWords(built, pieces, climbers(), units));
  }

  /** What keeps it standing, its numbers in those units. */
  public Upkeep upkeep(UnitSystem units) {
    return new WorkOrderBuilder(built, pieces, climbers())
        .upkeep(new StepWords(built, pieces, climbers(), units));
  }

  public Climbers climbers() {
    if (climbers == null) {
      climbers = new Planting(built).climbers();
    }
    return climbers;
  }
}
