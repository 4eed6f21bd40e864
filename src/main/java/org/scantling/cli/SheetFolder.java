package org.scantling.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.scantling.intake.DesignWriter;
import org.scantling.pdf.PdfWriter;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalJson;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.WholeOptions;
import org.scantling.sheets.HtmlWriter;
import org.scantling.sheets.IndexSheet;
import org.scantling.sheets.SheetDocument;
import org.scantling.sheets.SheetKind;
import org.scantling.sheets.SheetSource;
import org.scantling.shop.ListCsv;
import org.scantling.shop.ListJson;
import org.scantling.shop.ListKind;
import org.scantling.shop.Lists;
import org.scantling.words.Words;

/**
 * A folder of all that belongs to one proposal, under the names that people and programs rely on:
 * the sheets, each list, the drawings, the proposal; an estimate where there are prices.
 */
final class SheetFolder {
  private static final String DRAWINGS = "drawings/";

  private final CostedProposal costed;
  private final Optional<WholeOptions> ways;
  private final Words words;
  private final PrintOptions how;
  private final ListOptions asked;
  private final Consumer<String> making;
  private final Map<String, byte[]> files = new LinkedHashMap<>();

  /**
   * @param ways to build it, where they were asked for
   * @param making is told the name of each file that takes a while, before it is made
   */
  SheetFolder(
      CostedProposal costed,
      Optional<WholeOptions> ways,
      Words words,
      PrintOptions how,
      ListOptions asked,
      Consumer<String> making) {
    this.costed = costed;
    this.ways = ways;
    this.words = words;
    this.how = how;
    this.asked = asked;
    this.making = making;
  }

  /**
   * Whole or not at all.
   *
   * @return how many files were written
   */
  int write(Path folder) {
    SheetSource source = SheetSources.of(costed, ways, words, how);
    asked.only().map(List::of).orElse(List.of(SheetKind.values())).stream()
        .forEach(kind -> sheet(kind.of(source)));
    if (asked.only().isEmpty()) {
      lists(source.lists());
      estimate();
      proposal();
      source.drawings().files().forEach((name, drawing) -> text(DRAWINGS + name, drawing));
      source.drawings().models().forEach((name, model) -> text(DRAWINGS + name, model));
      SheetDocument index = IndexSheet.of(source, List.copyOf(files.keySet()));
      text(index.name() + ".html", HtmlWriter.write(index));
    }
    OutFolder.write(folder, files);
    return files.size();
  }

  private void text(String name, String text) {
    files.put(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void sheet(SheetDocument sheet) {
    String page = sheet.name() + ".html";
    making.accept(page);
    text(page, HtmlWriter.write(sheet));
    String paper = sheet.name() + ".pdf";
    making.accept(paper);
    files.put(paper, PdfWriter.write(sheet));
  }

  private void lists(Lists lists) {
    for (ListKind kind : ListKind.values()) {
      text(kind.word() + ".csv", ListCsv.of(lists, kind, how.units()));
      text(kind.word() + ".json", ListJson.of(lists, kind, how.units()));
    }
  }

  private void estimate() {
    if (costed.by().prices().isPresent()) {
      ShownLists shown = new ShownLists(costed);
      text("estimate.md", shown.estimate(asked.estimateFor(), ProposeCommand.Format.MARKDOWN, how));
      text("estimate.csv", shown.estimate(asked.estimateFor(), ProposeCommand.Format.CSV, how));
    }
  }

  private void proposal() {
    text("proposal.json", ProposalJson.of(costed.proposal(), words, costed.json(words)));
    text(
        "design.yaml",
        DesignWriter.yaml(ProposedDesign.of(costed.proposal(), costed.intake().site().base())));
  }
}
