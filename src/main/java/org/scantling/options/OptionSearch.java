package org.scantling.options;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.concurrent.Cores;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.WholeOption;
import org.scantling.reasons.WholeOptions;
import org.scantling.tables.OptionCountRow;
import org.scantling.tables.PriceList;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/**
 * Works out many whole structures for one site, keeps those that no other beats, and shows a few of
 * them, each the best at something. Nothing is weighed against anything else: what one gives up for
 * what it is good at is told beside it.
 */
public final class OptionSearch {
  private final Tables tables;
  private final Works works;

  /**
   * @param tables those of the engine
   * @param site the site file read with some of its values set, as {@code --set} sets them
   * @param yard of which the timber is bought, where somebody names one
   * @param prices what things cost, where somebody says it
   */
  public OptionSearch(
      Engine engine,
      Tables tables,
      Function<List<String>, Intake> site,
      Optional<Yard> yard,
      Optional<PriceList> prices) {
    this.tables = tables;
    this.works = new Works(engine, tables, site, yard, prices);
  }

  /**
   * @param intake the site as its file has it
   * @param today what is proposed for it
   */
  public WholeOptions of(Intake intake, Proposal today) {
    return of(intake, today, new OptionAxes(tables, intake, today).attempts());
  }

  /** The same of what is tried, in whatever order. */
  WholeOptions of(Intake intake, Proposal today, List<Attempt> attempts) {
    List<Attempt> all = new ArrayList<>(attempts);
    if (today.proposed()) {
      all.add(0, Attempt.NOTHING);
    }
    List<Trial> sound =
        comparable(
            Cores.map(all, each -> works.of(each, intake)).stream()
                .flatMap(Optional::stream)
                .toList());
    List<OptionCountRow> rows = rows(sound);
    Showing.Shown shown = new Showing(tables, rows, new Rivals(rows)).of(sound);
    return new WholeOptions(today, shown.options(), all.size(), sound.size(), shown.better());
  }

  /** By the cost in place of the timber where there is one to go by. */
  private List<OptionCountRow> rows(List<Trial> sound) {
    boolean priced =
        sound.stream().anyMatch(each -> each.measures().containsKey(OptionMeasure.COST));
    OptionMeasure instead = priced ? OptionMeasure.TIMBER : OptionMeasure.COST;
    return tables.optionCounts().rows().stream().filter(row -> row.measure() != instead).toList();
  }

  /**
   * With the cost among what is compared. A price that is missing would make a structure cheap, so
   * one that leaves out more than the proposed one counts as dearer than any.
   */
  private static List<Trial> comparable(List<Trial> trials) {
    Optional<WholeOption.Cost> priced =
        trials.stream()
            .min(
                Comparator.comparing((Trial each) -> !each.asProposed())
                    .thenComparingInt(OptionSearch::leftOut))
            .flatMap(Trial::cost)
            .filter(each -> each.amount().isPresent());
    return priced
        .map(by -> trials.stream().map(each -> costed(each, by.without())).toList())
        .orElse(trials);
  }

  private static int leftOut(Trial trial) {
    return trial.cost().map(each -> each.without().size()).orElse(0);
  }

  private static Trial costed(Trial trial, List<String> without) {
    Map<OptionMeasure, Double> measures = new EnumMap<>(trial.measures());
    measures.put(
        OptionMeasure.COST,
        trial
            .cost()
            .filter(each -> without.containsAll(each.without()))
            .flatMap(WholeOption.Cost::amount)
            .map(BigDecimal::doubleValue)
            .orElse(Double.POSITIVE_INFINITY));
    return new Trial(trial.attempt(), trial.proposal(), measures, trial.hands(), trial.cost());
  }
}
