package org.scantling.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.answers.ResultCache;
import org.scantling.concurrent.Cores;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;
import org.scantling.tables.Tables;

/**
 * What is the least that a site would have to ask otherwise for a wanted answer? The whole engine
 * is asked about every change that is tried, alone and in pairs.
 */
public final class LeastChangeSearch {
  private static final int MOST_PAIRS = 3;

  private final Engine engine;
  private final Tables tables;

  /**
   * @param tables those of the engine
   */
  public LeastChangeSearch(Engine engine, Tables tables) {
    this.engine = engine;
    this.tables = tables;
  }

  /**
   * Single changes and pairs.
   *
   * @param assumptions paths of the site file that were left out
   * @param value the answer that is wanted; a number is met by anything beyond it as well
   */
  public LeastChange of(Site site, List<String> assumptions, Question question, Outcome value) {
    Proposal today = engine.propose(site, assumptions);
    Wanted wanted = wanted(today, question, value);
    if (wanted.met(today)) {
      return new LeastChange(wanted, today, true, List.of(), List.of(), List.of());
    }
    List<DemandLine> lines = lines(site, assumptions, today, wanted);
    List<Way> singles = singles(lines, wanted);
    return new LeastChange(
        wanted,
        today,
        false,
        singles,
        pairs(lines, wanted, more(site, wanted, today)),
        lines.stream().map(DemandLine::searched).toList());
  }

  /** Single changes alone: for a proposal that is there already, and sooner done. */
  public LeastChange singles(
      Site site, List<String> assumptions, Proposal today, Question question, Outcome value) {
    Wanted wanted = wanted(today, question, value);
    List<DemandLine> lines = lines(site, assumptions, today, wanted);
    return new LeastChange(
        wanted,
        today,
        wanted.met(today),
        singles(lines, wanted),
        List.of(),
        lines.stream().map(DemandLine::searched).toList());
  }

  private static Wanted wanted(Proposal today, Question question, Outcome value) {
    return Wanted.instead(question, value, today.decision(question).map(each -> each.proposed()));
  }

  /**
   * What can be asked otherwise. A smaller size is looked for only where less is asked, and a
   * larger one where more is: a wider way that happens to bring a smaller post is no advice, nor is
   * a lower grade for which no larger post is graded.
   */
  private List<DemandLine> lines(
      Site site, List<String> assumptions, Proposal today, Wanted wanted) {
    DemandScales scales = new DemandScales(tables);
    ThreadLocal<ResultCache> own =
        ThreadLocal.withInitial(() -> new ResultCache(ResultCache.Retention.MANY_RUNS));
    boolean oneWay = wanted.question().growing() || joint(wanted);
    boolean up = more(site, wanted, today);
    return tables.demands().rows().stream()
        .filter(row -> row.weightRatio().isPresent())
        .flatMap(
            row ->
                scales
                    .of(row, site, today)
                    .map(all -> oneWay && row.easedByLess() ? new DemandScale.OneWay(all, up) : all)
                    .filter(scale -> scale.most() > scale.least())
                    .map(scale -> new DemandLine(row, scale, site, engine, assumptions, own::get))
                    .stream())
        .toList();
  }

  /** Demands have nothing to do with each other, so each core may take one; the order stays. */
  private static List<Way> singles(List<DemandLine> lines, Wanted wanted) {
    return Cores.map(lines, line -> new SingleChange(line, wanted).ways()).stream()
        .flatMap(List::stream)
        .sorted(
            Comparator.comparing((Way way) -> !way.choice()).thenComparingDouble(Way::shareRatio))
        .toList();
  }

  /** Of what can be chosen: two wishes about the weather help nobody. */
  private static List<Way> pairs(List<DemandLine> lines, Wanted wanted, boolean up) {
    List<PairedChange.Member> chosen =
        lines.stream()
            .filter(DemandLine::choice)
            .map(line -> PairedChange.Member.of(line, wanted, up))
            .toList();
    // Pairs with the same first share what it has worked out, so one core takes them all.
    List<Integer> firsts = IntStream.range(0, chosen.size()).boxed().toList();
    return Cores.map(firsts, first -> pairs(chosen, first, wanted)).stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparingDouble(Way::shareRatio))
        .limit(MOST_PAIRS)
        .toList();
  }

  private static List<Way> pairs(List<PairedChange.Member> all, int first, Wanted wanted) {
    List<Way> ways = new ArrayList<>();
    for (PairedChange.Member second : all.subList(first + 1, all.size())) {
      new PairedChange(all.get(first), second, wanted).way().ifPresent(ways::add);
    }
    return ways;
  }

  private static boolean joint(Wanted wanted) {
    return wanted.question().phase() == Phase.JOINTS;
  }

  /**
   * True where more than today's answer is wanted. Nobody is advised to ask for more so that a
   * joint has to be stronger.
   */
  private boolean more(Site site, Wanted wanted, Proposal today) {
    if (joint(wanted)) {
      return false;
    }
    if (wanted.bound() != Wanted.Bound.JUST_THIS) {
      return wanted.bound() == Wanted.Bound.AT_LEAST;
    }
    List<String> options = new AnswerOptions(tables).of(site, wanted.question());
    Optional<Integer> now =
        today.decision(wanted.question()).map(each -> options.indexOf(option(each.proposed())));
    return now.isPresent() && now.get() < options.indexOf(option(wanted.value()));
  }

  /** The answer as the list of options has it: whole numbers are written out there. */
  private static String option(Outcome answer) {
    return answer instanceof Outcome.Amount amount
        ? String.valueOf(Math.round(amount.measure().amount()))
        : ((Outcome.Word) answer).text();
  }
}
