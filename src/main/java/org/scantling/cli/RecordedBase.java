package org.scantling.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.BaseDesign;
import org.scantling.intake.DesignReader;
import org.scantling.intake.IntakeException;
import org.scantling.intake.KeyReader;
import org.scantling.intake.Vocabulary;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FileTrouble;
import org.scantling.tables.Tables;
import org.scantling.tables.Utf8;
import org.scantling.visit.RecordEdit;

/** A base design with a record that is to be added to. */
final class RecordedBase {
  private final Path file;
  private final Tables tables;
  private final DesignReader reader;
  private final BaseDesign before;
  private final Sayings sayings = Sayings.of("visit");

  private RecordedBase(Path file, Tables tables) {
    this.file = file;
    this.tables = tables;
    this.reader = new DesignReader(Vocabulary.of(tables));
    this.before = reader.read(file).design();
  }

  /**
   * @throws WrongOption where the file is none that has a record
   */
  static RecordedBase of(Path file, Workplace workplace) {
    RecordedBase base = new RecordedBase(file, workplace.tables());
    if (base.before.proven().isEmpty()) {
      throw new WrongOption(base.sayings.say("record-of-drawing", "file", file.toString()));
    }
    return base;
  }

  Tables tables() {
    return tables;
  }

  KeyReader keys() {
    return KeyReader.ofDesign(Vocabulary.of(tables));
  }

  /**
   * Writes the file anew with one entry more, and nothing else changed.
   *
   * @return how many entries the record has then
   */
  int add(String item) {
    String text = text();
    Optional<String> edited = RecordEdit.with(text, item).filter(each -> onlyAdds(each, item));
    if (edited.isEmpty()) {
      throw new WrongOption(
          sayings.say("record-by-hand", "file", file.toString(), "item", "- " + item));
    }
    WholeFile.write(file, edited.get());
    return record(before).size() + 1;
  }

  private String text() {
    try {
      return Utf8.text(Files.readAllBytes(file));
    } catch (IOException unreadable) {
      throw new OutException(
          CommandWords.say(
              "file.unreadable", "file", file.toString(), "why", FileTrouble.words(unreadable)));
    } catch (Utf8.NotUtf8 bytes) {
      throw new OutException(file + ": " + bytes.getMessage());
    }
  }

  /** Read back, the design is the same but for one entry at the end. */
  private boolean onlyAdds(String text, String item) {
    try {
      BaseDesign after = reader.read(KeyReader.text(file, text)).design();
      List<BaseDesign.Event> events = new ArrayList<>(record(after));
      if (events.size() != record(before).size() + 1) {
        return false;
      }
      BaseDesign.Event added = events.remove(events.size() - 1);
      return with(after, events).equals(before)
          && item.startsWith("{ date: " + added.date() + ", kind: " + added.kind() + ", ");
    } catch (IntakeException broken) {
      return false;
    }
  }

  private static List<BaseDesign.Event> record(BaseDesign design) {
    return design.proven().map(BaseDesign.Proven::record).orElse(List.of());
  }

  private static BaseDesign with(BaseDesign design, List<BaseDesign.Event> events) {
    BaseDesign.Proven proven = design.proven().orElseThrow();
    return new BaseDesign(
        design.title(),
        Optional.of(
            new BaseDesign.Proven(
                proven.builtYear(),
                proven.climate(),
                proven.soil(),
                proven.vine(),
                proven.slopePercent(),
                events)),
        design.posts(),
        design.headers(),
        design.crossbeams(),
        design.sidePanels(),
        design.braces(),
        design.materials());
  }
}
