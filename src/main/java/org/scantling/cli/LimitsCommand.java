package org.scantling.cli;

import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.Intake;
import org.scantling.print.PrintOptions;
import org.scantling.print.ThresholdJson;
import org.scantling.print.ThresholdMarkdown;
import org.scantling.print.ThresholdText;
import org.scantling.reasons.Question;
import org.scantling.reasons.Thresholds;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How far each choice holds. */
@Command(name = "limits", mixinStandardHelpOptions = true)
final class LimitsCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SUBJECT[.ATTRIBUTE]",
      descriptionKey = "subject")
  private @Nullable String subject;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(options);
    Words words = Words.load(workplace.tables());
    Set<Question> asked = asked(words);
    Intake intake = workplace.read(options);
    // All are searched, whatever is asked: what one choice makes it try may show where another
    // turns.
    Thresholds thresholds = workplace.thresholds(intake, words.choices().questions()).about(asked);
    spec.commandLine().getOut().print(written(thresholds, words, intake));
    return thresholds.today().proposed() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private Set<Question> asked(Words words) {
    if (subject == null) {
      return words.choices().questions();
    }
    SiteFirst.check(spec, options.site(), subject);
    return words.choices().about(words.subjects().find(subject));
  }

  private String written(Thresholds thresholds, Words words, Intake intake) {
    PrintOptions how = options.printing(intake);
    boolean about = subject != null;
    return switch (format) {
      case TEXT ->
          ThresholdText.of(thresholds, words, about, how) + ChosenBase.text(intake, words, how);
      case MARKDOWN ->
          ThresholdMarkdown.of(thresholds, words, about, how) + ChosenBase.markdown(intake, words);
      case JSON -> ThresholdJson.of(thresholds, words, intake.choice());
    };
  }
}
