package org.scantling.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.scantling.print.Page;
import org.scantling.print.PrintOptions;
import org.scantling.print.SpanCsv;
import org.scantling.print.SpanJson;
import org.scantling.print.SpanMarkdown;
import org.scantling.print.SpanText;
import org.scantling.print.TextPage;
import org.scantling.quantity.UnitSystem;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.spans.SpanRequest;
import org.scantling.spans.SpanTable;
import org.scantling.spans.SpanTables;
import org.scantling.tables.HouseTables;
import org.scantling.tables.Tables;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Span tables from the program's own checks. */
@Command(
    name = "spans",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    preprocessor = LooseWords.class)
final class SpansCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN,
    CSV
  }

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "crossbeams|headers|posts, SIZE, LENGTH",
      descriptionKey = "what")
  private List<String> words = new ArrayList<>();

  @Mixin private SpanTimberOptions timber;
  @Mixin private SpanLoadOptions loads;
  @Mixin private SpanShapeOptions shape;
  @Mixin private GeneralOptions general;

  @Option(names = "--format", paramLabel = "text|json|markdown|csv")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Tables tables = general.houseRules().map(HouseTables::load).orElseGet(Tables::load);
    OptionReader reader = new OptionReader();
    SpanAsk ask = new SpanAsk(words, reader);
    reader.done();
    SpanTables spans = new SpanTables(tables);
    List<SpanTable> answers = requests(ask, tables).stream().map(spans::of).toList();
    if (format == Format.TEXT || format == Format.MARKDOWN) {
      ask.told().forEach(this::say);
    } else {
      ask.told().forEach(spec.commandLine().getErr()::println);
    }
    spec.commandLine().getOut().print(written(answers, tables));
    return ExitStatus.ANSWERED;
  }

  private void say(String told) {
    spec.commandLine().getOut().print(TextPage.print(new Page().paragraph(told), how()) + "\n");
  }

  private PrintOptions how() {
    return general.printing(UnitSystem.IMPERIAL);
  }

  /** One for the role that is named; without one, one for each that has the size that is named. */
  private List<SpanRequest> requests(SpanAsk ask, Tables tables) {
    if (ask.roles().size() == 1) {
      return List.of(request(ask.roles().get(0), ask, tables));
    }
    OptionReader reader = new OptionReader();
    List<String> sizes = ask.sizes().isEmpty() ? timber.named() : ask.sizes();
    List<Role> roles = ask.roles().isEmpty() ? rolesOf(ask, sizes, tables) : ask.roles();
    if (roles.isEmpty()) {
      if (sizes.isEmpty()) {
        reader.misplaced("ROLE", CommandWords.say("spans.role"));
      } else {
        sizes.forEach(
            each ->
                reader.misplaced(
                    "SIZE",
                    SizeAdvice.of(
                        each, tables, Role.CROSSBEAMS, general.units(UnitSystem.IMPERIAL))));
      }
    }
    if (format == Format.CSV && roles.size() > 1) {
      reader.misplaced(
          "--format",
          CommandWords.say(
              "spans.csv",
              "roles",
              roles.stream().map(Role::word).collect(Collectors.joining(", "))));
    }
    reader.done();
    return roles.stream().map(role -> request(role, ask, tables)).toList();
  }

  /** Those that have every size, if what else is asked fits them; a length goes with the first. */
  private List<Role> rolesOf(SpanAsk ask, List<String> sizes, Tables tables) {
    List<Role> having =
        Arrays.stream(Role.values())
            .filter(role -> !sizes.isEmpty())
            .filter(role -> sizes.stream().allMatch(each -> timber.has(role, each, tables)))
            .toList();
    List<Role> fitting = having.stream().filter(shape::fits).toList();
    List<Role> roles = fitting.isEmpty() ? having : fitting;
    return ask.steps().isEmpty() || roles.isEmpty() ? roles : roles.subList(0, 1);
  }

  /** All that is wrong is told at once. */
  private SpanRequest request(Role asked, SpanAsk ask, Tables tables) {
    OptionReader reader = new OptionReader();
    shape.refuseOthers(reader, asked);
    Assumptions.Use use = timber.use(reader, tables);
    // The repetitive factor is for members that decking joins (NDS 4.3.9): such a top is not open.
    boolean open = asked != Role.POSTS && !timber.decked();
    SpanRequest request =
        new SpanRequest(
            asked,
            timber.sizes(reader, tables, asked, ask.sizes(), general.units(UnitSystem.IMPERIAL)),
            shape.steps(reader, asked, ask.steps()),
            timber.timbers(reader, tables),
            new Assumptions(
                loads.loads(reader, tables, open),
                loads.sag(reader, tables, use.wet()),
                use,
                shape.beam(reader, open),
                shape.post(reader, tables)));
    SpanShapeOptions.refuseEasedShear(reader, request.assumptions());
    reader.done();
    return request;
  }

  private String written(List<SpanTable> answers, Tables tables) {
    return format == Format.JSON
        ? SpanJson.of(answers)
        : answers.stream().map(each -> written(each, tables)).collect(Collectors.joining("\n"));
  }

  private String written(SpanTable table, Tables tables) {
    PrintOptions how = how();
    return switch (format) {
      case TEXT -> SpanText.of(table, Words.load(tables), how);
      case MARKDOWN -> SpanMarkdown.of(table, Words.load(tables), how);
      case CSV -> SpanCsv.of(table);
      case JSON -> SpanJson.of(table);
    };
  }
}
