package org.scantling.rulecases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.scantling.reasons.Fact;
import org.scantling.tables.ChangedTables;
import org.scantling.tables.ChangedTables.Cell;
import org.scantling.tables.ChangedTables.Change;
import org.scantling.tables.Tables;

/** Something made from the tables, that differs when a cell it is made from does. */
sealed interface Watch {
  /** No commas in it. */
  String name();

  /** False where it would be a waste of time to look. */
  boolean mayNotice(Cell cell);

  boolean notices(List<Change> changes);

  /** One answer of the program, with the tables as they are and then as they are changed. */
  final class Answer implements Watch {
    private final String name;
    private final ChangedTables tables;
    private final List<Change> always;
    private final Predicate<Cell> about;
    private final Asked asked;
    private Object today;

    /** Something that is asked of tables. */
    @FunctionalInterface
    interface Asked {
      Object of(Tables tables);
    }

    /**
     * @param always changes that both answers have in common
     * @param about what is worth looking for
     */
    Answer(
        String name,
        ChangedTables tables,
        List<Change> always,
        Predicate<Cell> about,
        Asked asked) {
      this.name = name;
      this.tables = tables;
      this.always = List.copyOf(always);
      this.about = about;
      this.asked = asked;
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public boolean mayNotice(Cell cell) {
      return about.test(cell) && always.stream().noneMatch(each -> each.cell().equals(cell));
    }

    @Override
    public boolean notices(List<Change> changes) {
      if (today == null) {
        today = answer(always);
      }
      List<Change> all = new ArrayList<>(always);
      all.addAll(changes);
      return !answer(all).equals(today);
    }

    /** A number that leads to a fault was read as well. */
    private Object answer(List<Change> changes) {
      try {
        return asked.of(tables.with(changes));
      } catch (RuntimeException fault) {
        return fault.toString();
      }
    }
  }

  /** Every case beside every rule whose facts are rows that change. */
  record Cases(ChangedTables tables, TableCells cells, List<RuleCase> all, RuleSession base)
      implements Watch {
    @Override
    public String name() {
      return "cases";
    }

    @Override
    public boolean mayNotice(Cell cell) {
      return true;
    }

    @Override
    public boolean notices(List<Change> changes) {
      var moved = tables.moved(changes);
      return all.stream()
          .anyMatch(
              one -> {
                var facts = one.facts(cells, number -> number);
                return facts.stream().anyMatch(moved::containsKey)
                    && !base.finds(one, facts.stream().map(each -> moved(moved, each)).toList());
              });
    }

    private static Fact moved(Map<?, ? extends Fact> moved, Fact fact) {
      return moved.containsKey(fact) ? moved.get(fact) : fact;
    }
  }

  /** Runs a case. */
  @FunctionalInterface
  interface RuleSession {
    /** True where the case finds what it says. */
    boolean finds(RuleCase one, List<Fact> facts);
  }
}
