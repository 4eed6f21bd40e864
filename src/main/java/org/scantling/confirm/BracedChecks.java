package org.scantling.confirm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.MemberResult;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.AxialStress;
import org.scantling.timber.Column;
import org.scantling.timber.Rectangle;

/**
 * The knee braces themselves: pressed along their length with buckling counted, pulled on the
 * section that the bolt hole leaves, and not too thin.
 */
public final class BracedChecks {
  private final BracedWalk walk;
  private final Limits limits;
  private final BracedRules rules;
  private final Function<String, Source> sources;

  public BracedChecks(
      BracedWalk walk, Limits limits, BracedRules rules, Function<String, Source> sources) {
    this.walk = walk;
    this.limits = limits;
    this.rules = rules;
    this.sources = sources;
  }

  /** Every check of the brace as tried, each with its worst combination. */
  public List<Checked> list() {
    CheckEnvelope worst = new CheckEnvelope("brace", limits, sources);
    check(worst, walk.across());
    check(worst, walk.along());
    return worst.list();
  }

  private void check(CheckEnvelope worst, BracedWay way) {
    Map<LoadCombination, BracedMember> members = new EnumMap<>(LoadCombination.class);
    for (BracedCase each : way.cases()) {
      BracedMember member = members.computeIfAbsent(each.combination(), this::member);
      for (String brace : each.reach().braces()) {
        check(worst, each.combination(), each.all().member(brace), member);
      }
    }
  }

  private BracedMember member(LoadCombination combination) {
    Material material = walk.timbers().brace();
    AdjustedValues values = material.lasting(limits.duration().of(combination));
    double lengthIn = rules.heldFactor() * walk.timbers().braceLengthIn();
    return new BracedMember(material.section(), lengthIn, limits.straightnessFactor(), values);
  }

  private void check(
      CheckEnvelope worst, LoadCombination combination, MemberResult brace, BracedMember member) {
    Column column = member.column(Math.max(0, -brace.mostCompression().amount()));
    worst.add("axial", combination, column.check(), Unit.PSI);
    worst.addLasting("slenderness", combination, column.governing().check(), Unit.RATIO);
    Rectangle section = member.section();
    double netIn2 = section.breadthIn() * (section.depthIn() - rules.holeIn());
    double pullLb = Math.max(0, brace.mostTension().amount());
    worst.add(
        "axial",
        combination,
        AxialStress.of(pullLb, netIn2, member.values().tension()).check(),
        Unit.PSI);
  }
}
