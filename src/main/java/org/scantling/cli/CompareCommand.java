package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.print.ComparedSite;
import org.scantling.print.ComparisonJson;
import org.scantling.print.ComparisonText;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.UnitSystem;
import org.scantling.rulebase.RuleBase;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Several proposals side by side. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = {
      "The proposals for two to six sites side by side: what differs first, and why.",
      "",
      "With one SITE it is compared with itself: the first column is the file as it is written,"
          + " and each --set a further one. With several, each --set holds for all of them.",
    })
final class CompareCommand implements Callable<Integer> {
  private static final int MOST = 6;

  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private GeneralOptions general;

  @Parameters(arity = "1..*", paramLabel = "SITE", description = "Site files, YAML or JSON.")
  private List<Path> sites;

  @Option(
      names = "--set",
      paramLabel = "PATH=VALUE[; PATH=VALUE]",
      description =
          "Override values of the site file; several that belong together with ; between them.")
  private final List<String> settings = new ArrayList<>();

  @Option(
      names = "--format",
      paramLabel = "text|json|markdown",
      description = "How the answer is written.")
  private Format format = Format.TEXT;

  private record Column(Path site, List<String> settings) {}

  @Override
  public Integer call() {
    List<Column> columns = columns();
    Workplace workplace = Workplace.of(general.houseRules());
    List<Intake> intakes = new ArrayList<>();
    for (Column column : columns) {
      List<Setting> parsed = column.settings().stream().map(Setting::parse).toList();
      intakes.add(workplace.read(column.site(), parsed));
    }
    Engine engine = new Engine(RuleBase.load(), workplace.tables());
    List<ComparedSite> compared = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      Intake intake = intakes.get(i);
      compared.add(
          new ComparedSite(
              column.site().toString(),
              column.settings(),
              engine.propose(intake.site(), intake.defaulted())));
    }
    spec.commandLine().getOut().print(written(compared, workplace, intakes.get(0)));
    boolean any = compared.stream().anyMatch(each -> each.proposal().proposed());
    return any ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private String written(List<ComparedSite> compared, Workplace workplace, Intake first) {
    Words words = Words.load(workplace.tables());
    UnitSystem units = SiteOptions.written(first);
    PrintOptions how = general.printing(units);
    return switch (format) {
      case TEXT -> ComparisonText.text(compared, words, how);
      case MARKDOWN -> ComparisonText.markdown(compared, words, how);
      case JSON -> ComparisonJson.of(compared, words);
    };
  }

  private List<Column> columns() {
    List<List<String>> groups = settings.stream().map(CompareCommand::group).toList();
    List<Column> columns = new ArrayList<>();
    if (sites.size() == 1) {
      columns.add(new Column(sites.get(0), List.of()));
      groups.forEach(group -> columns.add(new Column(sites.get(0), group)));
    } else {
      List<String> all = groups.stream().flatMap(List::stream).toList();
      sites.forEach(site -> columns.add(new Column(site, all)));
    }
    if (columns.size() < 2 || columns.size() > MOST) {
      throw new WrongOption(
          columns.size() < 2
              ? "compare: one site alone has nothing beside it. Name a second one, or what to set"
                  + " otherwise, such as --set walkway.length=32ft."
              : "compare: "
                  + columns.size()
                  + " columns must be "
                  + MOST
                  + " or fewer. Leave some sites or settings out.");
    }
    return columns;
  }

  private static List<String> group(String text) {
    return Arrays.stream(text.split(";", -1)).map(String::strip).toList();
  }
}
