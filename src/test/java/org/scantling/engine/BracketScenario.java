package org.scantling.engine;

import java.nio.file.Path;
import java.util.List;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** Scenarios of this project, read and proposed with settings laid over them. */
final class BracketScenario {
  static final Tables TABLES = Tables.load();
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);
  private static final SiteReader READER = new SiteReader(Vocabulary.of(TABLES));

  private BracketScenario() {}

  static Proposal propose(String name, String... settings) {
    List<Setting> laid = List.of(settings).stream().map(Setting::parse).toList();
    Intake intake = READER.read(Path.of("scenarios", name + ".yaml"), laid);
    return ENGINE.propose(intake.site(), intake.defaulted());
  }
}
