package org.scantling.cli;

import java.util.SortedMap;
import org.scantling.concurrent.BackgroundTask;
import org.scantling.reasons.RuleNote;
import org.scantling.rulebase.RuleBase;

/**
 * The rules of this program: read once, the same for all runs, and begun before they are asked for,
 * since making them ready takes longer than reading the command line and the site.
 */
final class CompiledRules {
  private static final BackgroundTask<RuleBase> READ = BackgroundTask.of(RuleBase::load);

  private CompiledRules() {}

  /** Every phase made ready in turn as soon as all are read, once in a run. */
  private static final class Ready {
    static {
      BackgroundTask.of(
          () -> {
            RuleBase rules = READ.get();
            rules.makeReady();
            return rules;
          });
    }

    private Ready() {}

    static void begin() {
      // Naming the class has begun it.
    }
  }

  /** Begins, for whoever will run them soon. */
  static void begin() {
    Ready.begin();
  }

  /** Handed over as soon as they are read; each phase that is asked for before its turn waits. */
  static RuleBase get() {
    begin();
    return READ.get();
  }

  /** What is told of each rule, for whoever runs none: nothing is made ready for it. */
  static SortedMap<String, RuleNote> notes() {
    return READ.get().notes();
  }
}
