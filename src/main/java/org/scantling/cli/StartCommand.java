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
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description = {
      "Asks what a visit to the place answers, one question at a time, and writes the site file.",
      "An empty line takes what is usual, ? tells more, back goes to the question before, quit leaves;"
          + " what was answered is kept in FILE.visit, and the same command goes on from there."
          + " Answers may also come from standard input, one a line.",
    },
    footer = {
      "",
      "Examples: scantling start lower-orchard.yaml",
      "          scantling start --base base/hop-gate.yaml",
    })
final class StartCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "The site file to write, YAML.")
  private Path file;

  @Option(
      names = "--from",
      paramLabel = "DIR",
      description = "A folder of base designs to offer, besides those in base/ beside FILE.")
  private final List<Path> from = new ArrayList<>();

  @Option(
      names = "--base",
      description = "Measure a structure that stands, and write FILE as a base design.")
  private boolean base;

  @Option(names = "--over", description = "Write FILE anew though it is there already.")
  private boolean over;

  @Mixin private GeneralOptions general;

  @Override
  public Integer call() {
    refuseWhatIsThere();
    AnswerInput in = ((Scantling) spec.root().userObject()).answers();
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
      wrong = Optional.of(file + " must end in .yaml: what start writes is YAML.");
    } else if (Files.isDirectory(file)) {
      wrong = Optional.of(file + " is a folder and must be a file to write, such as walk.yaml.");
    } else if (Files.exists(file) && !over) {
      wrong =
          Optional.of(
              file
                  + " is there already and is left as it is. Name another file, or add --over to"
                  + " write it anew.");
    }
    if (wrong.isPresent()) {
      throw new WrongOption(wrong.get());
    }
  }
}
