package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.words.Voice;

/** The answer to a check, in a sentence or two. */
final class ReviewAnswer {
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
    int all = review.checks().size();
    if (failing.isEmpty()) {
      String every =
          review.unworked().isEmpty()
              ? "All " + all + " checks"
              : "The " + all + " checks that could be worked";
      return new PassingChecks(voice, review.checkLimits()).sentence(every, review.checks());
    }
    Checked worst = failing.get(0);
    return failing.size()
        + " of "
        + all
        + (failing.size() == 1 ? " checks fails: " : " checks fail; the worst: ")
        + worst.role()
        + ", "
        + voice.check(worst.id())
        + ", "
        + line.over(worst)
        + ".";
  }

  private String stands() {
    return review.unworked().isEmpty()
        ? ""
        : "Nothing holds the posts upright, so the checks of "
            + Sentence.list(review.unworked().stream().map(each -> each + "s").toList())
            + " could not be run.";
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
      case 1 -> "One limit is not met: " + broken.get(0) + ".";
      default -> broken.size() + " limits are not met: " + named(broken) + ".";
    };
  }

  private static String named(List<String> names) {
    List<String> shown = new ArrayList<>(names.subList(0, Math.min(names.size(), MOST_NAMED)));
    if (names.size() > shown.size()) {
      shown.add("more");
    }
    return Sentence.list(shown);
  }

  private String habits() {
    int habits = review.limits(Shortfall.Kind.OUT_OF_HABIT).size();
    return switch (habits) {
      case 0 -> "";
      case 1 -> "One trade habit is not followed.";
      default -> habits + " trade habits are not followed.";
    };
  }
}
