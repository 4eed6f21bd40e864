package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Way;
import org.scantling.words.ChangeWords;
import org.scantling.words.Reader;

/** What it takes for an answer that somebody would rather have. */
final class KeepPage {
  private final Told told;
  private final LeastChange least;
  private final WayWords words;

  KeepPage(Told told, LeastChange least) {
    this.told = told;
    this.least = least;
    this.words = new WayWords(told, least.wanted());
  }

  Page page() {
    Page page = new Page().title(words.phrase("keep.title"));
    if (least.kept()) {
      return page.paragraph(words.phrase("keep.kept"));
    }
    page.paragraph(now());
    if (least.hopeless()) {
      page.paragraph(words.phrase("keep.nothing"));
    } else {
      ways(page);
    }
    List<String> end = end();
    return end.isEmpty() ? page : page.paragraph(String.join(" ", end));
  }

  private String now() {
    if (least.today().result() instanceof NeedsEngineer refused) {
      return words.phrase("keep.none") + joint() + Stopped.sentences(told.voice(), refused);
    }
    String now =
        words.phrase(
            least.today().decision(least.wanted().question()).isPresent()
                ? "keep.now"
                : "keep.unasked");
    return now
        + stops()
            .map(each -> joint() + words.phrase("keep.stops", Map.of("reason", each)))
            .orElse("");
  }

  private String joint() {
    return told.voice().reader() == Reader.ENGINEER ? "; " : " ";
  }

  /** What stops the wanted answer today, where it was looked at. */
  private Optional<String> stops() {
    return least
        .today()
        .decision(least.wanted().question())
        .flatMap(
            decision -> rejection(decision).map(reason -> told.voice().sentence(reason, decision)));
  }

  private Optional<Reason> rejection(Decision decision) {
    return decision.rejected().stream()
        .filter(each -> least.wanted().value().equals(option(each)))
        .findFirst();
  }

  private static Outcome option(Reason reason) {
    return new Outcome.Word(
        reason.finding() instanceof Finding.Reject reject ? reject.option() : "");
  }

  private void ways(Page page) {
    List<Way> chosen = least.singles().stream().filter(Way::choice).toList();
    List<Way> place = least.singles().stream().filter(way -> !way.choice()).toList();
    if (!chosen.isEmpty()) {
      page.heading(words.phrase("keep.single")).items(words.items(chosen));
    }
    page.heading(words.phrase("keep.pair"));
    if (least.pairs().isEmpty()) {
      page.paragraph(words.phrase("keep.no-pair"));
    }
    page.items(words.items(least.pairs()));
    if (!place.isEmpty()) {
      page.heading(words.phrase("keep.place"))
          .paragraph(words.phrase("keep.place.lead"))
          .items(words.items(place));
    }
  }

  /** What was tried, how sure the suggestions are, and how to try one. */
  private List<String> end() {
    List<String> tried = new ArrayList<>();
    for (LeastChange.Searched each : least.searched()) {
      tried.add(ChangeWords.of(told.voice()).range(each.demand(), each.least(), each.most()));
    }
    List<String> end = new ArrayList<>();
    end.add(words.phrase("keep.tried", Map.of("tried", String.join("; ", tried))));
    if (!least.hopeless()) {
      end.add(words.phrase("keep.sure"));
    }
    if (!least.singles().isEmpty()) {
      end.add(words.phrase("keep.try", Map.of("setting", setting())));
    }
    end.removeIf(String::isBlank);
    return end;
  }

  private String setting() {
    String setting = ChangeWords.setting(least.singles().get(0).changes().get(0));
    return setting.contains(" ") ? '"' + setting + '"' : setting;
  }
}
