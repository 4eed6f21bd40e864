package org.scantling.cli;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.scantling.print.PrintOptions;
import org.scantling.print.SpanCsv;
import org.scantling.print.SpanJson;
import org.scantling.print.SpanMarkdown;
import org.scantling.print.SpanText;
import org.scantling.quantity.UnitSystem;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.spans.SpanRequest;
import org.scantling.spans.SpanTable;
import org.scantling.spans.SpanTables;
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
    description =
        "A span table from the program's own checks, under stated loads and assumptions; the end of"
            + " it says all of them, so that a published table can be matched.")
final class SpansCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN,
    CSV
  }

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "crossbeams|headers|posts",
      description = "What the table is about.")
  private String role;

  @Mixin private SpanTimberOptions timber;
  @Mixin private SpanLoadOptions loads;
  @Mixin private SpanShapeOptions shape;
  @Mixin private GeneralOptions general;

  @Option(
      names = "--format",
      paramLabel = "text|json|markdown|csv",
      description = "How the answer is written.")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Tables tables = general.houseRules().map(Tables::load).orElseGet(Tables::load);
    SpanTable table = new SpanTables(tables).of(request(tables));
    spec.commandLine().getOut().print(written(table, tables));
    return ExitStatus.ANSWERED;
  }

  /** All that is wrong is told at once; without a role the rest cannot be read. */
  private SpanRequest request(Tables tables) {
    OptionReader reader = new OptionReader();
    List<String> roles = Arrays.stream(Role.values()).map(Role::word).toList();
    String word = reader.word("ROLE", role, roles);
    reader.done();
    Role asked = Role.values()[roles.indexOf(word)];
    shape.refuseOthers(reader, asked);
    Assumptions.Use use = timber.use(reader, tables);
    // The repetitive factor is for members that decking joins (NDS 4.3.9): such a top is not open.
    boolean open = asked != Role.POSTS && !timber.decked();
    SpanRequest request =
        new SpanRequest(
            asked,
            timber.sizes(reader, tables, asked, general.units(UnitSystem.IMPERIAL)),
            shape.steps(reader, asked),
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

  private String written(SpanTable table, Tables tables) {
    PrintOptions how = general.printing(UnitSystem.IMPERIAL);
    return switch (format) {
      case TEXT -> SpanText.of(table, Words.load(tables), how);
      case MARKDOWN -> SpanMarkdown.of(table, Words.load(tables), how);
      case CSV -> SpanCsv.of(table);
      case JSON -> SpanJson.of(table);
    };
  }
}
