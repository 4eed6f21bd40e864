package org.scantling.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.Intake;
import org.scantling.print.KeepJson;
import org.scantling.print.KeepText;
import org.scantling.print.PrintOptions;
import org.scantling.print.WhyJson;
import org.scantling.print.WhyMarkdown;
import org.scantling.print.WhyText;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
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
@Command(name = "why", mixinStandardHelpOptions = true)
final class WhyCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Parameters(index = "1", paramLabel = "SUBJECT[.ATTRIBUTE]", descriptionKey = "subject")
  private String subject;

  @Option(names = "--for", paramLabel = "client|builder|engineer")
  private Reader reader = Reader.BUILDER;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Option(names = "--keep", paramLabel = "OPTION")
  private @Nullable String keep;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(options);
    Words words = Words.load(workplace.tables());
    SiteFirst.check(spec, options.site(), subject);
    Topic topic = words.subjects().find(subject);
    Intake intake = workplace.read(options);
    if (keep != null) {
      LeastChange least = new KeptAnswer(workplace, words, intake).least(topic, keep);
      spec.commandLine().getOut().print(written(least, words, intake));
      return status(least.today());
    }
    Proposal proposal = workplace.propose(intake);
    Optional<LeastChange> back = new KeptAnswer(workplace, words, intake).base(topic, proposal);
    spec.commandLine().getOut().print(written(proposal, topic, back, words, intake));
    return status(proposal);
  }

  private static int status(Proposal proposal) {
    return proposal.proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private String written(LeastChange least, Words words, Intake intake) {
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT -> KeepText.text(least, words, reader, how) + ChosenBase.text(intake, words, how);
      case MARKDOWN ->
          KeepText.markdown(least, words, reader, how) + ChosenBase.markdown(intake, words);
      case JSON -> KeepJson.of(least, words, reader, intake.choice());
    };
  }

  private String written(
      Proposal proposal, Topic topic, Optional<LeastChange> back, Words words, Intake intake) {
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT ->
          WhyText.of(proposal, words, topic, back, reader, how)
              + (ofBase(topic) ? "" : ChosenBase.text(intake, words, how));
      case MARKDOWN ->
          WhyMarkdown.of(proposal, words, topic, back, reader, how)
              + (ofBase(topic) ? "" : ChosenBase.markdown(intake, words));
      case JSON -> WhyJson.of(proposal, words, topic, back, reader);
    };
  }

  private static boolean ofBase(Topic topic) {
    return topic.questions().get(0) == Question.BASE;
  }
}
