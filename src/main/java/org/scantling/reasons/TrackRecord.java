package org.scantling.reasons;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How the base design has stood: its own checks at its own place.
 *
 * @param sinceYear first year of its service
 * @param slopePercent fall of the ground there along the walk
 * @param checks one entry a check
 */
public record TrackRecord(int sinceYear, double slopePercent, List<ProvenCheck> checks) {
  public TrackRecord {
    checks = List.copyOf(checks);
  }

  /** How hard the base is worked by a check, where it has that check at all. */
  public OptionalDouble ratio(String check) {
    return checks.stream()
        .filter(each -> each.check().equals(check))
        .mapToDouble(ProvenCheck::ratio)
        .findFirst();
  }
}
