package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.confirm.BracedBeamChecks;
import org.scantling.confirm.BracedChecks;
import org.scantling.confirm.BracedPostChecks;
import org.scantling.confirm.BracedRules;
import org.scantling.confirm.BracedScene;
import org.scantling.confirm.BracedStory;
import org.scantling.confirm.BracedTimbers;
import org.scantling.confirm.BracedWalk;
import org.scantling.confirm.JointBraceChecks.Timber;
import org.scantling.loads.LoadCombination;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;

/** Works the checks that a walk on brackets has besides those of any walk. */
final class BraceBench {
  private final Bench bench;
  private final BracedWalk walk;

  private BraceBench(Bench bench, BracedWalk walk) {
    this.bench = bench;
    this.walk = walk;
  }

  /**
   * The walk as frames with knee braces, where it stands on brackets and the braces are known.
   * Posts in the ground stand by themselves, and braces between them are not counted on.
   */
  static Optional<BracedWalk> walk(Bench bench) {
    return timbers(bench)
        .map(timbers -> bench.ledger().walk(given(bench, timbers), () -> walk(bench, timbers)));
  }

  /** True for a walk on brackets with braces that find room both ways. */
  static boolean stands(Bench bench) {
    Answers answers = bench.answers();
    boolean known = bench.onBrackets() && answers.has(BRACE_SIZE) && answers.has(BRACE_LEG);
    return known && BracedWalk.fits(bench.geometry(), answers.number(BRACE_LEG));
  }

  private static BracedWalk walk(Bench bench, BracedTimbers timbers) {
    return new BracedWalk(
        bench.geometry(), timbers, bench.headers(), bench.topLoads(), bench.standing());
  }

  /** The checks that braces add to those of a size; none where the walk has no braces to count. */
  static List<Checked> checks(Bench bench, Question question) {
    Optional<BracedTimbers> timbers = timbers(bench);
    if (timbers.isEmpty()) {
      return List.of();
    }
    List<Object> given = new ArrayList<>(given(bench, timbers.get()));
    given.add(question);
    given.add(boltIn(bench));
    return bench
        .ledger()
        .framed(given, () -> new BraceBench(bench, bench.braced().orElseThrow()).checks(question));
  }

  /** All that the frames depend on; the headers follow from it. */
  private static List<Object> given(Bench bench, BracedTimbers timbers) {
    return List.of(
        bench.geometry(),
        bench.splice(),
        bench.stepped(),
        timbers,
        bench.topLoads(),
        bench.standing());
  }

  /** The timbers of a braced walk; none where it does not stand by its braces. */
  static Optional<BracedTimbers> timbers(Bench bench) {
    Answers answers = bench.answers();
    if (!stands(bench)) {
      return Optional.empty();
    }
    return bench
        .material(BRACE_SIZE, answers.option(BRACE_SIZE))
        .map(
            brace ->
                new BracedTimbers(
                    bench.timber(POST_SIZE),
                    bench.timber(HEADER_SIZE),
                    bench.timber(CROSSBEAM_SIZE),
                    brace,
                    answers.number(BRACE_LEG),
                    bench.fallRatio()));
  }

  /** The post that pressure and bending together work hardest in a combination. */
  static Optional<BracedScene> hardestPost(Bench bench, LoadCombination combination) {
    return bench
        .braced()
        .map(walk -> new BraceBench(bench, walk))
        .flatMap(
            braced ->
                new BracedStory(braced.walk, bench.standing(), bench.limits(), braced.rules())
                    .hardest(combination));
  }

  private List<Checked> checks(Question question) {
    List<Checked> checks = new ArrayList<>(frames(question));
    bolts(question).ifPresent(checks::add);
    return checks;
  }

  /** Whether any bolt of a brace holds in the timber. */
  private Optional<Checked> bolts(Question question) {
    return switch (question) {
      case CROSSBEAM_SIZE -> bolts().best(Timber.CROSSBEAM, "crossbeam.brace-bolt");
      case HEADER_SIZE -> bolts().best(Timber.HEADER, "header.brace-bolt");
      case POST_SIZE -> bolts().best(Timber.POST, "post.brace-bolt");
      default -> Optional.empty();
    };
  }

  private BraceBolts bolts() {
    return new BraceBolts(bench.tables(), walk, JointBench.rules(bench));
  }

  private List<Checked> frames(Question question) {
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
        boltIn(bench) + tables.factor("bolt-hole.over-most").amount(),
        Math.max(
            tables.thumb("post.eccentricity-share").amount(),
            bench.stepOffIn() / bench.geometry().posts().breadthIn()),
        tables.thumb("brace.sway-share").amount());
  }

  /** The bolt that the braces have, or before that is decided the one the trade takes. */
  private static double boltIn(Bench bench) {
    Tables tables = bench.tables();
    return bench
        .answers()
        .find(BRACE_JOINT)
        .map(answer -> tables.fastener(tables.joints().row(answer.option()).fastener()))
        .map(row -> row.diameterIn())
        .orElseGet(() -> tables.thumb("joint.bolt-diameter").amount());
  }
}
