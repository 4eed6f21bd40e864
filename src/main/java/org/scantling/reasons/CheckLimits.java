package org.scantling.reasons;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What checks are held against: the limit of each, and the base design's own record.
 *
 * @param limits greatest demand over capacity by check, where it is another than 1
 * @param eased the limits among them that the base's record has eased, with what was published
 * @param record how hard the base is worked at its own place, where that is known
 */
public record CheckLimits(
    Map<String, Double> limits, Map<String, Double> eased, Optional<TrackRecord> record) {
  private static final CheckLimits PLAIN = new CheckLimits(Map.of(), Map.of(), Optional.empty());

  public CheckLimits {
    limits = Collections.unmodifiableMap(new TreeMap<>(limits));
    eased = Collections.unmodifiableMap(new TreeMap<>(eased));
  }

  /** The published limits and no record. */
  public static CheckLimits plain() {
    return PLAIN;
  }

  /** Greatest demand over capacity that a check may have. */
  public double limitRatio(Checked checked) {
    return limits.getOrDefault(checked.id(), 1.0);
  }

  /** How hard the base itself is worked by the check, where it has it and its record is known. */
  public OptionalDouble baseRatio(Checked checked) {
    return record.map(each -> each.ratio(checked.id())).orElse(OptionalDouble.empty());
  }

  public boolean passes(Checked checked) {
    return checked.check().passes(limitRatio(checked));
  }

  /** True for a check that passes by the base's record and would not by the published limit. */
  public boolean byRecord(Checked checked) {
    Double published = eased.get(checked.id());
    return published != null && passes(checked) && !checked.check().passes(published);
  }
}
