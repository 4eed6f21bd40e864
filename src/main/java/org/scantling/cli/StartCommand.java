package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Leads through a visit and writes the file that comes of it. */
@Command(name = "start", mixinStandardHelpOptions = true)
final class StartCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "file")
  private Path file;

  @Option(names = "--from", paramLabel = "DIR")
  private final List<Path> from = new ArrayList<>();

  @Option(names = "--base")
  private boolean base;

  @Option(names = "--over")
  private boolean over;

  @Mixin private GeneralOptions general;

  @Override
  public Integer call() {
    refuseWhatIsThere();
    AnswerInput in = ((Answering) spec.root().userObject()).answers();
    PrintWriter out = spec.commandLine().getOut();
    Workplace workplace = Workplace.of(general.houseRules());
    if (base) {
      new BaseVisit(file, workplace, general).run(in, out);
    } else {
      new SiteVisit(file, from, workplace, general).run(in, out);
    }
    return ExitStatus.ANSWERED;
  }

  private void refuseWhatIsThere() {
    Optional<String> wrong = Optional.empty();
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
      wrong = Optional.of("start.json");
    } else if (Files.isDirectory(file)) {
      wrong = Optional.of("start.folder");
    } else if (Files.exists(file) && !over) {
      wrong = Optional.of("start.there");
    }
    if (wrong.isPresent()) {
      throw new WrongOption(CommandWords.say(wrong.get(), "file", file.toString()));
    }
  }
}
