package org.scantling.options;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.answers.ResultCache;
import org.scantling.concurrent.Cores;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.IntakeException;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.SmallChange;
import org.scantling.search.DemandChanges;
import org.scantling.tables.NearMissRow;
import org.scantling.tables.NearMissRow.Pick;
import org.scantling.tables.Tables;

/**
 * What somebody who builds would mention beside a proposal without being asked: an inch less that
 * keeps a smaller post, concrete that spares two feet of digging. Each is the whole structure,
 * worked through the engine; what gains too little is not told.
 */
public final class NearMisses {
  private final Engine engine;
  private final Tables tables;
  private final Function<List<String>, Intake> site;
  private final ThreadLocal<ResultCache> own =
      ThreadLocal.withInitial(() -> new ResultCache(ResultCache.Retention.MANY_RUNS));

  /**
   * @param site the site file read with some of its values set, as {@code --set} sets them
   */
  public NearMisses(Engine engine, Tables tables, Function<List<String>, Intake> site) {
    this.engine = engine;
    this.tables = tables;
    this.site = site;
  }

  /**
   * The first ones of the table that gain enough, in its order; none where nothing is proposed, or
   * a very long walk.
   *
   * @param intake the site as its file has it
   * @param today what is proposed for it
   */
  public List<SmallChange> of(Intake intake, Proposal today) {
    if (!today.proposed() || baysOf(today) > tables.shop("near-misses.bays-most").amount()) {
      return List.of();
    }
    NearMissGain gain = new NearMissGain(today);
    DemandChanges changes = new DemandChanges(tables, intake.site(), today);
    List<NearMissRow> rows =
        tables.nearMisses().rows().stream()
            .filter(row -> gain.wanted(row) && asked(row, intake, changes))
            .toList();
    return Cores.map(rows, row -> found(row, steps(row, changes), intake, gain)).stream()
        .flatMap(Optional::stream)
        .limit((long) tables.shop("near-misses.most").amount())
        .toList();
  }

  /** Of a very long walk each takes as long again as the proposal, and nobody minds one bay. */
  private static double baysOf(Proposal today) {
    return ((Outcome.Amount) today.decision(Question.BAYS).orElseThrow().proposed())
        .measure()
        .amount();
  }

  /** Bays that a site tells one by one are no habit. */
  private static boolean asked(NearMissRow row, Intake intake, DemandChanges changes) {
    boolean told = row.demand() == Demand.BAYS && intake.site().walkway().divided().isPresent();
    return !told && (row.overStated() || !changes.stated(row.demand()));
  }

  /** The nearest first. */
  private static List<Change> steps(NearMissRow row, DemandChanges changes) {
    return row.value()
        .map(
            word ->
                changes.words(row.demand()).stream()
                    .filter(each -> each.to().equals(new Outcome.Word(word)))
                    .toList())
        .orElseGet(() -> changes.numbers(row.demand(), false, row.most().orElseThrow()));
  }

  private Optional<SmallChange> found(
      NearMissRow row, List<Change> steps, Intake intake, NearMissGain gain) {
    Function<Change, Optional<SmallChange>> tried = change -> worked(row, change, intake, gain);
    return row.pick() == Pick.NEAREST ? nearest(steps, tried) : farthest(steps, tried);
  }

  /** Where the farthest step gains nothing, no nearer one is tried: it would hardly gain more. */
  private static Optional<SmallChange> nearest(
      List<Change> steps, Function<Change, Optional<SmallChange>> tried) {
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    Optional<SmallChange> last = tried.apply(steps.get(steps.size() - 1));
    return last.isEmpty()
        ? last
        : steps.stream()
            .limit(steps.size() - 1L)
            .map(tried)
            .flatMap(Optional::stream)
            .findFirst()
            .or(() -> last);
  }

  /** As far as every step gains something. */
  private static Optional<SmallChange> farthest(
      List<Change> steps, Function<Change, Optional<SmallChange>> tried) {
    Optional<SmallChange> farthest = Optional.empty();
    for (Change step : steps) {
      Optional<SmallChange> found = tried.apply(step);
      if (found.isEmpty()) {
        return farthest;
      }
      farthest = found;
    }
    return farthest;
  }

  /** Nothing where no structure passes, where another comes of it, or where it gains too little. */
  private Optional<SmallChange> worked(
      NearMissRow row, Change change, Intake today, NearMissGain gain) {
    Attempt attempt = Attempt.of(change, false).overBaseOf(today);
    try {
      Intake intake = site.apply(attempt.settings());
      Proposal then = engine.checked(intake.site(), intake.defaulted(), own.get());
      return then.proposed() && attempt.kept(then) && gain.enough(row, then)
          ? Optional.of(new SmallChange(row.id(), change, attempt.settings(), then))
          : Optional.empty();
    } catch (IntakeException unwritable) {
      return Optional.empty();
    }
  }
}
