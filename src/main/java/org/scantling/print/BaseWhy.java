package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.BaseCount;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.TriedBase;
import org.scantling.sayings.Sayings;
import org.scantling.tables.BaseChangeRow;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** Explains which of the bases that a site file names was taken. */
final class BaseWhy {
  private static final Sayings SAYINGS = TakenBase.SAYINGS;

  private final Told told;
  private final Voice voice;

  BaseWhy(Told told) {
    this.told = told;
    this.voice = told.voice();
  }

  void write(Page page) {
    page.title(Sentence.capital(voice.label(Question.BASE)));
    told.proposal()
        .bases()
        .ifPresentOrElse(choice -> write(page, choice), () -> page.paragraph(one()));
  }

  private String one() {
    String saying = voice.reader() == Reader.CLIENT ? "client.one" : "why.one";
    return SAYINGS.say(saying, "taken", told.proposal().baseTitle());
  }

  private void write(Page page, BaseChoice choice) {
    TakenBase taken = new TakenBase(choice, voice);
    if (voice.reader() == Reader.CLIENT) {
      boolean built = choice.taken().proposal().proposed();
      page.paragraph(SAYINGS.say(built ? "client.taken" : "client.none", taken.blanks()));
      page.items(choice.others().stream().map(each -> item(each, taken, Map.of())).toList());
      return;
    }
    page.paragraph(taken.taken());
    if (choice.taken().proposal().proposed()) {
      page.paragraph(changes(choice.taken()));
    }
    page.heading(SAYINGS.say("why.others"));
    page.items(choice.others().stream().map(each -> item(each, taken, more(each))).toList());
    page.heading(SAYINGS.say("why.order")).add(Block.Items.of(order()));
    if (voice.reader() == Reader.ENGINEER) {
      page.heading(SAYINGS.say("why.counts")).add(counts(choice));
    }
  }

  private static Block.Item item(TriedBase base, TakenBase taken, Map<String, String> more) {
    Map<String, String> blanks = new HashMap<>(taken.ruledOut(base));
    blanks.put("reason", taken.reason(base));
    blanks.putAll(more);
    return new Block.Item("", SAYINGS.say("why.other", blanks));
  }

  /** The rule that told against it, and what would have changed. */
  private Map<String, String> more(TriedBase base) {
    Reason reason = base.reason().orElseThrow();
    return Map.of(
        "source",
        "[" + reason.note().id() + "; " + voice.source(reason.source()) + "]",
        "changes",
        String.join("; ", changed(base)));
  }

  private String changes(TriedBase taken) {
    List<String> changed = changed(taken);
    return changed.isEmpty()
        ? SAYINGS.say("why.taken.none", "taken", taken.name())
        : SAYINGS.say("why.taken", "taken", taken.name(), "changes", String.join("; ", changed));
  }

  private List<String> changed(TriedBase base) {
    return base.changed().stream()
        .map(each -> change(base.proposal().decision(each).orElseThrow()))
        .toList();
  }

  private String change(Decision decision) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("name", voice.label(decision.question()));
    blanks.put("now", voice.proposed(decision));
    decision.base().ifPresent(base -> blanks.put("was", voice.say(decision.question(), base)));
    return SAYINGS.say("why.change", blanks);
  }

  private List<String> order() {
    return told.words().tables().baseChanges().rows().stream()
        .map(BaseChangeRow::statement)
        .toList();
  }

  /** Every count of every base; a dash where one has none to tell. */
  private Block counts(BaseChoice choice) {
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(SAYINGS.say("why.column")));
    choice.tried().forEach(each -> head.add(each.name()));
    rows.add(head);
    for (BaseChangeRow counted : told.words().tables().baseChanges().rows()) {
      List<String> row = new ArrayList<>(List.of(counted.id()));
      choice.tried().forEach(each -> row.add(count(each, counted.id())));
      rows.add(row);
    }
    return new Block.Grid(rows);
  }

  private String count(TriedBase base, String what) {
    return base.counts().stream()
        .filter(each -> each.what().equals(what))
        .map(BaseCount::measure)
        .map(voice::say)
        .findFirst()
        .orElseGet(() -> SAYINGS.say("why.no-count"));
  }
}
