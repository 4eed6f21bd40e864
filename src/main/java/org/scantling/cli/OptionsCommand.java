package org.scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.Intake;
import org.scantling.print.OptionsJson;
import org.scantling.print.OptionsText;
import org.scantling.print.PrintOptions;
import org.scantling.reasons.WholeOptions;
import org.scantling.tables.PriceFile;
import org.scantling.tables.PriceList;
import org.scantling.tables.Yard;
import org.scantling.tables.YardFile;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whole structures that could be built instead of the proposed one. */
@Command(name = "options", mixinStandardHelpOptions = true)
final class OptionsCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Option(names = "--prices", paramLabel = "FILE")
  private @Nullable Path prices;

  @Option(names = "--yard", paramLabel = "FILE")
  private @Nullable Path yard;

  @Option(names = "--for", paramLabel = "client|builder|engineer")
  private Reader whom = Reader.BUILDER;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(options);
    Intake intake = workplace.read(options);
    Optional<Yard> lengths = bought().map(file -> YardFile.read(file, workplace.tables()));
    Optional<PriceList> list =
        Optional.ofNullable(prices).map(file -> PriceFile.read(file, workplace.tables(), lengths));
    WholeOptions found =
        workplace
            .options(set -> workplace.read(options.site(), options.with(set)), lengths, list)
            .of(intake, workplace.propose(intake, lengths));
    Words words = Words.load(workplace.tables()).at(lengths);
    spec.commandLine().getOut().print(written(found, words, intake));
    return found.shown().isEmpty() ? ExitStatus.NEEDS_ENGINEER : ExitStatus.ANSWERED;
  }

  /** The yard that somebody always buys from counts where something is priced. */
  private Optional<Path> bought() {
    boolean named = spec.commandLine().getParseResult().hasMatchedOption("--yard");
    return named || prices != null ? Optional.ofNullable(yard) : Optional.empty();
  }

  private String written(WholeOptions found, Words words, Intake intake) {
    PrintOptions how = options.printing(intake);
    return switch (format) {
      case TEXT -> OptionsText.text(found, words, whom, how);
      case MARKDOWN -> OptionsText.markdown(found, words, whom, how);
      case JSON -> OptionsJson.of(found, words);
    };
  }
}
