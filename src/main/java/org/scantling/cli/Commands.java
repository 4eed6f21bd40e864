package org.scantling.cli;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * The commands by name, in the order in which help lists them. Where the command line names one,
 * only that one is built: each that is read from its annotations costs milliseconds at start.
 */
final class Commands {
  private static final Map<String, Supplier<Object>> BY_NAME = new LinkedHashMap<>();

  private static final Set<String> ASK_RULES =
      Set.of(
          "propose", "why", "check", "compare", "limits", "depths", "prices", "options", "batch");

  static {
    BY_NAME.put("start", StartCommand::new);
    BY_NAME.put("record", RecordCommand::new);
    BY_NAME.put("propose", ProposeCommand::new);
    BY_NAME.put("why", WhyCommand::new);
    BY_NAME.put("check", CheckCommand::new);
    BY_NAME.put("compare", CompareCommand::new);
    BY_NAME.put("options", OptionsCommand::new);
    BY_NAME.put("batch", BatchCommand::new);
    BY_NAME.put("spans", SpansCommand::new);
    BY_NAME.put("depths", DepthsCommand::new);
    BY_NAME.put("rules", RulesCommand::new);
    BY_NAME.put("limits", LimitsCommand::new);
    BY_NAME.put("choices", ChoicesCommand::new);
    BY_NAME.put("prices", PricesCommand::new);
  }

  private Commands() {}

  /** True where the command named first cannot answer without the rules. */
  static boolean askRules(String... args) {
    return args.length > 1 && ASK_RULES.contains(args[0]);
  }

  /**
   * @param args what was typed; the first word is the name of a command, or all are added so that
   *     help and near misses know them
   */
  static void add(CommandLine root, String... args) {
    Supplier<Object> named = args.length > 0 ? BY_NAME.get(args[0]) : null;
    if (named != null) {
      root.addSubcommand(args[0], named.get());
    } else {
      BY_NAME.forEach((name, command) -> root.addSubcommand(name, command.get()));
    }
  }

  static Set<String> names() {
    return Collections.unmodifiableSet(BY_NAME.keySet());
  }
}
