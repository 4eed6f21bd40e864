package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.pounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.scantling.confirm.BeamAsk;
import org.scantling.confirm.BeamScene;
import org.scantling.mechanics.Peak;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.workings.BeamBurden.Part;

/** Where a beam is bent, sheared and pressed most, and the lines that lead there. */
final class BeamPlaces {
  /** Places nearer than this are the same; of forces as little apart the first counts. */
  private static final double NEAR_IN = 1e-6;

  private final BeamTask task;
  private final BeamScene scene;
  private final BeamStresses stresses;

  BeamPlaces(BeamTask task, BeamStresses stresses) {
    this.task = task;
    this.scene = task.scene();
    this.stresses = stresses;
  }

  List<CalculationStep> sagging() {
    return bent(scene.all().mostSagging(), stresses::sagging);
  }

  List<CalculationStep> hogging() {
    return bent(scene.all().mostHogging(), stresses::hogging);
  }

  private List<CalculationStep> bent(
      Peak peak, Function<BeamTask, List<CalculationStep>> stressed) {
    BeamStatics statics = new BeamStatics(task, Part.ALL);
    int support = supportAt(peak.atIn());
    int span = scene.spanOf(peak.atIn());
    if (support >= 0) {
      statics.moments(Set.of(support));
    } else if (span >= 0 && span < scene.beam().spanCount()) {
      statics.moments(Set.of(span, span + 1));
      statics.moment(span, peak.atIn() - scene.beam().supportAtIn(span));
    } else {
      return List.of();
    }
    List<CalculationStep> list = new ArrayList<>(statics.lines());
    list.addAll(stressed.apply(task));
    return list;
  }

  private int supportAt(double atIn) {
    for (int support = 0; support < scene.beam().supportCount(); support++) {
      if (Math.abs(scene.beam().supportAtIn(support) - atIn) < NEAR_IN) {
        return support;
      }
    }
    return -1;
  }

  List<CalculationStep> sheared() {
    int support = 0;
    int other = 0;
    double most = -1;
    for (int near = 0; near < scene.beam().supportCount(); near++) {
      for (int far : new int[] {near - 1, near + 1}) {
        double shearLb = Math.abs(new BeamStatics(task, Part.ALL).shear(near, far));
        if (shearLb > most + NEAR_IN) {
          most = shearLb;
          support = near;
          other = far;
        }
      }
    }
    BeamStatics statics = new BeamStatics(task, Part.ALL);
    statics.moments(ends(support, other));
    statics.shear(support, other);
    List<CalculationStep> list = new ArrayList<>(statics.lines());
    list.addAll(stresses.shear(task));
    return list;
  }

  private Set<Integer> ends(int support, int other) {
    boolean tail = other < 0 || other >= scene.beam().supportCount();
    return tail ? Set.of() : Set.of(support, other);
  }

  List<CalculationStep> pressed() {
    BeamStatics statics = new BeamStatics(task, Part.ALL);
    BeamScene.Pressed seat = scene.pressedHardest();
    double pressedLb;
    if (seat.atCut()) {
      statics.moments(about(seat.support()));
      pressedLb = statics.atCut(seat.support(), seat.towards());
    } else {
      pressedLb = borne(statics, 1);
    }
    List<CalculationStep> list = new ArrayList<>(statics.lines());
    double share = task.seatShareRatio();
    if (share < 1) {
      Evidence shared =
          Evidence.saw("share", Measure.ratio(share)).and("reaction", pounds(pressedLb));
      list.add(task.step("board", pounds(share * pressedLb), shared));
    }
    list.addAll(stresses.bearing(task));
    return list;
  }

  /** What a support carries, without the stress in the seat. */
  List<CalculationStep> carried(BeamAsk ask) {
    BeamStatics statics = new BeamStatics(task, Part.ALL);
    borne(statics, ask == BeamAsk.LIFT ? -1 : 1);
    return statics.lines();
  }

  /**
   * @param side 1 for the support that is pressed most, -1 for the one that is lifted most
   */
  private double borne(BeamStatics statics, int side) {
    int most = 0;
    for (int support = 1; support < scene.beam().supportCount(); support++) {
      double moreLb = scene.all().reactionLb(support) - scene.all().reactionLb(most);
      if (side * moreLb > NEAR_IN) {
        most = support;
      }
    }
    statics.moments(about(most));
    return statics.reaction(most);
  }

  private Set<Integer> about(int support) {
    Set<Integer> about = new TreeSet<>();
    for (int each = support - 1; each <= support + 1; each++) {
      if (each >= 0 && each < scene.beam().supportCount()) {
        about.add(each);
      }
    }
    return about;
  }
}
