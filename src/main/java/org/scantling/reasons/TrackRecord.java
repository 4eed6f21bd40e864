package org.scantling.reasons;

import java.util.List;
import java.util.OptionalDouble;
import org.scantling.design.BaseDesign;

/**
 * How the base design has stood: its own checks at its own place.
 *
 * @param sinceYear first year of its service
 * @param slopePercent fall of the ground there along the walk
 * @param checks one entry a check
 * @param events what is told to have happened to it
 */
public record TrackRecord(
    int sinceYear, double slopePercent, List<ProvenCheck> checks, List<BaseDesign.Event> events) {
  public TrackRecord {
    checks = List.copyOf(checks);
    events = List.copyOf(events);
  }

  /** Of which nothing is told but how it stands. */
  public TrackRecord(int sinceYear, double slopePercent, List<ProvenCheck> checks) {
    this(sinceYear, slopePercent, checks, List.of());
  }

  /** How hard the base is worked by a check, where it has that check at all. */
  public OptionalDouble ratio(String check) {
    return checks.stream()
        .filter(each -> each.check().equals(check))
        .mapToDouble(ProvenCheck::ratio)
        .findFirst();
  }
}
