package org.scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.scantling.intake.DesignWriter;
import org.scantling.intake.Intake;
import org.scantling.print.ErrorText;
import org.scantling.print.MarkdownPage;
import org.scantling.print.Page;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalJson;
import org.scantling.print.ProposalMarkdown;
import org.scantling.print.ProposalText;
import org.scantling.print.ProposedDesign;
import org.scantling.print.TextPage;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.WholeOptions;
import org.scantling.sheets.PlainSheet;
import org.scantling.sheets.SheetKind;
import org.scantling.shop.ListKind;
import org.scantling.tables.PriceFile;
import org.scantling.tables.Yard;
import org.scantling.tables.YardFile;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The main job. */
@Command(name = "propose", mixinStandardHelpOptions = true)
final class ProposeCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN,
    YAML,
    CSV
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;
  @Mixin private ListOptions lists;

  @Option(names = "--for", paramLabel = "client|builder|engineer")
  private Reader whom = Reader.BUILDER;

  @Option(names = "--format", paramLabel = "text|json|markdown|yaml|csv")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    refuseWhatDoesNotGoTogether();
    Workplace workplace = Workplace.of(options);
    Intake intake = workplace.read(options);
    Optional<Yard> yard = asked(lists.yard()).map(file -> YardFile.read(file, workplace.tables()));
    Costs costs =
        new Costs(
            workplace.tables(),
            yard,
            lists.prices().map(file -> PriceFile.read(file, workplace.tables(), yard)));
    Proposal proposal = workplace.propose(intake, yard);
    CostedProposal costed =
        new CostedProposal(costs, proposal, intake)
            .beside(
                () ->
                    workplace.nearMisses(
                        intake,
                        proposal,
                        yard,
                        set -> workplace.read(options.site(), options.with(set))));
    spec.commandLine().getOut().print(answer(costed, ways(workplace, costed)));
    return proposal.proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  /** Other ways to build it, where the client is to choose; they take a while. */
  private Optional<WholeOptions> ways(Workplace workplace, CostedProposal costed) {
    if (!lists.options() || !costed.proposal().proposed()) {
      return Optional.empty();
    }
    making(CommandWords.say("out.ways"));
    return Optional.of(
        workplace
            .options(
                set -> workplace.read(options.site(), options.with(set)),
                costed.by().yard(),
                costed.by().prices())
            .of(costed.intake(), costed.proposal()));
  }

  private void refuseWhatDoesNotGoTogether() {
    boolean shown = lists.list().isPresent() || lists.estimate().isPresent();
    if (lists.list().isPresent() && lists.estimate().isPresent()) {
      throw wrong("propose.estimate");
    }
    if (!shown && format == Format.CSV) {
      throw wrong("propose.csv");
    }
    if (lists.only().isPresent() && lists.out().isEmpty()) {
      throw wrong("propose.only");
    }
    if (lists.options() && lists.out().isEmpty() && whom != Reader.CLIENT) {
      throw wrong("propose.options");
    }
    if (shown && format == Format.YAML) {
      throw wrong("propose.yaml");
    }
    if (spec.commandLine().getParseResult().hasMatchedOption("--yard") && !lists.buys()) {
      throw wrong("propose.yard");
    }
  }

  /** The yard that somebody always buys from counts where something is bought. */
  private Optional<Path> asked(Optional<Path> yard) {
    return lists.buys() ? yard : Optional.empty();
  }

  private ParameterException wrong(String saying) {
    return new ParameterException(spec.commandLine(), CommandWords.say(saying));
  }

  /** The list that is asked for, or the proposal; the folder is written before anything is said. */
  private String answer(CostedProposal costed, Optional<WholeOptions> ways) {
    Proposal proposal = costed.proposal();
    Intake intake = costed.intake();
    Words words = Words.load(costed.by().tables()).at(costed.by().yard());
    if (!lists.asked()) {
      return written(costed, ways, words);
    }
    if (!proposal.proposed()) {
      lists.out().filter(OutFolder::holdsOurs).ifPresent(this::sayOfOthers);
      return lists.list().isPresent() || lists.estimate().isPresent()
          ? refused(proposal, intake, words)
          : written(costed, ways, words);
    }
    ShownLists sheets = new ShownLists(costed);
    PrintOptions how = options.printing(intake);
    lists
        .out()
        .map(out -> written(out, new SheetFolder(costed, ways, words, how, lists, this::making)))
        .ifPresent(written -> spec.commandLine().getErr().println(ErrorText.of(written)));
    return lists
        .list()
        .map(kind -> sheets.list(kind, format, how))
        .or(() -> lists.estimate().map(whom -> sheets.estimate(whom, format, how)))
        .orElseGet(() -> written(costed, ways, words));
  }

  private void making(String file) {
    spec.commandLine().getErr().println(CommandWords.say("out.making", "file", file));
  }

  /** The folder holds every list in any case; the one that is named is shown besides. */
  private String written(Path folder, SheetFolder sheets) {
    int files = sheets.write(folder);
    return CommandWords.say(
        lists.only().isPresent() ? "out.written-only" : "out.written",
        "folder",
        folder.toString(),
        "files",
        String.valueOf(files),
        "estimate",
        lists.prices().isPresent() ? CommandWords.say("out.estimate") : "",
        "list",
        lists.list().map(ListKind::word).orElse(""));
  }

  private void sayOfOthers(Path out) {
    spec.commandLine()
        .getErr()
        .println(ErrorText.of(CommandWords.say("out.none", "folder", out.toString())));
  }

  /** Where nothing is proposed there is no list, and the reason goes to the error stream. */
  private String refused(Proposal proposal, Intake intake, Words words) {
    spec.commandLine().getErr().print(ProposalText.of(proposal, words, options.printing(intake)));
    return "";
  }

  private String written(CostedProposal costed, Optional<WholeOptions> ways, Words words) {
    Proposal proposal = costed.proposal();
    boolean page = format == Format.TEXT || format == Format.MARKDOWN;
    if (page && whom != Reader.BUILDER && proposal.proposed()) {
      return letter(costed, ways, words);
    }
    Intake intake = costed.intake();
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT -> ProposalText.of(proposal, words, how, costed.more(words, how));
      case MARKDOWN -> ProposalMarkdown.of(proposal, words, how, costed.more(words, how));
      case JSON -> ProposalJson.of(proposal, words, costed.json(words));
      case YAML -> design(proposal, intake, words);
      case CSV -> throw new IllegalStateException("csv is for lists");
    };
  }

  /** The sheet for another reader, as text. */
  private String letter(CostedProposal costed, Optional<WholeOptions> ways, Words words) {
    PrintOptions how = options.printing(costed.intake());
    SheetKind kind = SheetKind.valueOf(whom.name());
    Page page = PlainSheet.of(kind.of(SheetSources.of(costed, ways, words, how)));
    return format == Format.TEXT ? TextPage.print(page, how) : MarkdownPage.print(page);
  }

  /**
   * The proposal as a design file; where nothing is proposed, the reason goes to the error stream.
   */
  private String design(Proposal proposal, Intake intake, Words words) {
    if (proposal.proposed()) {
      return DesignWriter.yaml(ProposedDesign.of(proposal, intake.site().base()));
    }
    spec.commandLine().getErr().print(ProposalText.of(proposal, words, options.printing(intake)));
    return "";
  }
}
