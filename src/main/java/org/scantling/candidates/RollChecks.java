package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.concurrent.Lazy;
import org.scantling.confirm.CrossbeamRoll;
import org.scantling.confirm.JointCase;
import org.scantling.confirm.JointFix;
import org.scantling.confirm.JointRules;
import org.scantling.confirm.Material;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.tables.JointRow;
import org.scantling.tables.Tables;

/** Works whether the crossbeams roll over, by their own fastenings or between blocks. */
final class RollChecks {
  private final Tables tables;
  private final CrossbeamRoll roll;
  private final Optional<JointFix> blocks;

  RollChecks(CheckContext context, JointRules rules) {
    this.tables = context.tables();
    Material crossbeam = context.timber(CROSSBEAM_SIZE);
    this.roll =
        new CrossbeamRoll(
            context.geometry(),
            crossbeam,
            context.material(HEADER_SIZE, context.answers().option(HEADER_SIZE)).orElse(crossbeam),
            context.topLoads(),
            context.wind().onCrossbeamLb(),
            rules);
    this.blocks =
        context.geometry().crossbeams().blocked() ? Optional.of(blockFix()) : Optional.empty();
  }

  /** The check of one way of building, by the fastening that holds best in it. */
  static List<Checked> of(CheckContext context, String way, Lazy<JointRules> rules) {
    // A base whose crossbeam no strength is published for is stopped by the rules on its size.
    if (context.material(CROSSBEAM_SIZE, context.answers().option(CROSSBEAM_SIZE)).isEmpty()) {
      return List.of();
    }
    List<Object> given =
        List.of(
            CROSSBEAM_BLOCKING,
            way,
            context.geometry(),
            context.topLoads(),
            context.wind().onCrossbeamLb(),
            context.timber(CROSSBEAM_SIZE),
            context.answers().option(HEADER_SIZE));
    return context.cache().checks(given, () -> new RollChecks(context, rules.get()).best());
  }

  Checked inWind(JointFix fix) {
    return roll.inWind(fix, blocks);
  }

  /** The same with how it was worked. */
  JointCase caseInWind(JointFix fix) {
    return roll.caseInWind(fix, blocks);
  }

  /** A person on a ladder that leans on a crossbeam over a header. */
  Check underLadder(JointRow joint) {
    double pushLb =
        tables.live("live.person").amount() * tables.thumb("ladder.lean-share").amount();
    return roll.underLadder(pushLb, new JointTable(tables).fix(joint), blocks);
  }

  private List<Checked> best() {
    return fixes()
        .map(this::inWind)
        .min(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(List::of)
        .orElse(List.of());
  }

  private Stream<JointFix> fixes() {
    JointTable table = new JointTable(tables);
    return tables.joints().rows().stream()
        .filter(row -> row.question() == CROSSBEAM_JOINT)
        .map((JointRow row) -> table.fix(row));
  }

  /** What holds each end of a block, on the header and on the crossbeam alike. */
  private JointFix blockFix() {
    String row = tables.defaults().row("blocking.joint").word();
    return new JointTable(tables).fix(tables.joints().row(row));
  }
}
