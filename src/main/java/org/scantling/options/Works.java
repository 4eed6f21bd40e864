package org.scantling.options;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.scantling.answers.ResultCache;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.IntakeException;
import org.scantling.reasons.Checked;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.WholeOption;
import org.scantling.shop.Estimate;
import org.scantling.shop.JobSize;
import org.scantling.shop.Lists;
import org.scantling.tables.CheckNature;
import org.scantling.tables.PriceList;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** Works out what an attempt comes to: the whole structure, its size, its hours, its cost. */
final class Works {
  private final Engine engine;
  private final Tables tables;
  private final Function<List<String>, Intake> site;
  private final Optional<Yard> yard;
  private final Optional<PriceList> prices;
  private final ThreadLocal<ResultCache> own =
      ThreadLocal.withInitial(() -> new ResultCache(ResultCache.Retention.MANY_RUNS));

  /**
   * @param site the site file read with some of its values set
   */
  Works(
      Engine engine,
      Tables tables,
      Function<List<String>, Intake> site,
      Optional<Yard> yard,
      Optional<PriceList> prices) {
    this.engine = yard.map(engine::buyingFrom).orElse(engine);
    this.tables = tables;
    this.site = site;
    this.yard = yard;
    this.prices = prices;
  }

  /**
   * Nothing where no structure passes, where another comes of it than was asked for, or where the
   * file cannot be read so.
   *
   * @param today the site as its file has it
   */
  Optional<Trial> of(Attempt attempt, Intake today) {
    try {
      Intake intake = attempt.settings().isEmpty() ? today : site.apply(attempt.settings());
      Proposal proposal = engine.checked(intake.site(), intake.defaulted(), own.get());
      return proposal.proposed() && attempt.kept(proposal)
          ? Optional.of(trial(attempt, intake, proposal))
          : Optional.empty();
    } catch (IntakeException unwritable) {
      return Optional.empty();
    }
  }

  private Trial trial(Attempt attempt, Intake intake, Proposal proposal) {
    Lists lists = Lists.of(proposal, intake.site(), tables, yard).priced(prices);
    JobSize size = lists.size();
    Map<OptionMeasure, Double> measures = new EnumMap<>(OptionMeasure.class);
    measures.put(OptionMeasure.TIMBER, size.timberCuFt());
    measures.put(OptionMeasure.HOLES, (double) size.posts());
    measures.put(OptionMeasure.HOURS, lists.work().hours().doubleValue());
    measures.put(OptionMeasure.LIFT, size.heaviestLiftLb());
    measures.put(OptionMeasure.SOIL, size.soilOutCuFt());
    measures.put(OptionMeasure.LOOK, look(intake).nearness(proposal));
    measures.put(OptionMeasure.SPARE, tightest(proposal));
    measures.put(OptionMeasure.CONCEDED, attempt.concededIn());
    measures.put(OptionMeasure.OTHER_TIMBER, attempt.otherTimber() ? 1.0 : 0.0);
    return new Trial(attempt, proposal, measures, size.hands(), cost(lists));
  }

  private Look look(Intake intake) {
    return new Look(tables, intake.site().materials().market());
  }

  /**
   * The greatest share of its limit that a check uses, but for distances that a standard prescribes
   * and for what is made just as deep or long as a check asks.
   */
  private double tightest(Proposal proposal) {
    double tightest = 0;
    for (Checked checked : counted(proposal)) {
      double ratio = checked.check().ratio() / proposal.checkLimits().limitRatio(checked);
      tightest = Math.max(tightest, ratio);
    }
    return tightest;
  }

  private List<Checked> counted(Proposal proposal) {
    Set<String> exact =
        proposal.decisions().stream()
            .filter(each -> each.proposed() instanceof Outcome.Amount)
            .flatMap(each -> each.governing().because().stream())
            .collect(Collectors.toSet());
    return proposal.checks().stream()
        .filter(each -> !exact.contains(each.id()) && !prescribed(each.id()))
        .toList();
  }

  private boolean prescribed(String check) {
    return tables
        .checks()
        .find(check)
        .filter(row -> row.nature() == CheckNature.PRESCRIBED)
        .isPresent();
  }

  private Optional<WholeOption.Cost> cost(Lists lists) {
    if (prices.isEmpty()) {
      return Optional.empty();
    }
    Estimate estimate = lists.estimate();
    return Optional.of(
        new WholeOption.Cost(
            estimate.cost().priced() ? Optional.of(estimate.cost().total()) : Optional.empty(),
            estimate.cost().currency(),
            estimate.cost().without()));
  }
}
