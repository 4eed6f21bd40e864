package org.scantling.rulebook;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.quantity.Measure;
import org.scantling.tables.BaseChangeRow;
import org.scantling.tables.CautionRow;
import org.scantling.tables.CheckRow;
import org.scantling.tables.DefaultWord;
import org.scantling.tables.JointRow;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;
import org.scantling.tables.WindRow;

/** Finds the rows that a premise reads. */
final class Figures {
  private final Map<String, List<Table<? extends TableRow>>> byFact = new LinkedHashMap<>();

  Figures(Tables tables) {
    byFact.put(
        "NumberRow", List.of(tables.thumbs(), tables.snow(), tables.live(), tables.authority()));
    byFact.put("WindRow", List.of(tables.wind()));
    byFact.put("CheckRow", List.of(tables.checks()));
    byFact.put("DefaultWord", List.of(tables.defaults()));
    byFact.put("VineRow", List.of(tables.vines()));
    byFact.put("UserRow", List.of(tables.users()));
    byFact.put("ZoneRow", List.of(tables.zones()));
    byFact.put("StockLengthRow", List.of(tables.stockLengths()));
    byFact.put("JointRow", List.of(tables.joints()));
    byFact.put("CautionRow", List.of(tables.cautions()));
    byFact.put("BaseChangeRow", List.of(tables.baseChanges()));
  }

  /** True where the fact is a row of a table. */
  boolean rows(Premise premise) {
    return byFact.containsKey(premise.fact());
  }

  /** The row it names, or every row there is where it names none. */
  List<Figure> of(Premise premise) {
    List<Figure> figures = new ArrayList<>();
    for (Table<? extends TableRow> table : byFact.getOrDefault(premise.fact(), List.of())) {
      for (TableRow row : table.rows()) {
        if (premise.id().map(row.id()::equals).orElse(true) && asked(premise, row)) {
          figures.add(figure(premise, table.fileName(), row));
        }
      }
    }
    return figures;
  }

  /** Checks by the role of the question, cautions that hold always. */
  private static boolean asked(Premise premise, TableRow row) {
    if (row instanceof CautionRow caution && premise.body().contains("occasion == \"always\"")) {
      return caution.occasion().equals("always");
    }
    return !(row instanceof JointRow joint) || joint.usual() || !premise.body().contains("usual");
  }

  private static Figure figure(Premise premise, String file, TableRow row) {
    if (row instanceof NumberRow number) {
      return number(file, row, number.measure(), number.statement());
    }
    if (row instanceof WindRow wind) {
      return number(file, row, wind.measure(), wind.statement());
    }
    if (row instanceof CheckRow check) {
      return number(file, row, Measure.ratio(check.limitRatio()), check.builderWords());
    }
    if (row instanceof DefaultWord word) {
      return word(file, row, word.word(), word.statement());
    }
    if (row instanceof CautionRow caution) {
      return word(file, row, "", caution.text());
    }
    if (row instanceof BaseChangeRow counted) {
      return word(file, row, "", counted.statement());
    }
    return row instanceof JointRow joint
        ? word(file, row, "", joint.fasteners())
        : word(file, row, cells(premise, row), "");
  }

  private static Figure number(String file, TableRow row, Measure measure, String words) {
    return new Figure(file, row.id(), Optional.of(measure), "", words, row.source());
  }

  private static Figure word(String file, TableRow row, String word, String words) {
    return new Figure(file, row.id(), Optional.empty(), word, words, row.source());
  }

  /** The cells that the rule reads, each with its column. */
  private static String cells(Premise premise, TableRow row) {
    return Arrays.stream(row.getClass().getRecordComponents())
        .filter(cell -> cell.getType() == double.class && premise.names(cell.getName()))
        .map(cell -> Cell.say(cell.getName(), value(cell, row)))
        .collect(Collectors.joining(", "));
  }

  private static double value(RecordComponent cell, TableRow row) {
    try {
      return (double) cell.getAccessor().invoke(row);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
