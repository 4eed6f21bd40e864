package org.scantling.cli;

import java.util.concurrent.Callable;
import org.scantling.intake.Intake;
import org.scantling.reasons.Proposal;
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
    spec.commandLine().getOut().println(proposal.title() + " " + format + options.coloured());
    return proposal.proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }
}
