package org.scantling.options;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.WholeOption;
import org.scantling.tables.OptionCountRow;
import org.scantling.tables.Tables;

/**
 * Which of the structures that no other beats are shown: what is proposed, the best at each count
 * in turn, and the least that could be given up so that some timber comes out smaller.
 */
final class Showing {
  private static final List<Question> SIZES =
      List.of(Question.POST_SIZE, Question.HEADER_SIZE, Question.CROSSBEAM_SIZE);

  private final List<OptionCountRow> rows;
  private final Rivals rivals;
  private final int most;
  private final int least;
  private final Map<Trial, List<OptionMeasure>> shown = new LinkedHashMap<>();

  Showing(Tables tables, List<OptionCountRow> rows, Rivals rivals) {
    this.rows = rows;
    this.rivals = rivals;
    this.most = (int) tables.shop("options.most").amount();
    this.least = (int) tables.shop("options.least").amount();
  }

  /**
   * @param better the one of them that beats what is proposed, where one does
   */
  record Shown(List<WholeOption> options, Optional<WholeOption> better) {}

  Shown of(List<Trial> sound) {
    Optional<Trial> proposed = sound.stream().filter(Trial::asProposed).findFirst();
    proposed.ifPresent(each -> shown.put(each, new ArrayList<>()));
    List<Trial> unbeaten =
        new ArrayList<>(rivals.unbeaten(worthConceding(distinct(sound), proposed)));
    proposed.filter(each -> !unbeaten.contains(each)).ifPresent(unbeaten::add);
    Optional<Trial> better =
        proposed.flatMap(
            each -> rivals.beating(each, unbeaten).stream().min(rivals.bestFirst(rows.get(0))));
    better.ifPresent(each -> shown.put(each, new ArrayList<>()));
    concession(unbeaten).ifPresent(each -> shown.putIfAbsent(each, new ArrayList<>()));
    for (OptionCountRow row : rows) {
      if (row.names()) {
        best(row, unbeaten);
      }
    }
    more(unbeaten);
    List<WholeOption> options = new ArrayList<>();
    shown.forEach((trial, best) -> options.add(trial.bestAt(best)));
    return new Shown(options, better.map(each -> each.bestAt(shown.getOrDefault(each, List.of()))));
  }

  private void best(OptionCountRow row, List<Trial> unbeaten) {
    unbeaten.stream()
        .min(rivals.bestFirst(row))
        .filter(each -> shown.containsKey(each) || (shown.size() < most && worthIt(row, each)))
        .ifPresent(
            best -> {
              shown.computeIfAbsent(best, each -> new ArrayList<>());
              // Whoever is shown and as good is called so too.
              shown.forEach(
                  (each, at) -> {
                    if (Rivals.compared(row, each, best) == 0) {
                      at.add(row.measure());
                    }
                  });
            });
  }

  /** True where it is better at that than the proposed one by enough to be worth a look. */
  private boolean worthIt(OptionCountRow row, Trial trial) {
    return shown.keySet().stream()
        .filter(Trial::asProposed)
        .allMatch(
            each ->
                Rivals.compared(row, trial, each) > 0
                    && row.worthIt(trial.measure(row.measure()), each.measure(row.measure())));
  }

  /** The next best, where fewer are the best at anything. */
  private void more(List<Trial> unbeaten) {
    for (OptionCountRow row : rows) {
      if (row.names() && shown.size() < least) {
        unbeaten.stream()
            .filter(each -> !shown.containsKey(each) && worthIt(row, each))
            .min(rivals.bestFirst(row))
            .ifPresent(each -> shown.put(each, new ArrayList<>()));
      }
    }
  }

  /** Of those that come to the same structure the one that sets least. */
  private static List<Trial> distinct(List<Trial> sound) {
    Map<Object, Trial> byAnswers = new LinkedHashMap<>();
    sound.stream()
        .sorted(Rivals.SETS_LEAST)
        .forEach(each -> byAnswers.putIfAbsent(answers(each.proposal()), each));
    return List.copyOf(byAnswers.values());
  }

  private static List<Object> answers(Proposal proposal) {
    return proposal.decisions().stream()
        .<Object>map(each -> List.of(each.question(), each.proposed()))
        .toList();
  }

  private static Optional<Trial> concession(List<Trial> unbeaten) {
    return unbeaten.stream()
        .filter(each -> each.attempt().conceded().isPresent())
        .min(Rivals.SETS_LEAST);
  }

  /** Room is given up for a smaller timber and not an inch more than that takes. */
  private static List<Trial> worthConceding(List<Trial> sound, Optional<Trial> proposed) {
    List<Trial> kept = new ArrayList<>();
    for (Trial each : sound) {
      boolean bringsNothing =
          each.attempt().conceded().isPresent()
              && (proposed.isEmpty() || !smaller(each, proposed.get()));
      boolean more = kept.stream().anyMatch(other -> alike(other, each));
      if (!bringsNothing && !more) {
        kept.add(each);
      }
    }
    return kept;
  }

  /** Gives up more of the same for nothing further. */
  private static boolean alike(Trial less, Trial more) {
    return less.attempt().conceded().isPresent()
        && less.attempt().conceded().equals(more.attempt().conceded())
        && sizes(less.proposal()).equals(sizes(more.proposal()));
  }

  private static boolean smaller(Trial trial, Trial proposed) {
    return !sizes(trial.proposal()).equals(sizes(proposed.proposal()))
        && trial.measure(OptionMeasure.TIMBER) < proposed.measure(OptionMeasure.TIMBER);
  }

  private static List<Object> sizes(Proposal proposal) {
    return SIZES.stream()
        .flatMap(each -> proposal.decision(each).stream())
        .map(Decision::proposed)
        .map(Object.class::cast)
        .toList();
  }
}
