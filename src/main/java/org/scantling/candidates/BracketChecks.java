package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
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
public final class BracketChecks {
  private final CheckContext context;
  private final BracedWalk walk;

  private BracketChecks(CheckContext context, BracedWalk walk) {
    this.context = context;
    this.walk = walk;
  }

  /**
   * The walk as frames with knee braces, where it stands on brackets and the braces are known.
   * Posts in the ground stand by themselves, and braces between them are not counted on.
   */
  static Optional<BracedWalk> walk(CheckContext context) {
    return timbers(context)
        .map(
            timbers -> context.cache().walk(given(context, timbers), () -> walk(context, timbers)));
  }

  /** True for a walk on brackets with braces that find room both ways. */
  static boolean stands(CheckContext context) {
    Answers answers = context.answers();
    boolean known = context.onBrackets() && answers.has(BRACE_SIZE) && answers.has(BRACE_LEG);
    return known && BracedWalk.fits(context.geometry(), answers.number(BRACE_LEG));
  }

  private static BracedWalk walk(CheckContext context, BracedTimbers timbers) {
    return new BracedWalk(
        context.geometry(), timbers, context.headers(), context.topLoads(), context.standing());
  }

  /** The checks that braces add to those of a size; none where the walk has no braces to count. */
  static List<Checked> checks(CheckContext context, Question question) {
    Optional<BracedTimbers> timbers = timbers(context);
    if (timbers.isEmpty()) {
      return List.of();
    }
    List<Object> given = new ArrayList<>(given(context, timbers.get()));
    given.add(question);
    given.add(boltIn(context));
    return context
        .cache()
        .framed(
            given,
            () -> new BracketChecks(context, context.braced().orElseThrow()).checks(question));
  }

  /** All that the frames depend on; the headers follow from it. */
  private static List<Object> given(CheckContext context, BracedTimbers timbers) {
    return List.of(
        context.geometry(),
        context.splice(),
        context.stepped(),
        timbers,
        context.topLoads(),
        context.standing());
  }

  /** The timbers of a braced walk; none where it does not stand by its braces. */
  static Optional<BracedTimbers> timbers(CheckContext context) {
    Answers answers = context.answers();
    if (!stands(context)) {
      return Optional.empty();
    }
    return context
        .material(BRACE_SIZE, answers.option(BRACE_SIZE))
        .map(
            brace ->
                new BracedTimbers(
                    context.timber(POST_SIZE),
                    context.timber(HEADER_SIZE),
                    context
                        .timber(CROSSBEAM_SIZE)
                        .plies(context.geometry().crossbeams().pliesAtPosts()),
                    brace,
                    answers.number(BRACE_LEG),
                    context.fallRatio()));
  }

  /** The post that pressure and bending together work hardest in a combination. */
  public static Optional<BracedScene> hardestPost(
      CheckContext context, LoadCombination combination) {
    return context
        .braced()
        .map(walk -> new BracketChecks(context, walk))
        .flatMap(
            braced ->
                new BracedStory(braced.walk, context.standing(), context.limits(), braced.rules())
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
    return new BraceBolts(context.tables(), walk, JointChecks.rules(context));
  }

  private List<Checked> frames(Question question) {
    return switch (question) {
      case CROSSBEAM_SIZE ->
          BracedBeamChecks.ofCrossbeam(walk, context.limits(), context.sources()).list();
      case HEADER_SIZE ->
          BracedBeamChecks.ofHeader(walk, context.limits(), context.sources()).list();
      case POST_SIZE ->
          new BracedPostChecks(
                  walk, context.standing(), context.limits(), rules(), context.sources())
              .list();
      case BRACE_SIZE ->
          new BracedChecks(walk, context.limits(), rules(), context.sources()).list();
      default -> List.of();
    };
  }

  private BracedRules rules() {
    Tables tables = context.tables();
    return new BracedRules(
        tables.factor("effective-length.pinned-both").amount(),
        boltIn(context) + tables.factor("bolt-hole.over-most").amount(),
        Math.max(
            tables.thumb("post.eccentricity-share").amount(),
            context.stepOffIn() / context.geometry().posts().breadthIn()),
        tables.thumb("brace.sway-share").amount());
  }

  /** The bolt that the braces have, or before that is decided the one the trade takes. */
  private static double boltIn(CheckContext context) {
    Tables tables = context.tables();
    return context
        .answers()
        .find(BRACE_JOINT)
        .map(answer -> tables.fastener(tables.joints().row(answer.option()).fastener()))
        .map(row -> row.diameterIn())
        .orElseGet(() -> tables.thumb("joint.bolt-diameter").amount());
  }
}
