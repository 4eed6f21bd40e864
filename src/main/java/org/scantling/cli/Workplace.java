package org.scantling.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/** Tables, rules and reader, put together for one run. */
final class Workplace {
  private final Tables tables;

  private Workplace(Tables tables) {
    this.tables = tables;
  }

  static Workplace of(SiteOptions options) {
    return of(options.houseRules());
  }

  static Workplace of(Optional<Path> houseRules) {
    return new Workplace(houseRules.map(Tables::load).orElseGet(Tables::load));
  }

  Tables tables() {
    return tables;
  }

  Intake read(SiteOptions options) {
    return read(options.site(), options.settings());
  }

  Intake read(Path site, List<Setting> settings) {
    return new SiteReader(vocabulary()).read(site, settings);
  }

  Proposal propose(Intake intake) {
    return new Engine(RuleBase.load(), tables).propose(intake.site(), intake.defaulted());
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
