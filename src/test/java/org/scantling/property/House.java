package org.scantling.property;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** The tables, the rules and the two bases that tests share; each is read once. */
public final class House {
  public static final Tables TABLES = Tables.load();
  public static final RuleBase RULES = RuleBase.load();
  private static final Engine ENGINE = new Engine(RULES, TABLES);

  private House() {}

  static Engine engine() {
    return ENGINE;
  }

  public static Proposal propose(Wish wish, BaseDesign base) {
    return propose(wish.over(base));
  }

  public static Proposal propose(Site site) {
    return ENGINE.propose(site, List.of());
  }

  /** The same, of timber from a yard with a list of its own. */
  public static Proposal propose(Site site, Optional<Yard> yard) {
    return yard.map(ENGINE::buyingFrom).orElse(ENGINE).propose(site, List.of());
  }

  /** The base of scenarios/base/herb-garden-arbour.yaml. */
  public static BaseDesign herbGarden() {
    return new BaseDesign(
        "Herb garden arbour",
        Optional.of(proven(36, 2012)),
        new BaseDesign.Posts(
            "4x4",
            60,
            45,
            1,
            82,
            36,
            "embedded",
            Optional.of("tamped-soil"),
            OptionalDouble.of(18)),
        new BaseDesign.Headers("on-top", "4x4", 12, 0.5),
        new BaseDesign.Crossbeams(
            "2x4", 7, 10.25, 0.5, Optional.of(new BaseDesign.EndCut("slant", 2, 3))),
        Optional.of(new BaseDesign.SidePanels("4x4", 24, 1)),
        Optional.empty());
  }

  /**
   * A small structure whose every number is worked by hand in the tests: posts 68 in across and 42
   * in along, 4x4, 90 in out of the ground; headers of 72 in, hence tails of 15 in past the post
   * centres; seven 2x4 crossbeams of 96 in, hence tails of 14 in past the header centres.
   */
  public static BaseDesign smallArbour() {
    return new BaseDesign(
        "Small arbour",
        Optional.of(proven(48, 2010)),
        new BaseDesign.Posts(
            "4x4",
            68,
            42,
            1,
            90,
            30,
            "embedded",
            Optional.of("tamped-soil"),
            OptionalDouble.of(18)),
        new BaseDesign.Headers("on-top", "4x4", 13.25, 0.5),
        new BaseDesign.Crossbeams(
            "2x4", 7, 12.25, 0.5, Optional.of(new BaseDesign.EndCut("slant", 2, 3))),
        Optional.of(new BaseDesign.SidePanels("4x4", 24, 1)),
        Optional.empty());
  }

  private static BaseDesign.Proven proven(double frostIn, int built) {
    return new BaseDesign.Proven(
        built,
        new Site.Climate(
            OptionalDouble.of(frostIn),
            OptionalDouble.of(25),
            OptionalDouble.of(110),
            Optional.of("B"),
            OptionalDouble.of(5),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.of("sandy-gravel"),
        Optional.of("clematis"));
  }
}
