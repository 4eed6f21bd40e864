package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.print.AskedText;
import org.scantling.sayings.Sayings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds to the record of a base design. */
@Command(name = "record", mixinStandardHelpOptions = true)
final class RecordCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "file")
  private Path file;

  @Option(names = "--kind", paramLabel = "storm|snow|inspection|repair")
  private @Nullable String kind;

  @Option(names = "--date", paramLabel = "DATE")
  private @Nullable String date;

  @Option(names = "--note", paramLabel = "TEXT")
  private @Nullable String note;

  @Option(names = "--photo", paramLabel = "NAME")
  private @Nullable String photo;

  @Mixin private GeneralOptions general;

  @Override
  public Integer call() {
    RecordedBase base = RecordedBase.of(file, Workplace.of(general.houseRules()));
    AnswerInput in = ((Answering) spec.root().userObject()).answers();
    PrintWriter out = spec.commandLine().getOut();
    RecordVisit visit = new RecordVisit(file, base, general);
    Optional<String> item =
        kind == null && date == null && note == null && photo == null
            ? visit.asked(in, out)
            : Optional.of(
                visit.given(
                    Optional.ofNullable(kind),
                    date == null ? in.today().toString() : date,
                    Optional.ofNullable(note),
                    Optional.ofNullable(photo)));
    if (item.isPresent()) {
      int entries = base.add(item.get());
      visit.over();
      out.println(
          AskedText.of(
              Sayings.of("visit")
                  .say("recorded", "file", file.toString(), "entries", String.valueOf(entries)),
              0));
    }
    return ExitStatus.ANSWERED;
  }
}
