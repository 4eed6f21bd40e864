package org.scantling.print;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Topic;

/** Explains what was decided about a topic to one reader. */
final class WhyPage {
  private static final Sayings SAYINGS = Sayings.of("why");

  private WhyPage() {}

  static Page of(Told told, Topic topic, Optional<LeastChange> back) {
    List<Decision> decisions =
        topic.questions().stream()
            .flatMap(question -> told.proposal().decision(question).stream())
            .toList();
    Page page = new Page();
    if (topic.questions().get(0) == Question.BASE) {
      new BaseWhy(told).write(page);
      return page;
    }
    Reader reader = told.voice().reader();
    if (told.proposal().result() instanceof Result.NeedsEngineer broken) {
      if (decisions.isEmpty() || reader != Reader.ENGINEER) {
        // What was chosen on the way to nothing serves nobody: it would read as if it stood.
        return undecided(page, told, topic, broken);
      }
      page.paragraph(
          SAYINGS.say("none.chosen", "broken", new EngineerSection(told).broken(broken)));
    }
    if (decisions.isEmpty()) {
      page.title(Sentence.capital(told.voice().label(topic.questions().get(0))));
      return page.paragraph(SAYINGS.say("none.part"));
    }
    if (reader == Reader.CLIENT) {
      new ClientWhy(told, back.map(each -> new BringBack(told, each))).write(page, decisions);
    } else if (reader == Reader.BUILDER) {
      new BuilderWhy(told, back.map(each -> new BringBack(told, each))).write(page, decisions);
    } else {
      new EngineerWhy(told, back.map(each -> new BringBack(told, each))).write(page, decisions);
    }
    return page;
  }

  private static Page undecided(Page page, Told told, Topic topic, Result.NeedsEngineer broken) {
    page.title(Sentence.capital(told.voice().label(topic.questions().get(0))));
    return page.paragraph(undecided(told, broken));
  }

  /** A client is told which part has no answer, and not which candidate for it came closest. */
  private static String undecided(Told told, Result.NeedsEngineer broken) {
    boolean part = broken.reason().finding() instanceof Finding.Reject;
    if (told.voice().reader() == Reader.CLIENT && part && broken.broken().isPresent()) {
      return SAYINGS.say("client.none", "part", told.voice().label(broken.broken().get()));
    }
    return SAYINGS.say(
        "none",
        "why",
        part ? new EngineerSection(told).broken(broken) : Stopped.sentences(told.voice(), broken));
  }
}
