package org.scantling.engine;

import java.nio.file.Path;
import java.util.List;
import org.scantling.design.BaseDesign;
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
    return proposed(Path.of("scenarios", name + ".yaml"), settings);
  }

  /** A plain gate of thin crossbeams and 4x4 headers, on brackets. */
  static Proposal plain(String... settings) {
    return proposed(Path.of("src/test/resources/rulecases/sites/brackets-asked.yaml"), settings);
  }

  /** A site of those that show what the demo does not. */
  static Proposal shown(String name, String... settings) {
    return proposed(Path.of("src/test/resources/rulecases/sites", name + ".yaml"), settings);
  }

  /** The base design of such a site. */
  static BaseDesign base(String name) {
    return READER
        .read(Path.of("src/test/resources/rulecases/sites", name + ".yaml"), List.of())
        .site()
        .base();
  }

  private static Proposal proposed(Path site, String... settings) {
    List<Setting> laid = List.of(settings).stream().map(Setting::parse).toList();
    Intake intake = READER.read(site, laid);
    return ENGINE.propose(intake.site(), intake.defaulted());
  }
}
