package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/** Held against every way in which spans and tails can be loaded at all, 2 to the n of them. */
class LivePatternTest {
  private static final double BAY_IN = 60;
  private static final double TAIL_IN = 18;

  @Test
  void two_bays_can_be_loaded_while_both_tails_are_empty() {
    assertThat(factors(4)).contains(List.of(0.0, 1.0, 1.0, 0.0));
  }

  @Test
  void everywhere_comes_first_and_no_pattern_twice() {
    List<List<Double>> five = factors(5);
    assertThat(five.get(0)).containsOnly(1.0);
    assertThat(five).doesNotHaveDuplicates();
  }

  @Test
  void no_other_way_of_lying_hogs_or_presses_or_lifts_any_support_more() {
    for (int bays = 1; bays <= 5; bays++) {
      List<BeamResult> bySpan = bySpan(bays);
      List<BeamResult> ours = combined(bySpan, factors(bays + 2));
      List<BeamResult> all = combined(bySpan, everyWay(bays + 2));
      for (int support = 0; support <= bays; support++) {
        double atIn = TAIL_IN + support * BAY_IN;
        int one = support;
        assertThat(ours.stream().mapToDouble(each -> each.momentInLb(atIn)).min().orElseThrow())
            .as(bays + " bays, moment over post " + support)
            .isCloseTo(
                all.stream().mapToDouble(each -> each.momentInLb(atIn)).min().orElseThrow(),
                within(1e-6));
        assertThat(ours.stream().mapToDouble(each -> each.reactionLb(one)).max().orElseThrow())
            .as(bays + " bays, most on post " + support)
            .isCloseTo(
                all.stream().mapToDouble(each -> each.reactionLb(one)).max().orElseThrow(),
                within(1e-6));
        assertThat(ours.stream().mapToDouble(each -> each.reactionLb(one)).min().orElseThrow())
            .as(bays + " bays, least on post " + support)
            .isCloseTo(
                all.stream().mapToDouble(each -> each.reactionLb(one)).min().orElseThrow(),
                within(1e-6));
      }
    }
  }

  @Test
  void a_beam_without_spans_is_refused() {
    assertThatThrownBy(() -> LivePattern.forSpans(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("span count 0 must be at least 1");
  }

  private static List<List<Double>> factors(int spans) {
    return LivePattern.forSpans(spans).stream().map(LivePattern::spanFactors).toList();
  }

  private static List<List<Double>> everyWay(int spans) {
    List<List<Double>> all = new ArrayList<>();
    for (int bits = 0; bits < 1 << spans; bits++) {
      List<Double> one = new ArrayList<>(Collections.nCopies(spans, 0.0));
      for (int span = 0; span < spans; span++) {
        one.set(span, (double) (bits >> span & 1));
      }
      all.add(one);
    }
    return all;
  }

  private static List<BeamResult> bySpan(int bays) {
    double lengthIn = bays * BAY_IN + 2 * TAIL_IN;
    double[] posts = new double[bays + 1];
    double[] marks = new double[bays + 3];
    for (int i = 0; i <= bays; i++) {
      posts[i] = TAIL_IN + i * BAY_IN;
      marks[i + 1] = posts[i];
    }
    marks[bays + 2] = lengthIn;
    List<List<BeamLoad>> cases = new ArrayList<>();
    for (int span = 0; span + 1 < marks.length; span++) {
      cases.add(List.of(new BeamLoad.Uniform(marks[span], marks[span + 1], 10)));
    }
    return ContinuousBeam.of(lengthIn, posts).solve(cases);
  }

  private static List<BeamResult> combined(List<BeamResult> bySpan, List<List<Double>> patterns) {
    return patterns.stream()
        .map(
            each -> BeamResult.combine(bySpan, each.stream().mapToDouble(share -> share).toArray()))
        .toList();
  }
}
