package org.scantling.engine;

import static org.scantling.reasons.Question.BRACE_JOINT;

import java.util.List;
import org.scantling.confirm.BracedBeamChecks;
import org.scantling.confirm.BracedChecks;
import org.scantling.confirm.BracedPostChecks;
import org.scantling.confirm.BracedRules;
import org.scantling.confirm.BracedWalk;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;

/** Works the checks that a walk on brackets has besides those of any walk. */
final class BraceBench {
  private final Bench bench;
  private final BracedWalk walk;

  BraceBench(Bench bench, BracedWalk walk) {
    this.bench = bench;
    this.walk = walk;
  }

  List<Checked> checks(Question question) {
    return switch (question) {
      case CROSSBEAM_SIZE ->
          BracedBeamChecks.ofCrossbeam(walk, bench.limits(), bench.sources()).list();
      case HEADER_SIZE -> BracedBeamChecks.ofHeader(walk, bench.limits(), bench.sources()).list();
      case POST_SIZE ->
          new BracedPostChecks(walk, bench.standing(), bench.limits(), rules(), bench.sources())
              .list();
      case BRACE_SIZE -> new BracedChecks(walk, bench.limits(), rules(), bench.sources()).list();
      default -> List.of();
    };
  }

  private BracedRules rules() {
    Tables tables = bench.tables();
    return new BracedRules(
        tables.factor("effective-length.pinned-both").amount(),
        boltIn() + tables.factor("bolt-hole.over-most").amount(),
        tables.thumb("post.eccentricity-share").amount());
  }

  /** The bolt that the braces have, or before that is decided the one the trade takes. */
  private double boltIn() {
    Tables tables = bench.tables();
    return bench
        .answers()
        .find(BRACE_JOINT)
        .map(answer -> tables.fastener(tables.joints().row(answer.option()).fastener()))
        .map(row -> row.diameterIn())
        .orElseGet(() -> tables.thumb("joint.bolt-diameter").amount());
  }
}
