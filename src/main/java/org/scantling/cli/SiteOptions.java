package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.UnitSystem;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;

/** The options of every command that works on one site. */
final class SiteOptions {
  private static final Pattern KILOPASCALS =
      Pattern.compile("-?[\\d.]+\\s*(?:kPa|kN/m[2²])", Pattern.CASE_INSENSITIVE);

  private static final Pattern METRIC =
      Pattern.compile(".*(?:m|met(?:er|re)s?)", Pattern.CASE_INSENSITIVE);

  @Parameters(index = "0", paramLabel = "SITE", descriptionKey = "site")
  private Path site;

  @Option(names = "--set", paramLabel = "PATH=VALUE")
  private final List<String> settings = new ArrayList<>();

  @Mixin private GeneralOptions general;

  Path site() {
    return site;
  }

  Optional<Path> houseRules() {
    return general.houseRules();
  }

  List<Setting> settings() {
    return settings.stream().map(Setting::parse).toList();
  }

  /** What is set besides comes after what the command line sets for all. */
  List<Setting> with(List<String> set) {
    List<Setting> all = new ArrayList<>(settings());
    set.stream().map(Setting::parse).forEach(all::add);
    return all;
  }

  /** What was asked for, else the units in which the site file gives the length of the walk. */
  UnitSystem units(Intake intake) {
    return general.units(written(intake));
  }

  PrintOptions printing(Intake intake) {
    return general
        .printing(written(intake))
        .inKilopascals(inKilopascals(intake))
        .setting(settings().stream().map(Setting::path).toList());
  }

  static UnitSystem written(Intake intake) {
    String length = intake.originalText().getOrDefault("walkway.length", "");
    return METRIC.matcher(length.strip()).matches() ? UnitSystem.METRIC : UnitSystem.IMPERIAL;
  }

  /** The loads that their files have so, as codes print them that go by kilonewtons. */
  private static List<String> inKilopascals(Intake intake) {
    return intake.originalText().entrySet().stream()
        .filter(each -> KILOPASCALS.matcher(each.getValue().strip()).matches())
        .map(Map.Entry::getKey)
        .toList();
  }

  static boolean verbose(ParseResult parsed) {
    ParseResult last = parsed;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    return last.hasMatchedOption("-v");
  }
}
