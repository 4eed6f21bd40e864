package org.scantling.rulecases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.scantling.confirm.Materials;
import org.scantling.confirm.Service;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.search.DemandTries;
import org.scantling.shop.EstimateFor;
import org.scantling.shop.ListCsv;
import org.scantling.shop.ListKind;
import org.scantling.shop.ListPages;
import org.scantling.shop.Lists;
import org.scantling.tables.ChangedTables;
import org.scantling.tables.ChangedTables.Cell;
import org.scantling.tables.ChangedTables.Change;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/**
 * Everything that a changed cell is held against, the quickest first. A page that prints a number
 * and no more is none of them: what is printed and not used is what is looked for.
 */
final class Watches {
  private static final Path DEMO = Path.of("scenarios");
  private static final Path OURS = Path.of("src/test/resources/rulecases/sites");
  private static final Path ASKED = Path.of("src/test/resources/rulecases/nudged-sites.txt");

  private final ChangedTables tables;
  private final RuleBase rules = RuleBase.load();
  private final SiteReader reader = new SiteReader(Vocabulary.of(Tables.load()));
  private final List<Watch> quick = new ArrayList<>();
  private final List<Watch> slow = new ArrayList<>();

  private Watches(ChangedTables tables) {
    this.tables = tables;
  }

  static List<Watch> all(ChangedTables tables) throws IOException {
    Watches watches = new Watches(tables);
    watches.cases();
    watches.timber();
    for (String line : Files.readAllLines(ASKED)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        watches.asked(line);
      }
    }
    watches.folder(DEMO);
    watches.folder(OURS);
    watches.quick.addAll(watches.slow);
    return watches.quick;
  }

  private void cases() {
    TableCells cells = new TableCells(tables.ours());
    quick.add(
        new Watch.Cases(
            tables,
            cells,
            CaseFile.all(cells),
            (one, facts) -> one.found(rules, facts).equals(one.finds())));
  }

  /**
   * What every size is worth in every grade of every species: all timber is taken from there, so
   * that a row which no site happens to use is used as those are which one does.
   */
  private void timber() {
    quick.add(
        new Watch.Answer(
            "timber",
            tables,
            List.of(),
            cell -> Set.of("design-values.csv", "adjustment-factors.csv").contains(cell.table()),
            Watches::worth));
  }

  private static Object worth(Tables changed) {
    Materials materials = new Materials(changed);
    StringBuilder worth = new StringBuilder();
    Set<List<String>> grades = new LinkedHashSet<>();
    for (DesignValueRow row : changed.designValues().rows()) {
      grades.add(List.of(row.species(), row.grade()));
    }
    for (List<String> grade : grades) {
      for (SizeRow size : changed.sizes().rows()) {
        for (boolean incised : new boolean[] {false, true}) {
          worth.append(
              materials.find(size, 1, grade.get(0), grade.get(1), new Service(true, incised, 1)));
        }
        materials
            .row(size, grade.get(0), grade.get(1))
            .ifPresent(found -> worth.append(found.wetWeightPcf()));
        worth.append(flatUse(changed, grade.get(0), size));
      }
    }
    return worth.toString();
  }

  private static double flatUse(Tables changed, String species, SizeRow size) {
    return changed.factors().size(species, size).flatUseFactor();
  }

  private void folder(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        String name = file.getFileName().toString().replace(".yaml", "");
        site(name, reader.read(file), List.of(), cell -> true);
      }
    }
  }

  /**
   * A site with some of its values set otherwise, and other rows in the tables: {@code same-place
   * site.soil=clay | joints.csv:header-on-top:fastener=lag.3-8.8 ? fasteners.csv lag.3-8.8}.
   */
  private void asked(String line) {
    String[] about = line.split(" \\? ");
    String[] parts = about[0].split(" \\| ");
    List<String> words = Arrays.asList(parts[0].strip().split(" "));
    List<Setting> settings =
        words.subList(1, words.size()).stream()
            .map(each -> Setting.parse(each.replace('_', ' ')))
            .toList();
    Path demo = DEMO.resolve(words.get(0) + ".yaml");
    Path file = Files.exists(demo) ? demo : OURS.resolve(words.get(0) + ".yaml");
    List<Change> rows = new ArrayList<>();
    for (String row : parts.length > 1 ? parts[1].strip().split(" ") : new String[0]) {
      String[] cell = row.split("[:=]");
      rows.add(new Change(new Cell(cell[0], cell[1], cell[2], 0), cell[3]));
    }
    site(line.replace(",", ";"), reader.read(file, settings), rows, about(about));
  }

  /** The tables, or the rows of a table by the start of their ids, that a line is there for. */
  private static Predicate<Cell> about(String[] parts) {
    if (parts.length < 2) {
      return cell -> true;
    }
    String[] words = parts[1].strip().split(" ");
    return cell ->
        cell.table().equals(words[0])
            && (words.length == 1
                || cell.id().equals(words[1])
                || cell.id().startsWith(words[1] + "."));
  }

  private void site(String name, Intake site, List<Change> rows, Predicate<Cell> about) {
    // From where to where a factor or a strength holds is read where timber is looked up, and only
    // there.
    Predicate<Cell> seen =
        about.and(
            cell ->
                !cell.column().matches("nominal_.*_in|width_(from|to)_in")
                    || cell.table().equals("sizes.csv"));
    Proposal[] today = new Proposal[1];
    Supplier<Proposal> proposal =
        () -> {
          if (today[0] == null) {
            today[0] = propose(site, tables.with(rows));
          }
          return today[0];
        };
    quick.add(
        new Watch.Answer("lists of " + name, tables, rows, seen, t -> lists(proposal, site, t)));
    quick.add(
        new Watch.Answer(
            "demands of " + name,
            tables,
            rows,
            seen.and(cell -> Set.of("demands.csv", "vines.csv").contains(cell.table())),
            t -> DemandTries.of(new Engine(rules, t), t, site.site(), proposal.get())));
    slow.add(new Watch.Answer(name, tables, rows, seen, t -> propose(site, t)));
  }

  private Proposal propose(Intake site, Tables changed) {
    return new Engine(rules, changed).propose(site.site(), site.defaulted());
  }

  private static Object lists(Supplier<Proposal> proposal, Intake site, Tables changed) {
    if (!proposal.get().proposed()) {
      return "";
    }
    Lists lists = Lists.of(proposal.get(), site.site(), changed, Optional.empty());
    StringBuilder text = new StringBuilder(EstimateFor.BUILDER.json(lists.estimate()));
    for (ListKind kind : ListKind.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        text.append(ListCsv.of(lists, kind, units));
      }
      text.append(
          TextPage.print(
              ListPages.of(lists, kind, UnitSystem.IMPERIAL),
              PrintOptions.plain(UnitSystem.IMPERIAL)));
    }
    return text.toString();
  }
}
