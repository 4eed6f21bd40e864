package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.KeyReader;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;
import org.scantling.tables.Tables;
import org.scantling.visit.RecordItems;
import org.scantling.visit.Visit;
import org.scantling.visit.VisitAnswers;
import org.scantling.visit.VisitChoices;
import org.scantling.visit.VisitKind;
import org.scantling.visit.VisitRows;
import org.scantling.words.ClosedLists;

/** An entry of a record, asked for or taken from options. */
final class RecordVisit {
  private final Path file;
  private final Tables tables;
  private final KeyReader keys;
  private final GeneralOptions general;
  private final Sayings sayings = Sayings.of("visit");

  RecordVisit(Path file, RecordedBase base, GeneralOptions general) {
    this.file = file;
    this.tables = base.tables();
    this.keys = base.keys();
    this.general = general;
  }

  /** The entry as it will stand in the file; empty where somebody left before. */
  Optional<String> asked(AnswerInput in, PrintWriter out) {
    Visit visit =
        new Visit(
            VisitRows.read(VisitKind.RECORD, tables, in.today()),
            keys,
            new VisitChoices(
                keys, ClosedLists.of(tables, general.units(UnitSystem.IMPERIAL)), Map.of()),
            tables,
            (self, row, answers) -> Optional.empty());
    Optional<VisitAnswers> answers = new Dialogue(visit, kept(), in, out).run("welcome-record");
    return answers.map(all -> visit.record(all).get(0));
  }

  /** Forgets the answers once they are in the file. */
  void over() {
    kept().remove();
  }

  private KeptVisit kept() {
    return new KeptVisit(
        file, sayings.say("kept-comment-record", "file", file.getFileName().toString()));
  }

  /** The same of options; every one is looked at before any is refused. */
  String given(Optional<String> kind, String date, Optional<String> note, Optional<String> photo) {
    String item =
        RecordItems.item(keys, date, needed("--kind", kind), needed("--note", note), photo);
    Map<String, String> written = Map.of("proven.record", "[ " + item + " ]");
    Map.of("kind", "kind", "date", "date", "note", "what", "photo", "photo")
        .forEach(
            (name, key) ->
                keys.refusal(written, "proven.record." + key)
                    .ifPresent(
                        why -> {
                          throw new WrongOption("--" + name + ": " + why);
                        }));
    return item;
  }

  private String needed(String option, Optional<String> given) {
    return given.orElseThrow(() -> new WrongOption(sayings.say("record-lacks", "option", option)));
  }
}
