package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.confirm.CrossbeamRoll;
import org.scantling.confirm.JointFix;
import org.scantling.confirm.JointRules;
import org.scantling.confirm.Material;
import org.scantling.meanwhile.Once;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.tables.JointRow;
import org.scantling.tables.Tables;

/** Works whether the crossbeams roll over, by their own fastenings or between blocks. */
final class RollBench {
  private final Tables tables;
  private final CrossbeamRoll roll;
  private final Optional<JointFix> blocks;

  RollBench(Bench bench, JointRules rules) {
    this.tables = bench.tables();
    Material crossbeam = bench.timber(CROSSBEAM_SIZE);
    this.roll =
        new CrossbeamRoll(
            bench.geometry(),
            crossbeam,
            bench.material(HEADER_SIZE, bench.answers().option(HEADER_SIZE)).orElse(crossbeam),
            bench.topLoads(),
            bench.wind().onCrossbeamLb(),
            rules);
    this.blocks =
        bench.geometry().crossbeams().blocked() ? Optional.of(blockFix()) : Optional.empty();
  }

  /** The check of one way of building, by the fastening that holds best in it. */
  static List<Checked> of(Bench bench, String way, Once<JointRules> rules) {
    // A base whose crossbeam no strength is published for is stopped by the rules on its size.
    if (bench.material(CROSSBEAM_SIZE, bench.answers().option(CROSSBEAM_SIZE)).isEmpty()) {
      return List.of();
    }
    List<Object> given =
        List.of(
            CROSSBEAM_BLOCKING,
            way,
            bench.geometry(),
            bench.topLoads(),
            bench.wind().onCrossbeamLb(),
            bench.timber(CROSSBEAM_SIZE),
            bench.answers().option(HEADER_SIZE));
    return bench.ledger().checks(given, () -> new RollBench(bench, rules.get()).best());
  }

  Checked inWind(JointFix fix) {
    return roll.inWind(fix, blocks);
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
