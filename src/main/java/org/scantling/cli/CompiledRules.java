package org.scantling.cli;

import org.scantling.concurrent.BackgroundTask;
import org.scantling.rulebase.RuleBase;

/**
 * The rules of this program: the same for all runs, and begun when this class is first named, since
 * making them ready takes longer than reading the command line and the site.
 */
final class CompiledRules {
  private static final BackgroundTask<RuleBase> BEGUN = BackgroundTask.of(CompiledRules::load);

  private CompiledRules() {}

  /** Begins, for whoever will ask for them soon. */
  static void begin() {
    // Naming the class has begun it.
  }

  static RuleBase get() {
    return BEGUN.get();
  }

  /** Handed over as soon as they are read; each phase that is asked for before its turn waits. */
  private static RuleBase load() {
    RuleBase rules = RuleBase.load();
    BackgroundTask.of(
        () -> {
          rules.makeReady();
          return rules;
        });
    return rules;
  }
}
