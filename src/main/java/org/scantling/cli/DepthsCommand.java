package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.depths.DepthTable;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.print.DepthJson;
import org.scantling.print.DepthPage;
import org.scantling.print.MarkdownPage;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalText;
import org.scantling.print.TextPage;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Proposal;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How deep the holes must be. */
@Command(
    name = "depths",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    preprocessor = LooseWords.class)
final class DepthsCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;

  @Parameters(index = "0", arity = "0..1", paramLabel = "SITE", descriptionKey = "site")
  private @Nullable Path site;

  @Option(names = "--set", paramLabel = "PATH=VALUE")
  private final List<String> settings = new ArrayList<>();

  @Mixin private DepthLists lists;
  @Mixin private DepthPlace place;
  @Mixin private GeneralOptions general;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    CompiledRules.begin();
    Workplace workplace = Workplace.of(general.houseRules());
    Words words = Words.load(workplace.tables());
    if (site == null) {
      if (!settings.isEmpty()) {
        throw new WrongOption(CommandWords.say("depths.set"));
      }
      UnitSystem usual =
          lists.metricPosts(workplace.tables()) ? UnitSystem.METRIC : UnitSystem.IMPERIAL;
      return answered(ask(workplace, usual).plain(), words, usual, Optional.empty());
    }
    List<Setting> set = new ArrayList<>(settings.stream().map(Setting::parse).toList());
    set.addAll(place.ofSite());
    Intake intake = workplace.read(site, set);
    Proposal proposal = workplace.propose(intake);
    UnitSystem units = SiteOptions.written(intake);
    if (!proposal.proposed()) {
      return refused(proposal, words, units);
    }
    int status =
        answered(ask(workplace, units).at(intake, proposal), words, units, intake.choice());
    spec.commandLine().getOut().print(chosenBase(intake, words, general.printing(units)));
    return status;
  }

  private String chosenBase(Intake intake, Words words, PrintOptions how) {
    return switch (format) {
      case TEXT -> ChosenBase.text(intake, words, how);
      case MARKDOWN -> ChosenBase.markdown(intake, words);
      case JSON -> "";
    };
  }

  private DepthAsk ask(Workplace workplace, UnitSystem units) {
    boolean metric = general.units(units) == UnitSystem.METRIC;
    return new DepthAsk(workplace, lists, place, metric);
  }

  private int answered(
      DepthTable table, Words words, UnitSystem units, Optional<BaseChoice> choice) {
    PrintOptions how = general.printing(units);
    spec.commandLine()
        .getOut()
        .print(
            switch (format) {
              case TEXT -> TextPage.print(DepthPage.of(table, words, how.units()), how);
              case MARKDOWN -> MarkdownPage.print(DepthPage.of(table, words, how.units()));
              case JSON -> DepthJson.of(table, words, choice);
            });
    Optional<DepthTable.Here> here = table.here();
    boolean none =
        here.isPresent()
            ? here.get().row().depthIn().isEmpty()
            : table.rows().stream().allMatch(row -> row.depthIn().isEmpty());
    return none ? ExitStatus.NEEDS_ENGINEER : ExitStatus.ANSWERED;
  }

  /** Where nothing is proposed no hole is dug, and the reason goes to the error stream. */
  private int refused(Proposal proposal, Words words, UnitSystem units) {
    if (format == Format.JSON) {
      spec.commandLine().getOut().print(DepthJson.refused());
    }
    spec.commandLine().getErr().print(ProposalText.of(proposal, words, general.printing(units)));
    return ExitStatus.NEEDS_ENGINEER;
  }
}
