package org.scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.scantling.batch.Answered;
import org.scantling.batch.Batch;
import org.scantling.batch.LineAnswer;
import org.scantling.batch.LineAnswering;
import org.scantling.batch.Progress;
import org.scantling.batch.ResultFile;
import org.scantling.batch.SiteSource;
import org.scantling.intake.Setting;
import org.scantling.print.ErrorText;
import org.scantling.tables.FileTrouble;
import org.scantling.tables.Yard;
import org.scantling.tables.YardFile;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many sites, one a line. */
@Command(name = "batch", mixinStandardHelpOptions = true)
final class BatchCommand implements Callable<Integer> {
  private static final Path HERE = Path.of("").toAbsolutePath();

  @Spec private CommandSpec spec;
  @Mixin private GeneralOptions general;

  @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "file")
  private Path file;

  @Option(names = "--base", paramLabel = "FILE")
  private final List<Path> bases = new ArrayList<>();

  @Option(names = "--set", paramLabel = "PATH=VALUE")
  private final List<String> settings = new ArrayList<>();

  @Option(names = "--yard", paramLabel = "FILE")
  private @Nullable Path yard;

  @Option(names = "--out", paramLabel = "FILE")
  private @Nullable Path out;

  @Option(names = "--full")
  private boolean full;

  @Option(names = "--cores", paramLabel = "N")
  private int cores = Runtime.getRuntime().availableProcessors();

  @Override
  public Integer call() {
    if (cores < 1) {
      throw new WrongOption(CommandWords.say("batch.cores", "found", String.valueOf(cores)));
    }
    List<Setting> parsed = settings.stream().map(Setting::parse).toList();
    Workplace workplace = Workplace.of(general.houseRules());
    Optional<Yard> bought =
        Optional.ofNullable(yard).map(each -> YardFile.read(each, workplace.tables()));
    LineAnswering answering =
        new LineAnswering(
            Words.load(workplace.tables()), full, workplace.proposing(parsed, bought));
    try (InputStream in = opened()) {
      Batch batch = Batch.of(SiteSource.of(name(), in, folder(), usual()), answering, cores);
      return out == null ? toOut(batch) : toFile(batch, out);
    } catch (IOException unreadable) {
      throw unreadable(unreadable);
    }
  }

  private InputStream opened() throws IOException {
    if (StandardInput.isMeant(file)) {
      return System.in;
    }
    if (Files.isDirectory(file)) {
      throw new OutException(CommandWords.say("batch.folder", "file", file.toString()));
    }
    return Files.newInputStream(file);
  }

  private OutException unreadable(IOException why) {
    String words = FileTrouble.words(why);
    return new OutException(
        CommandWords.say("file.unreadable", "file", file.toString(), "why", words));
  }

  private String name() {
    return StandardInput.isMeant(file) ? CommandWords.say("standard-input") : file.toString();
  }

  private Path folder() {
    Path parent = file.toAbsolutePath().normalize().getParent();
    return StandardInput.isMeant(file) || parent == null ? HERE : parent;
  }

  /** The bases that the command line names, from the folder of the sites on. */
  private List<String> usual() {
    return bases.stream()
        .map(base -> base.isAbsolute() ? base : folder().relativize(HERE.resolve(base).normalize()))
        .map(base -> base.toString().replace('\\', '/'))
        .toList();
  }

  private int toOut(Batch batch) {
    Count count = new Count(batch, Answered.none(file), general.progress());
    batch.run(
        answer -> {
          spec.commandLine().getOut().println(answer.json());
          if (spec.commandLine().getOut().checkError()) {
            throw new OutException(CommandWords.say("batch.closed"));
          }
          count.accept(answer);
        });
    return count.end();
  }

  private int toFile(Batch batch, Path results) {
    try (ResultFile written = ResultFile.open(results)) {
      Answered before = written.before();
      if (before.last() > 0) {
        say(
            CommandWords.say(
                "batch.going-on", "file", results.toString(), "line", number(before.last())));
      }
      Count count = new Count(batch, before, general.progress());
      batch.goOn(
          before,
          answer -> {
            written.add(answer);
            count.accept(answer);
          });
      return count.end();
    }
  }

  private void say(String message) {
    spec.commandLine().getErr().println(ErrorText.of(message));
  }

  private static String number(long count) {
    return String.valueOf(count);
  }

  /** Counts the answers, shows how far it has come and says how it ended. */
  private final class Count implements Consumer<LineAnswer> {
    private final Optional<Progress> progress;
    private long lines;
    private long wrong;
    private long faults;

    Count(Batch batch, Answered before, boolean shown) {
      this.lines = before.lines();
      this.wrong = before.wrong();
      this.progress =
          shown
              ? Optional.of(
                  new Progress(
                      spec.commandLine().getErr(), System::nanoTime, batch::bytesRead, length()))
              : Optional.empty();
    }

    private OptionalLong length() {
      try {
        return StandardInput.isMeant(file)
            ? OptionalLong.empty()
            : OptionalLong.of(Files.size(file));
      } catch (IOException unknown) {
        return OptionalLong.empty();
      }
    }

    @Override
    public void accept(LineAnswer answer) {
      lines++;
      wrong += answer.kind() == LineAnswer.Kind.ANSWERED ? 0 : 1;
      faults += answer.kind() == LineAnswer.Kind.FAULT ? 1 : 0;
      progress.ifPresent(each -> each.show(lines, wrong));
    }

    int end() {
      progress.ifPresent(Progress::end);
      if (wrong > 0) {
        say(CommandWords.say("batch.some-wrong", "wrong", number(wrong), "lines", number(lines)));
      }
      return faults > 0
          ? ExitStatus.FAULT
          : wrong > 0 ? ExitStatus.WRONG_INPUT : ExitStatus.ANSWERED;
    }
  }
}
