package org.scantling.words;

import java.util.Set;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.Tables;

/** All words, read once; safe to share between threads. */
public final class Words {
  private final Wording wording;
  private final Subjects subjects;
  private final OptionWords options;
  private final Tables tables;

  private Words(Tables tables) {
    this.tables = tables;
    this.wording = Wording.read();
    this.subjects = Subjects.read();
    this.options = OptionWords.read(tables);
  }

  /** The words of the program, with those that the tables own. */
  public static Words load(Tables tables) {
    return new Words(tables);
  }

  public Subjects subjects() {
    return subjects;
  }

  /** How all of it is said to one reader. */
  public Voice voice(Reader reader, UnitSystem units) {
    return new Voice(this, reader, units);
  }

  /** The rules that have words. */
  public Set<String> rules() {
    return wording.rules();
  }

  Wording wording() {
    return wording;
  }

  OptionWords options() {
    return options;
  }

  Tables tables() {
    return tables;
  }
}
