package org.scantling.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Stock;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.drawing.Drawings;
import org.scantling.intake.DesignWriter;
import org.scantling.intake.Intake;
import org.scantling.print.Caveats;
import org.scantling.print.MarkdownPage;
import org.scantling.print.Page;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalJson;
import org.scantling.print.ProposedDesign;
import org.scantling.print.TextPage;
import org.scantling.reasons.Proposal;
import org.scantling.shop.Estimate;
import org.scantling.shop.EstimateFor;
import org.scantling.shop.ListCsv;
import org.scantling.shop.ListJson;
import org.scantling.shop.ListKind;
import org.scantling.shop.ListPages;
import org.scantling.shop.Lists;
import org.scantling.tables.Market;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** The lists of one proposal, written as asked. */
final class Sheets {
  private static final String DRAWINGS = "drawings/";

  private final Lists lists;
  private final Proposal proposal;
  private final Intake intake;
  private final CostedProposal costed;

  Sheets(CostedProposal costed) {
    this.lists = costed.lists();
    this.proposal = costed.proposal();
    this.intake = costed.intake();
    this.costed = costed;
  }

  String list(ListKind kind, ProposeCommand.Format format, PrintOptions how) {
    return switch (format) {
      case MARKDOWN -> MarkdownPage.print(ListPages.of(lists, kind, how.units()));
      case JSON -> ListJson.of(lists, kind, how.units());
      case CSV -> ListCsv.of(lists, kind, how.units());
      default -> TextPage.print(ListPages.of(lists, kind, how.units()), how);
    };
  }

  String estimate(EstimateFor whom, ProposeCommand.Format format, PrintOptions how) {
    Estimate estimate = lists.estimate();
    return switch (format) {
      case MARKDOWN -> MarkdownPage.print(whom.page(estimate, how.units()));
      case JSON -> whom.json(estimate);
      case CSV -> whom.csv(estimate);
      default -> TextPage.print(whom.page(estimate, how.units()), how);
    };
  }

  /**
   * Everything into a folder, under the names that people and programs rely on; an estimate where
   * there are prices.
   *
   * @return how many files were written
   */
  int write(Path folder, Words words, PrintOptions how, EstimateFor whom) {
    Map<String, String> files = new LinkedHashMap<>();
    Page builder = ListPages.builder(lists, how.units());
    builder.title(CommandWords.say("out.caveats"));
    Caveats.write(builder, proposal, words, how);
    files.put("builder.md", MarkdownPage.print(builder));
    for (ListKind kind : ListKind.values()) {
      files.put(kind.word() + ".csv", ListCsv.of(lists, kind, how.units()));
      files.put(kind.word() + ".json", ListJson.of(lists, kind, how.units()));
    }
    if (costed.by().prices().isPresent()) {
      files.put("estimate.md", estimate(whom, ProposeCommand.Format.MARKDOWN, how));
      files.put("estimate.csv", estimate(whom, ProposeCommand.Format.CSV, how));
    }
    files.put("proposal.json", ProposalJson.of(proposal, words, costed.json(words)));
    files.put("design.yaml", DesignWriter.yaml(ProposedDesign.of(proposal, intake.site().base())));
    Drawings.of(lists, proposal, intake.site(), base(), costed.by().tables(), how.units())
        .forEach((name, drawing) -> files.put(DRAWINGS + name, drawing));
    OutFolder.write(folder, files);
    return files.size();
  }

  /** Where everything stands in the base. */
  private Geometry base() {
    Site site = intake.site();
    Tables tables = costed.by().tables();
    String market = Market.of(site.materials().market(), tables);
    double endMarginIn = tables.thumb("crossbeam.end-margin").amount();
    return new BaseRecord(site.base(), new Stock(tables, market), endMarginIn).geometry();
  }
}
