package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.print.ComparedSite;
import org.scantling.print.ComparisonJson;
import org.scantling.print.ComparisonText;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.tables.PriceFile;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Several proposals side by side. */
@Command(name = "compare", mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  private static final int MOST = 6;

  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private GeneralOptions general;

  @Parameters(arity = "1..*", paramLabel = "SITE", descriptionKey = "site")
  private List<Path> sites;

  @Option(names = "--set", paramLabel = "PATH=VALUE[; PATH=VALUE]")
  private final List<String> settings = new ArrayList<>();

  @Option(names = "--prices", paramLabel = "FILE")
  private @Nullable Path prices;

  @Option(names = "--for", paramLabel = "client|builder|engineer")
  private Reader whom = Reader.BUILDER;

  @Option(names = "--format", paramLabel = "text|json|markdown")
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
    Costs costs =
        new Costs(
            workplace.tables(),
            Optional.empty(),
            Optional.ofNullable(prices)
                .map(file -> PriceFile.read(file, workplace.tables(), Optional.empty())));
    List<ComparedSite> compared = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      Intake intake = intakes.get(i);
      Proposal proposal = workplace.propose(intake);
      compared.add(
          new ComparedSite(
              column.site().toString(),
              column.settings(),
              proposal,
              new CostedProposal(costs, proposal, intake).figures()));
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
      case TEXT -> ComparisonText.text(compared, words, whom, how);
      case MARKDOWN -> ComparisonText.markdown(compared, words, whom, how);
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
              ? CommandWords.say("compare.alone")
              : CommandWords.say(
                  "compare.many",
                  "columns",
                  String.valueOf(columns.size()),
                  "most",
                  String.valueOf(MOST)));
    }
    return columns;
  }

  private static List<String> group(String text) {
    return Arrays.stream(text.split(";", -1)).map(String::strip).toList();
  }
}
