package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BeamDiagram;
import org.scantling.reasons.Checked;
import org.scantling.shop.Recess;
import org.scantling.shop.Shape;

/** Shear and moment as they are drawn, against the checks that were worked under the same loads. */
class BeamDiagramTest {
  private static final double THOUSANDTH = 0.1;

  static Stream<String> jobs() {
    return Stream.of("mower-lane", "windy-hill", "everything-at-once", "metric-brackets");
  }

  private static List<BeamDiagram> diagrams(String job) {
    return Job.of(job).proposal().more().diagrams();
  }

  private static Checked check(String job, BeamDiagram diagram) {
    return Job.of(job).proposal().checks().stream()
        .filter(each -> each.id().equals(diagram.check()))
        .max(java.util.Comparator.comparingDouble(each -> each.check().ratio()))
        .orElseThrow();
  }

  private static double most(BeamDiagram diagram) {
    return diagram.extremes().stream()
        .mapToDouble(each -> Math.abs(each.amount()))
        .max()
        .orElseThrow();
  }

  /** Stress of the check from the most that is drawn: 3 V/(2 b d), or 6 M/(b d^2). */
  @ParameterizedTest
  @MethodSource("jobs")
  void the_most_of_each_is_what_its_check_was_worked_with(String job) {
    assertThat(diagrams(job)).extracting(BeamDiagram::role).contains("crossbeam", "header");
    for (BeamDiagram each : diagrams(job)) {
      Shape shape = Job.of(job).lists().pieces().of(each.role()).get(0).shape();
      double cutIn =
          each.check().endsWith("seat-bending") && each.role().equals("crossbeam")
              ? shape.recesses().stream().mapToDouble(Recess::depthIn).max().orElse(0)
              : 0;
      boolean cutHeader = each.role().equals("header") && !shape.recesses().isEmpty();
      double deepIn = shape.depthIn() - cutIn;
      double stressPsi =
          each.kind() == BeamDiagram.Kind.SHEAR
              ? 1.5 * most(each) / (shape.breadthIn() * shape.depthIn())
              : 6 * most(each) / (shape.breadthIn() * deepIn * deepIn);
      // What notches and sinks leave of a header on its posts is not known to the list of pieces.
      if (!(cutHeader && each.check().endsWith("seat-bending"))) {
        assertThat(stressPsi)
            .as(each.check())
            .isCloseTo(check(job, each).check().demand(), Percentage.withPercentage(THOUSANDTH));
      }
      assertThat(each.combination()).isEqualTo(check(job, each).combination());
    }
  }

  /**
   * By hand: own weight and climbers weigh 0.4625 lb/in, as the sheet has it, and somebody of 200
   * lb stands on the tip, 26 1/8 in from the header: 0.4625 x 26.125^2/2 + 200 x 26.125 = 5383
   * in-lb; beside the header 0.4625 x 87.5/2 + (5383 - 158)/87.5 = 79.9 lb in the span, 200 +
   * 0.4625 x 26.125 = 212.1 lb in the tail.
   */
  @Test
  void a_tail_with_somebody_on_its_tip_is_as_by_hand() {
    BeamDiagram moment =
        diagrams("mower-lane").stream()
            .filter(each -> each.role().equals("crossbeam"))
            .filter(each -> each.kind() == BeamDiagram.Kind.MOMENT)
            .findFirst()
            .orElseThrow();

    assertThat(moment.extremes()).hasSize(1);
    assertThat(moment.extremes().get(0).amount()).isCloseTo(-5383, within(1.0));
    assertThat(moment.extremes().get(0).atIn()).isCloseTo(26.125, within(0.01));
    assertThat(moment.supportsIn()).hasSize(2);
    assertThat(moment.curve().get(0).amount()).isZero();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void labels_tell_amount_and_place_and_have_room(String job) {
    for (UnitSystem units : UnitSystem.values()) {
      for (Room room : Room.values()) {
        for (BeamDiagram each : diagrams(job)) {
          DiagramWords words =
              new DiagramWords(each.role(), "check", said -> Math.round(said.amount()) + " u");
          Sheet sheet = Job.of(job).laidOut(units).diagram(each, words, room);
          Picture picture = Picture.read(sheet.name(), SvgWriter.inPage(sheet, "p"));
          assertThat(RoomForWordsTest.crowded(picture)).as(sheet.name() + " " + room).isEmpty();
          List<Picture.Dimension> labels =
              picture.dimensions().stream()
                  .filter(one -> one.of().matches(".*(most|least)"))
                  .toList();
          assertThat(labels).hasSameSizeAs(each.extremes());
          for (int i = 0; i < labels.size(); i++) {
            BeamDiagram.At extreme = each.extremes().get(i);
            assertThat(labels.get(i).words())
                .startsWith(Math.round(extreme.amount()) + " u at ")
                .endsWith(new DrawnLengths(units).said(extreme.atIn()));
            // As far from the axis as its amount, the largest 66 px.
            assertThat(labels.get(i).longPx())
                .isCloseTo(66 * Math.abs(extreme.amount()) / most(each), within(0.1));
          }
          assertThat(picture.says()).contains(each.combination());
        }
      }
    }
  }
}
