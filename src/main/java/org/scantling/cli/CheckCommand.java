package org.scantling.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.scantling.intake.DesignIntake;
import org.scantling.intake.Intake;
import org.scantling.print.PrintOptions;
import org.scantling.print.ReviewJson;
import org.scantling.print.ReviewMarkdown;
import org.scantling.print.ReviewText;
import org.scantling.reasons.Review;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks a fixed design. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Option(names = "--design", paramLabel = "FILE", required = true)
  private Path design;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(options);
    Intake site = workplace.read(options);
    DesignIntake given = workplace.readDesign(design, site);
    Review review = workplace.check(site, given);
    spec.commandLine().getOut().print(written(review, site, workplace));
    return review.refusal().isEmpty() ? ExitStatus.ANSWERED : ExitStatus.NEEDS_ENGINEER;
  }

  private String written(Review review, Intake site, Workplace workplace) {
    Words words = Words.load(workplace.tables());
    PrintOptions how = options.printing(site);
    return switch (format) {
      case TEXT -> ReviewText.of(review, words, how) + ChosenBase.text(site, words, how);
      case MARKDOWN -> ReviewMarkdown.of(review, words, how) + ChosenBase.markdown(site, words);
      case JSON -> ReviewJson.of(review, words, site.choice());
    };
  }
}
