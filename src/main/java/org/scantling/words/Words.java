package org.scantling.words;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Sold;
import org.scantling.tables.Tables;
import org.scantling.tables.TimberUse;
import org.scantling.tables.Yard;

/** All words, read once; safe to share between threads. */
public final class Words {
  private final Wording wording;
  private final Subjects subjects;
  private final OptionWords options;
  private final Reads reads;
  private final Tables tables;
  private final Optional<Yard> yard;

  private Words(Tables tables) {
    this.tables = tables;
    this.yard = Optional.empty();
    this.wording = Wording.read();
    this.subjects = Subjects.read();
    this.reads = Reads.read(tables);
    this.options = OptionWords.read(tables);
  }

  /** The words of the program, with those that the tables own. */
  public static Words load(Tables tables) {
    return new Words(tables);
  }

  private Words(Words others, Optional<Yard> yard) {
    this.tables = others.tables;
    this.wording = others.wording;
    this.subjects = others.subjects;
    this.reads = others.reads;
    this.options = others.options;
    this.yard = yard;
  }

  /** The same where the timber comes from a yard whose list is at hand. */
  public Words at(Optional<Yard> place) {
    return place.isEmpty() ? this : new Words(this, place);
  }

  /** The lengths of a size that can be bought for a use. */
  Sold sold(String size, TimberUse use) {
    return Sold.of(size, use, tables, yard);
  }

  public Subjects subjects() {
    return subjects;
  }

  /** The choices of which it can be asked how far they hold. */
  public Choices choices() {
    return Choices.read();
  }

  /** Phrases that no rule says, such as what would have to be asked otherwise. */
  Phrases phrases() {
    return Phrases.all();
  }

  /** What the symbols of the workings mean. */
  FormulaSymbols symbols() {
    return new FormulaSymbols(tables.symbols().rows());
  }

  /** What checks and worked numbers are made from. */
  public Reads reads() {
    return reads;
  }

  /** How all of it is said to one reader. */
  public Voice voice(Reader reader, UnitSystem units) {
    return new Voice(this, reader, units);
  }

  /** The rules that have words. */
  public Set<String> rules() {
    return wording.rules();
  }

  /** How a rule's finding is told, with its blanks unfilled; empty where it has no words. */
  public Optional<String> written(String rule, Reader reader) {
    return wording.rules().contains(rule)
        ? Optional.of(wording.template(rule, reader).text())
        : Optional.empty();
  }

  /** A row of one of the tables of bare numbers, if a reference names one. */
  Optional<NumberRow> numbers(String reference) {
    return Stream.of(tables.thumbs(), tables.live(), tables.snow(), tables.authority())
        .flatMap(table -> table.find(reference).stream())
        .findFirst();
  }

  Wording wording() {
    return wording;
  }

  OptionWords options() {
    return options;
  }

  /** The tables that own words. */
  public Tables tables() {
    return tables;
  }
}
