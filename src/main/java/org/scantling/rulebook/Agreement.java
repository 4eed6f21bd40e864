package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.ThumbTrial.Standing;

/** Where each rule of thumb is safer than the calculation, equal, or not safe enough. */
public final class Agreement {
  private static final long TEN = 10;

  private final List<Grid.Axis> axes;
  private final Map<String, ThumbRange> ranges = ThumbRange.all();
  private final Map<String, List<Placed>> byRule = new LinkedHashMap<>();
  private int sites;
  private int without;

  /**
   * A trial at its place in the grid.
   *
   * @param site one value for each axis
   */
  public record Placed(List<String> site, ThumbTrial trial) {}

  public Agreement(List<Grid.Axis> axes) {
    this.axes = List.copyOf(axes);
  }

  public List<Grid.Axis> axes() {
    return axes;
  }

  /** Takes the trials of one site; none where it has no structure. */
  public void add(List<String> site, List<ThumbTrial> trials) {
    sites++;
    without += trials.isEmpty() ? 1 : 0;
    for (ThumbTrial trial : trials) {
      byRule
          .computeIfAbsent(trial.note().id(), id -> new ArrayList<>())
          .add(new Placed(site, trial));
    }
  }

  /** Sites of the grid. */
  public int sites() {
    return sites;
  }

  /** Sites of the grid for which there is no structure. */
  public int without() {
    return without;
  }

  public List<String> rules() {
    return List.copyOf(byRule.keySet());
  }

  public List<Placed> of(String rule) {
    return byRule.getOrDefault(rule, List.of());
  }

  public long count(String rule, Standing standing) {
    return of(rule).stream().filter(each -> each.trial().standing() == standing).count();
  }

  /** Sites on which the rule forbade anything. */
  public long spoke(String rule) {
    return of(rule).stream().filter(each -> each.trial().spoke()).count();
  }

  /** The range in which the rule may be relied on alone, if it says one. */
  public Optional<ThumbRange> range(String rule) {
    return Optional.ofNullable(ranges.get(rule));
  }

  /** Sites inside that range. */
  public long inside(String rule) {
    return of(rule).stream().filter(each -> inside(rule, each.site())).count();
  }

  /** Sites inside that range on which the rule stands so. */
  public long inside(String rule, Standing standing) {
    return of(rule).stream()
        .filter(each -> each.trial().standing() == standing && inside(rule, each.site()))
        .count();
  }

  private boolean inside(String rule, List<String> site) {
    return range(rule).filter(each -> each.holds(axes, site)).isPresent();
  }

  /** How the rule stands on one site; empty where there is no structure. */
  public Optional<Standing> at(String rule, List<String> site) {
    return of(rule).stream()
        .filter(each -> each.site().equals(site))
        .map(each -> each.trial().standing())
        .findFirst();
  }

  /** The first place in the grid, mildest first, at which the rule does not ask for enough. */
  public Optional<Placed> firstShort(String rule) {
    return of(rule).stream()
        .filter(each -> each.trial().standing() == Standing.NOT_ENOUGH)
        .findFirst();
  }

  /**
   * How often of ten the rule stands so where an axis has a value; empty where never tried. Once is
   * one, and ten is always.
   */
  public Optional<Long> tenths(String rule, int axis, String value, Standing standing) {
    List<Placed> there =
        of(rule).stream().filter(each -> each.site().get(axis).equals(value)).toList();
    if (there.isEmpty()) {
      return Optional.empty();
    }
    long so = there.stream().filter(each -> each.trial().standing() == standing).count();
    boolean always = so == there.size();
    return Optional.of(
        always ? TEN : Math.min(TEN - 1, (TEN * so + there.size() - 1) / there.size()));
  }
}
