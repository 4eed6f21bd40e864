package org.scantling.property;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.intake.DesignReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** The tables, the rules and the bases that tests share; each is read once. */
public final class House {
  public static final Tables TABLES = Tables.load();
  public static final RuleBase RULES = RuleBase.load();

  /** The bases that ship. */
  public static final List<String> BASES =
      List.of("rose-gate", "hop-walk", "kiwi-court", "station-yard", "vineyard-porch");

  private static final Engine ENGINE = new Engine(RULES, TABLES);
  private static final Map<String, BaseDesign> SHIPPED = new ConcurrentHashMap<>();

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

  /** A base that ships, by its name. */
  public static BaseDesign base(String name) {
    return SHIPPED.computeIfAbsent(name, House::read);
  }

  /** The smallest of them: four posts, one bay, pickets. */
  public static BaseDesign roseGate() {
    return base("rose-gate");
  }

  private static BaseDesign read(String name) {
    return new DesignReader(Vocabulary.of(TABLES))
        .read(Path.of("scenarios", "base", name + ".yaml"))
        .design();
  }
}
