package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.print.ProposalText;
import org.scantling.reasons.Proposal;
import org.scantling.shop.PriceSheet;
import org.scantling.tables.Yard;
import org.scantling.tables.YardFile;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A list of prices to fill in: what one job takes, or everything that can be priced. */
@Command(name = "prices", mixinStandardHelpOptions = true)
final class PricesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private GeneralOptions general;

  @Parameters(index = "0", arity = "0..1", paramLabel = "SITE", descriptionKey = "site")
  private @Nullable Path site;

  @Option(names = "--set", paramLabel = "PATH=VALUE")
  private final List<String> settings = new ArrayList<>();

  @Option(names = "--yard", paramLabel = "FILE")
  private @Nullable Path yard;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(general.houseRules());
    if (site == null) {
      if (!settings.isEmpty() || yard != null) {
        throw new WrongOption(CommandWords.say("prices.site"));
      }
      spec.commandLine().getOut().print(PriceSheet.of(workplace.tables()));
      return ExitStatus.ANSWERED;
    }
    Intake intake = workplace.read(site, settings.stream().map(Setting::parse).toList());
    Optional<Yard> list =
        Optional.ofNullable(yard).map(file -> YardFile.read(file, workplace.tables()));
    Proposal proposal = workplace.propose(intake, list);
    if (!proposal.proposed()) {
      Words words = Words.load(workplace.tables()).at(list);
      spec.commandLine()
          .getErr()
          .print(ProposalText.of(proposal, words, general.printing(SiteOptions.written(intake))));
      return ExitStatus.NEEDS_ENGINEER;
    }
    Costs costs = new Costs(workplace.tables(), list, Optional.empty());
    String sheet = PriceSheet.of(new CostedProposal(costs, proposal, intake).lists().estimate());
    spec.commandLine().getOut().print(sheet);
    return ExitStatus.ANSWERED;
  }
}
