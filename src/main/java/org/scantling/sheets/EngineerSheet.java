package org.scantling.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.scantling.drawing.View;
import org.scantling.print.Block;
import org.scantling.print.Calculation;
import org.scantling.print.CalculationBeside;
import org.scantling.print.Caveats;
import org.scantling.print.Page;
import org.scantling.reasons.Sight;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;

/** One calculation for a permit file: what it starts from, every member, what it leans on. */
final class EngineerSheet {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  private final SheetSource source;
  private final Calculation calculation;
  private final CalculationBeside beside;
  private final List<Calculation.Check> checks;
  private final SheetParts parts = new SheetParts();

  EngineerSheet(SheetSource source) {
    this.source = source;
    this.calculation = new Calculation(source.proposal(), source.words(), source.how().units());
    this.beside =
        new CalculationBeside(calculation, source.proposal(), source.words(), source.how().units());
    this.checks = calculation.checks();
  }

  List<Part> parts() {
    parts.add(new Part.Fields(fields()));
    parts.add(new Part.Prose(Part.Manner.ANSWER, calculation.passing()));
    hardest();
    parts.add(source.figure(View.END)).add(source.figure(View.SIDE));
    DetailParts.add(parts, source, Reader.ENGINEER);
    inputs();
    members();
    rejected();
    working();
    parts.heading(SAYINGS.say("engineer.symbols"));
    parts.add(new Part.Bullets(calculation.symbols(), false));
    sources();
    Page caveats = new Page();
    Caveats.write(caveats, source.proposal(), source.words(), source.how(), Reader.BUILDER);
    parts.caveats(caveats);
    parts.heading(SAYINGS.say("engineer.review"));
    parts.add(new Part.Seal(SAYINGS.say("engineer.seal")));
    return parts.parts();
  }

  /** What is known is filled in; the rest is left for a pen. */
  private List<Block.Item> fields() {
    List<Block.Item> fields = new ArrayList<>();
    field(fields, "job", source.proposal().title());
    for (String blank :
        List.of("address", "owner", "prepared-for", "prepared-by", "date", "revision")) {
      field(fields, blank, "");
    }
    field(fields, "base", source.proposal().baseTitle());
    field(fields, "program", SAYINGS.say("engineer.program", "version", source.version()));
    return fields;
  }

  private static void field(List<Block.Item> fields, String name, String value) {
    fields.add(new Block.Item(SAYINGS.say("engineer.field." + name), value));
  }

  /** Of each member the check that is nearest to its limit. */
  private void hardest() {
    Map<String, Part.Bar> byRole = new LinkedHashMap<>();
    for (Calculation.Check each : checks) {
      if (each.worked()) {
        byRole.putIfAbsent(each.checked().role(), bar(each));
      }
    }
    parts.heading(SAYINGS.say("engineer.hardest"));
    parts.add(new Part.Bars(List.copyOf(byRole.values())));
  }

  private static Part.Bar bar(Calculation.Check check) {
    return new Part.Bar(
        check.name(),
        check.used(),
        check.checked().check().ratio(),
        SAYINGS.say(
            check.demand().isEmpty() ? "engineer.bar.pointless" : "engineer.bar",
            "combination",
            check.combination(),
            "demand",
            check.demand(),
            "capacity",
            check.capacity(),
            "clause",
            check.clause()));
  }

  private void inputs() {
    parts.add(new Part.NewPage()).heading(SAYINGS.say("engineer.inputs"));
    table(
        "inputs",
        calculation.inputs().stream()
            .map(each -> List.of(each.name(), each.value(), each.from()))
            .toList());
  }

  private void table(String name, List<List<String>> rows) {
    List<String> head = Stream.of(SAYINGS.say("engineer.head." + name).split("; ")).toList();
    parts.add(new Part.Table(SAYINGS.say("engineer." + name), head, rows, -1));
  }

  private void members() {
    parts.add(new Part.NewPage()).heading(SAYINGS.say("engineer.checks"));
    parts.prose(SAYINGS.say("engineer.checks.note"));
    table(
        "checks",
        checks.stream()
            .map(
                each ->
                    List.of(
                        each.checked().id(),
                        each.combination(),
                        each.duration(),
                        each.demand(),
                        each.capacity(),
                        each.used(),
                        each.base()))
            .toList());
    Map<String, List<String>> byClause = new LinkedHashMap<>();
    checks.forEach(
        each ->
            byClause
                .computeIfAbsent(each.clause(), key -> new ArrayList<>())
                .add(each.checked().id()));
    List<Block.Item> clauses = new ArrayList<>();
    byClause.forEach((clause, ids) -> clauses.add(new Block.Item(clause, String.join(", ", ids))));
    parts.under(SAYINGS.say("engineer.clauses")).add(new Part.Bullets(clauses, false));
  }

  private void rejected() {
    List<CalculationBeside.Rejected> rejected = beside.rejected();
    if (!rejected.isEmpty()) {
      parts.heading(SAYINGS.say("engineer.rejected"));
      parts.prose(SAYINGS.say("engineer.rejected.note"));
      table(
          "rejected",
          rejected.stream()
              .map(each -> List.of(each.part(), each.option(), each.why(), each.clause()))
              .toList());
    }
  }

  private void working() {
    parts.add(new Part.NewPage()).heading(SAYINGS.say("engineer.working"));
    parts.prose(SAYINGS.say("engineer.working.note"));
    new WorkingParts(source, calculation, beside, parts).add();
  }

  private void sources() {
    parts.add(new Part.NewPage()).heading(SAYINGS.say("engineer.documents"));
    parts.add(new Part.Bullets(Block.Items.of(calculation.documents()).items(), false));
    List<List<String>> unseen =
        calculation.clauses().stream()
            .filter(each -> each.sight() != Sight.SEEN)
            .map(
                each ->
                    List.of(
                        each.citation(),
                        SAYINGS.say("engineer.sight." + each.sight().key()),
                        Integer.toString(each.uses())))
            .toList();
    parts.heading(SAYINGS.say("engineer.unseen"));
    if (unseen.isEmpty()) {
      parts.prose(SAYINGS.say("engineer.unseen.none"));
    } else {
      parts.prose(SAYINGS.say("engineer.unseen.note"));
      table("unseen", unseen);
    }
  }
}
