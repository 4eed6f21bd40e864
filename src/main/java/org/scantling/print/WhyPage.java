package org.scantling.print;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal.Result;
import org.scantling.words.Reader;
import org.scantling.words.Topic;

/** Explains what was decided about a topic to one reader. */
final class WhyPage {
  private WhyPage() {}

  static Page of(Told told, Topic topic, Optional<LeastChange> back) {
    List<Decision> decisions =
        topic.questions().stream()
            .flatMap(question -> told.proposal().decision(question).stream())
            .toList();
    Page page = new Page();
    if (decisions.isEmpty()) {
      return undecided(page, told, topic);
    }
    Reader reader = told.voice().reader();
    if (reader == Reader.CLIENT) {
      new ClientWhy(told, back.map(each -> new BringBack(told, each))).write(page, decisions);
    } else if (reader == Reader.BUILDER) {
      new BuilderWhy(told, back.map(each -> new BringBack(told, each))).write(page, decisions);
    } else {
      new EngineerWhy(told, back.map(each -> new BringBack(told, each))).write(page, decisions);
    }
    return page;
  }

  private static Page undecided(Page page, Told told, Topic topic) {
    String name = told.voice().label(topic.questions().get(0));
    page.title(Sentence.capital(name));
    if (told.proposal().result() instanceof Result.NeedsEngineer broken) {
      return page.paragraph(
          "Nothing was decided: the site is a case for a licensed engineer. "
              + told.voice().sentence(broken.reason()));
    }
    return page.paragraph("Nothing had to be decided: this structure has none.");
  }
}
