package org.scantling.cli;

import java.util.concurrent.Callable;
import org.scantling.intake.DesignWriter;
import org.scantling.intake.Intake;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalJson;
import org.scantling.print.ProposalMarkdown;
import org.scantling.print.ProposalText;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.Proposal;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
    YAML
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Option(
      names = "--format",
      paramLabel = "text|json|markdown|yaml",
      description = "How the answer is written; yaml is the proposal as a design file.")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(options);
    Intake intake = workplace.read(options);
    Proposal proposal = workplace.propose(intake);
    spec.commandLine().getOut().print(written(proposal, intake, workplace));
    return proposal.proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private String written(Proposal proposal, Intake intake, Workplace workplace) {
    Words words = Words.load(workplace.tables());
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT -> ProposalText.of(proposal, words, how);
      case MARKDOWN -> ProposalMarkdown.of(proposal, words, how);
      case JSON -> ProposalJson.of(proposal, words);
      case YAML -> design(proposal, intake, words);
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
