package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/**
 * In what range a rule of thumb may be relied on without the calculation: rules/thumb-ranges.csv.
 * The engine never does; it takes the larger of both everywhere.
 *
 * @param rule id of the rule
 * @param most for each axis of the grid the last value of the range; empty where the rule may never
 *     be relied on alone
 * @param reason why it ends there
 */
public record ThumbRange(String rule, Optional<Map<String, String>> most, String reason) {
  private static final String NEVER = "never";

  /** The ranges by rule. */
  public static Map<String, ThumbRange> all() {
    Map<String, ThumbRange> ranges = new LinkedHashMap<>();
    for (WordRow row : WordFile.read("thumb-ranges.csv")) {
      Map<String, String> most = new LinkedHashMap<>(row.cells());
      most.keySet().removeAll(List.of("rule", "alone", "reason"));
      String rule = row.cell("rule");
      boolean never = row.cell("alone").equals(NEVER);
      ranges.put(
          rule,
          new ThumbRange(rule, never ? Optional.empty() : Optional.of(most), row.cell("reason")));
    }
    return ranges;
  }

  /** True for a site of the grid inside the range. */
  public boolean holds(List<Grid.Axis> axes, List<String> site) {
    if (most.isEmpty()) {
      return false;
    }
    for (int axis = 0; axis < axes.size(); axis++) {
      List<String> values = axes.get(axis).values();
      String last = most.get().get(axes.get(axis).path());
      if (last != null && values.indexOf(site.get(axis)) > values.indexOf(last)) {
        return false;
      }
    }
    return true;
  }

  /** The last values that are not the last of their axis: what ends the range. */
  public List<String> ends(List<Grid.Axis> axes) {
    List<String> ends = new ArrayList<>();
    for (Grid.Axis axis : axes) {
      String last = most.map(each -> each.get(axis.path())).orElse(null);
      if (last != null && !last.equals(axis.values().get(axis.values().size() - 1))) {
        ends.add(axis.path());
      }
    }
    return ends;
  }
}
