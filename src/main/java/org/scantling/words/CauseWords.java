package org.scantling.words;

import org.scantling.reasons.Decision;
import org.scantling.sayings.Sayings;

/** Changed answers, as they are said to one reader to be the cause of others. */
public final class CauseWords {
  private static final Sayings SAYINGS = Sayings.of("voice");

  private final Voice voice;

  private CauseWords(Voice voice) {
    this.voice = voice;
  }

  public static CauseWords of(Voice voice) {
    return new CauseWords(voice);
  }

  /**
   * How a changed answer is told as a cause.
   *
   * @param worked true where its share was worked out, so that what explains it is so
   */
  public String driver(Decision decision, boolean worked) {
    SubjectRow row = voice.words().subjects().row(decision.question());
    String now = voice.proposed(decision);
    String then =
        decision
            .base()
            .map(base -> voice.say(decision.question(), base))
            .orElseGet(() -> SAYINGS.say("none"));
    String change =
        voice.reader() == Reader.CLIENT
            ? SAYINGS.say("driver.client", "now", row.phrase().of(now), "then", then)
            : SAYINGS.say("driver", "name", row.builder(), "now", now, "then", then);
    return change + (worked ? remark(decision) : "");
  }

  /**
   * The name of a changed answer that is a cause, with what explains it.
   *
   * @param worked true where its share was worked out, so that what explains it is so
   */
  public String cause(Decision decision, boolean worked) {
    return voice.label(decision.question()) + (worked ? remark(decision) : "");
  }

  private String remark(Decision decision) {
    SubjectRow row = voice.words().subjects().row(decision.question());
    boolean holds =
        row.remarkFrom().isEmpty()
            || decision
                .base()
                .map(base -> voice.say(decision.question(), base))
                .filter(row.remarkFrom()::equals)
                .isPresent();
    return holds && !row.remark().isEmpty() ? " (" + row.remark() + ")" : "";
  }
}
