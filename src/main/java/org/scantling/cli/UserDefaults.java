package org.scantling.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.DefaultsReader;
import org.scantling.intake.Vocabulary;
import org.scantling.tables.Tables;
import picocli.CommandLine.IDefaultValueProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What somebody would otherwise give as options every time, from a file at the usual place of the
 * system; any option wins over it.
 */
final class UserDefaults implements IDefaultValueProvider {
  private static final String FILE = "defaults.yaml";
  private static final String FOLDER = "scantling";

  private final Map<String, String> byOption = new LinkedHashMap<>();

  private UserDefaults() {}

  /**
   * @param environment the variables of the process
   * @param system the name of the operating system
   * @param home the user's own folder
   */
  static Optional<Path> place(Map<String, String> environment, String system, Path home) {
    boolean windows = system.toLowerCase(Locale.ROOT).startsWith("windows");
    String named = environment.getOrDefault(windows ? "APPDATA" : "XDG_CONFIG_HOME", "");
    Path usual = windows ? home.resolve("AppData").resolve("Roaming") : home.resolve(".config");
    Path folder = named.isBlank() ? usual : Path.of(named);
    return Optional.of(folder.resolve(FOLDER).resolve(FILE)).filter(Files::isRegularFile);
  }

  /**
   * @throws org.scantling.intake.IntakeException with all problems of the file
   */
  static UserDefaults read(Path file, Path home) {
    UserDefaults defaults = new UserDefaults();
    new DefaultsReader(Vocabulary.of(Tables.load()), home)
        .read(file)
        .forEach((key, value) -> defaults.byOption.put("--" + key, value));
    return defaults;
  }

  @Override
  public @Nullable String defaultValue(ArgSpec argument) {
    return argument instanceof OptionSpec option ? byOption.get(option.longestName()) : null;
  }
}
