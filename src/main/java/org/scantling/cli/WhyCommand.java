package org.scantling.cli;

import java.util.concurrent.Callable;
import org.scantling.intake.Intake;
import org.scantling.print.PrintOptions;
import org.scantling.print.WhyJson;
import org.scantling.print.WhyMarkdown;
import org.scantling.print.WhyText;
import org.scantling.reasons.Proposal;
import org.scantling.words.Reader;
import org.scantling.words.Topic;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains one decision. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    description = "Explains one decision to a client, a builder or an engineer.")
final class WhyCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Parameters(
      index = "1",
      paramLabel = "SUBJECT[.ATTRIBUTE]",
      description = "What to explain, such as posts, crossbeam.size or footing.depth.")
  private String subject;

  @Option(
      names = "--for",
      paramLabel = "client|builder|engineer",
      description = "Who asks; builder if not given.")
  private Reader reader = Reader.BUILDER;

  @Option(
      names = "--format",
      paramLabel = "text|json|markdown",
      description = "How the answer is written.")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(options);
    Words words = Words.load(workplace.tables());
    Topic topic = words.subjects().find(subject);
    Intake intake = workplace.read(options);
    Proposal proposal = workplace.propose(intake);
    spec.commandLine().getOut().print(written(proposal, topic, words, intake));
    return proposal.proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private String written(Proposal proposal, Topic topic, Words words, Intake intake) {
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT -> WhyText.of(proposal, words, topic, reader, how);
      case MARKDOWN -> WhyMarkdown.of(proposal, words, topic, reader, how);
      case JSON -> WhyJson.of(proposal, words, topic, reader);
    };
  }
}
