package org.scantling.engine;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/** Scenarios of this project, read and proposed with settings laid over them. */
final class BracketScenario {
  static final Tables TABLES = Tables.load();
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);
  private static final SiteReader READER = new SiteReader(vocabulary());

  private BracketScenario() {}

  static Proposal propose(String name, String... settings) {
    List<Setting> laid = List.of(settings).stream().map(Setting::parse).toList();
    Intake intake = READER.read(Path.of("scenarios", name + ".yaml"), laid);
    return ENGINE.propose(intake.site(), intake.defaulted());
  }

  private static Vocabulary vocabulary() {
    return new Vocabulary(
        words(TABLES.designValues(), row -> row.species()),
        words(TABLES.designValues(), row -> row.grade()),
        words(TABLES.soils(), row -> row.id()),
        words(TABLES.vines(), row -> row.id()),
        words(TABLES.users(), row -> row.id()),
        words(TABLES.sizes(), row -> row.id()));
  }

  private static <T extends TableRow> Set<String> words(Table<T> table, Function<T, String> word) {
    return table.rows().stream().map(word).collect(Collectors.toSet());
  }
}
