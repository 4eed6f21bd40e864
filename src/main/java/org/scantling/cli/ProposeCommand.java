package org.scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.scantling.intake.DesignWriter;
import org.scantling.intake.Intake;
import org.scantling.print.ErrorText;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalJson;
import org.scantling.print.ProposalMarkdown;
import org.scantling.print.ProposalText;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.Proposal;
import org.scantling.tables.Yard;
import org.scantling.tables.YardFile;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The main job. */
@Command(
    name = "propose",
    mixinStandardHelpOptions = true,
    description = "The resized structure for a site, each decision with its reason.")
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

  @Option(
      names = "--format",
      paramLabel = "text|json|markdown|yaml|csv",
      description =
          "How the answer is written; yaml is the proposal as a design file, csv is for lists.")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    refuseWhatDoesNotGoTogether();
    Workplace workplace = Workplace.of(options);
    Intake intake = workplace.read(options);
    Optional<Yard> yard = asked(lists.yard()).map(file -> YardFile.read(file, workplace.tables()));
    Proposal proposal = workplace.propose(intake, yard);
    spec.commandLine().getOut().print(answer(proposal, intake, workplace, yard));
    return proposal.proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private void refuseWhatDoesNotGoTogether() {
    if (lists.list().isEmpty() && format == Format.CSV) {
      throw wrong("--format csv is for lists: name one, such as --list cut-list");
    }
    if (lists.list().isPresent() && format == Format.YAML) {
      throw wrong("--format yaml is the proposal as a design file, so it does not go with --list");
    }
    if (spec.commandLine().getParseResult().hasMatchedOption("--yard") && !lists.asked()) {
      throw wrong("--yard is for buying: ask for --list buying or --out as well");
    }
  }

  /** The yard that somebody always buys from counts where something is bought. */
  private Optional<Path> asked(Optional<Path> yard) {
    return lists.asked() ? yard : Optional.empty();
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  /** The list that is asked for, or the proposal; the folder is written before anything is said. */
  private String answer(
      Proposal proposal, Intake intake, Workplace workplace, Optional<Yard> yard) {
    Words words = Words.load(workplace.tables()).at(yard);
    if (!lists.asked()) {
      return written(proposal, intake, words);
    }
    if (!proposal.proposed()) {
      lists.out().filter(OutFolder::holdsOurs).ifPresent(this::sayOfOthers);
      return lists.list().isPresent()
          ? refused(proposal, intake, words)
          : written(proposal, intake, words);
    }
    Sheets sheets = Sheets.of(proposal, intake, workplace, yard);
    PrintOptions how = options.printing(intake);
    lists
        .out()
        .map(out -> sheets.write(out, words, how) + shownAsWell())
        .ifPresent(written -> spec.commandLine().getErr().println(ErrorText.of(written)));
    return lists
        .list()
        .map(kind -> sheets.list(kind, format, how))
        .orElseGet(() -> written(proposal, intake, words));
  }

  /** The folder holds every list in any case; the one that is named is shown besides. */
  private String shownAsWell() {
    return lists.list().map(kind -> " The list " + kind.word() + " is shown as well.").orElse("");
  }

  private void sayOfOthers(Path out) {
    spec.commandLine()
        .getErr()
        .println(
            ErrorText.of(
                out
                    + ": nothing was written, since nothing is proposed for this site; the lists"
                    + " there are of another proposal."));
  }

  /** Where nothing is proposed there is no list, and the reason goes to the error stream. */
  private String refused(Proposal proposal, Intake intake, Words words) {
    spec.commandLine().getErr().print(ProposalText.of(proposal, words, options.printing(intake)));
    return "";
  }

  private String written(Proposal proposal, Intake intake, Words words) {
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT -> ProposalText.of(proposal, words, how);
      case MARKDOWN -> ProposalMarkdown.of(proposal, words, how);
      case JSON -> ProposalJson.of(proposal, words);
      case YAML -> design(proposal, intake, words);
      case CSV -> throw new IllegalStateException("csv is for lists");
    };
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
