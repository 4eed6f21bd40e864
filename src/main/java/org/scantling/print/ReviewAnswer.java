package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** The answer to a check, in a sentence or two. */
final class ReviewAnswer {
  private static final Sayings SAYINGS = Sayings.of("review");
  private static final int MOST_NAMED = 3;

  private final Review review;
  private final Voice voice;
  private final CheckLine line;

  ReviewAnswer(Review review, Voice voice) {
    this.review = review;
    this.voice = voice;
    this.line = new CheckLine(voice, review.checkLimits());
  }

  /** What fails comes first. */
  String text() {
    List<String> sentences = new ArrayList<>(List.of(checks()));
    sentences.add(review.failing().isEmpty() ? 0 : 1, limits());
    sentences.add(0, stands());
    sentences.add(habits());
    sentences.removeIf(String::isEmpty);
    return String.join(" ", sentences);
  }

  private String checks() {
    List<Checked> failing = review.failing();
    if (failing.isEmpty()) {
      PassingChecks passing = new PassingChecks(voice, review.checkLimits());
      return review.unworked().isEmpty()
          ? passing.sentence(review.checks())
          : passing.sentenceOfWorked(review.checks());
    }
    Checked worst = failing.get(0);
    return SAYINGS.say(
        failing.size() == 1 ? "fails" : "fail",
        Map.of(
            "count", Integer.toString(failing.size()),
            "all", Integer.toString(review.checks().size()),
            "member", worst.role(),
            "check", voice.check(worst.id()),
            "over", line.over(worst)));
  }

  private String stands() {
    List<String> members =
        review.unworked().stream().map(each -> SAYINGS.say("unworked." + each)).toList();
    return members.isEmpty() ? "" : SAYINGS.say("unworked", "members", Sentence.list(members));
  }

  private String limits() {
    List<String> broken =
        review.limits().stream()
            .filter(each -> each.kind().fails())
            .map(each -> voice.label(each.question()))
            .distinct()
            .toList();
    return switch (broken.size()) {
      case 0 -> "";
      case 1 -> SAYINGS.say("limit", "which", broken.get(0));
      default ->
          SAYINGS.say("limits", "count", Integer.toString(broken.size()), "which", named(broken));
    };
  }

  private static String named(List<String> names) {
    List<String> shown = new ArrayList<>(names.subList(0, Math.min(names.size(), MOST_NAMED)));
    if (names.size() > shown.size()) {
      shown.add(SAYINGS.say("more"));
    }
    return Sentence.list(shown);
  }

  private String habits() {
    int habits = review.limits(Shortfall.Kind.OUT_OF_HABIT).size();
    return habits == 0 ? "" : SAYINGS.say("habits", "count", Integer.toString(habits));
  }
}
