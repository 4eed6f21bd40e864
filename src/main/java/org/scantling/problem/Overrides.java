package org.scantling.problem;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.scantling.answers.Fixed;
import org.scantling.design.Bays;
import org.scantling.design.Site;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.TrackRecord;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/**
 * What is laid down besides the site and the tables.
 *
 * @param bayCounts every number of bays that is to be tried
 * @param trials what came of trying each of them
 * @param fixed the answers that a given design fixes
 * @param record how the base has stood, where that is known; worked out meanwhile
 * @param yard what the yard sells, where it gave a list
 * @param told the bays, where the site or a given design tells them one by one
 */
record Overrides(
    List<Integer> bayCounts,
    List<BayTrial> trials,
    Fixed fixed,
    Supplier<Optional<TrackRecord>> record,
    Optional<Yard> yard,
    Optional<Bays> told) {
  /** Nothing but what the site says itself. */
  static Overrides none(Site site, Tables tables) {
    return new Overrides(
        BayNumbers.possible(site, tables),
        List.of(),
        Fixed.nothing(),
        Optional::empty,
        Optional.empty(),
        site.walkway().divided());
  }

  Overrides withTrials(List<BayTrial> others) {
    return new Overrides(bayCounts, others, fixed, record, yard, told);
  }

  /** That number of bays and no other. */
  Overrides withBays(int bays) {
    return new Overrides(List.of(bays), List.of(), fixed, record, yard, told);
  }

  Overrides withRecord(Supplier<Optional<TrackRecord>> other) {
    return new Overrides(bayCounts, trials, fixed, other, yard, told);
  }

  /** A structure that is decided already. */
  Overrides withDesign(Fixed answers, Bays along) {
    return new Overrides(
        List.of(along.count()), List.of(), answers, record, yard, Optional.of(along));
  }

  Overrides withYard(Optional<Yard> other) {
    return new Overrides(bayCounts, trials, fixed, record, other, told);
  }
}
