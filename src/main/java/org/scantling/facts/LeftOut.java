package org.scantling.facts;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.rulebase.Fired;

/**
 * The sizes and joints that were not laid out before the rules, because a smaller one seemed to do.
 * Whether it does is for the rules to say.
 */
public final class LeftOut {
  private final Map<Question, Cut> cuts = new EnumMap<>(Question.class);

  /**
   * @param last the largest that was laid out
   * @param others those that were not
   */
  private record Cut(String last, List<String> others) {}

  /**
   * @param offered smallest first
   * @param laidOut how many of them were laid out, above 0
   */
  void add(Question question, List<String> offered, int laidOut) {
    if (laidOut < offered.size()) {
      List<String> others = offered.subList(laidOut, offered.size());
      cuts.put(question, new Cut(offered.get(laidOut - 1), others));
    }
  }

  /**
   * True where one of them may be the answer: the rules stop the largest that they were shown, or
   * ask for one that they were not.
   */
  public boolean missed(List<Fired> fired) {
    return !cuts.isEmpty() && fired.stream().anyMatch(each -> missed(each.finding()));
  }

  private boolean missed(Finding finding) {
    if (finding instanceof Finding.Reject reject) {
      Cut cut = cuts.get(reject.question());
      return cut != null && cut.last().equals(reject.option());
    }
    if (finding instanceof Finding.PreferOption preferred) {
      Cut cut = cuts.get(preferred.question());
      return cut != null && cut.others().contains(preferred.option());
    }
    return false;
  }
}
