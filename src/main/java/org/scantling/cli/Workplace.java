package org.scantling.cli;

import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.scantling.engine.Engine;
import org.scantling.engine.TurningSearch;
import org.scantling.intake.Intake;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.TurningPoints;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/** Tables, rules and reader, put together for one run. */
final class Workplace {
  private final Tables tables;
  private Ahead<RuleBase> rules;

  private Workplace(Tables tables) {
    this.tables = tables;
  }

  static Workplace of(SiteOptions options) {
    return new Workplace(options.houseRules().map(Tables::load).orElseGet(Tables::load));
  }

  Tables tables() {
    return tables;
  }

  /** Reads the site; whoever does will ask the rules, which are made ready meanwhile. */
  Intake read(SiteOptions options) {
    rules();
    return new SiteReader(vocabulary()).read(options.site(), options.settings());
  }

  Proposal propose(Intake intake) {
    return new Engine(rules().get(), tables).propose(intake.site(), intake.defaulted());
  }

  TurningPoints turningPoints(Intake intake, Set<Question> questions) {
    Engine engine = new Engine(rules().get(), tables);
    return new TurningSearch(engine, tables).of(intake.site(), intake.defaulted(), questions);
  }

  private Ahead<RuleBase> rules() {
    if (rules == null) {
      rules = Ahead.of(Workplace::load);
    }
    return rules;
  }

  private static RuleBase load() {
    RuleBase rules = RuleBase.load();
    Ahead.of(
        () -> {
          rules.makeReady();
          return rules;
        });
    return rules;
  }

  private Vocabulary vocabulary() {
    return new Vocabulary(
        words(tables.designValues(), row -> row.species()),
        words(tables.designValues(), row -> row.grade()),
        words(tables.soils(), TableRow::id),
        words(tables.vines(), TableRow::id),
        words(tables.users(), TableRow::id),
        words(tables.sizes(), TableRow::id));
  }

  private static <T extends TableRow> Set<String> words(
      Table<T> table, Function<? super T, String> word) {
    return table.rows().stream().map(word).collect(Collectors.toSet());
  }
}
