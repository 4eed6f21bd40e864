package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.UnitSystem;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;

/** The options of every command that works on one site. */
final class SiteOptions {
  private static final int WIDTH = 80;

  /** When headings are set off by colour. */
  enum Colour {
    AUTO,
    ALWAYS,
    NEVER
  }

  @Parameters(index = "0", paramLabel = "SITE", description = "The site file, YAML or JSON.")
  private Path site;

  @Option(
      names = "--units",
      paramLabel = "imperial|metric",
      description = "Units of the answer; as the site file writes its length if not given.")
  private UnitSystem units;

  @Option(
      names = "--house-rules",
      paramLabel = "DIR",
      description = "A folder of table rows that override rows of the rule base by their id.")
  private Path houseRules;

  @Option(
      names = "--set",
      paramLabel = "PATH=VALUE",
      description = "Override one value of the site file, e.g. --set walkway.length=32ft.")
  private final List<String> settings = new ArrayList<>();

  @Option(
      names = "--color",
      paramLabel = "auto|always|never",
      description = "Whether headings are set off by colour; auto asks the terminal.")
  private Colour colour = Colour.AUTO;

  @Option(
      names = {"-v", "--verbose"},
      description = "Show the trace of a fault.")
  private boolean verbose;

  Path site() {
    return site;
  }

  Optional<Path> houseRules() {
    return Optional.ofNullable(houseRules);
  }

  List<Setting> settings() {
    return settings.stream().map(Setting::parse).toList();
  }

  /** What was asked for, else the units in which the site file gives the length of the walk. */
  UnitSystem units(Intake intake) {
    if (units != null) {
      return units;
    }
    String length = intake.originalText().getOrDefault("walkway.length", "");
    return length.strip().endsWith("m") ? UnitSystem.METRIC : UnitSystem.IMPERIAL;
  }

  PrintOptions printing(Intake intake) {
    return new PrintOptions(units(intake), coloured(), WIDTH);
  }

  private boolean coloured() {
    return switch (colour) {
      case ALWAYS -> true;
      case NEVER -> false;
      case AUTO -> System.console() != null && System.getenv("NO_COLOR") == null;
    };
  }

  static boolean verbose(ParseResult parsed) {
    ParseResult last = parsed;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    return last.hasMatchedOption("-v");
  }
}
