package org.scantling.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.scantling.confirm.BeamScene;
import org.scantling.confirm.Material;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Seat;

/** From a moment, a shear or a reaction to the stress, beside what the timber is allowed. */
final class BeamStresses {
  /** Where the table of effective lengths turns from short to long. */
  private static final double STOCKY_DEPTHS = 7;

  private final CheckContext context;
  private final Material material;
  private final Rectangle section;
  private final Set<Double> rolled = new HashSet<>();

  BeamStresses(CheckContext context, Material material) {
    this.context = context;
    this.material = material;
    this.section = material.whole();
  }

  Rectangle section() {
    return section;
  }

  double creepFactor() {
    return context.limits().creepFactor();
  }

  double stiffnessPsi() {
    return material.lasting(1).elasticity().psi();
  }

  /**
   * @param over a support, where notch and sinks are gone
   */
  List<CalculationStep> bending(BeamTask task, Measure momentInLb, boolean over) {
    double depthIn = over ? task.scene().netDepthIn() : section.depthIn();
    Rectangle left = new Rectangle(section.breadthIn(), depthIn);
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        task.both(
            over ? "seat-bending" : "bending",
            psi(momentInLb.amount() / left.sectionModulusIn3()),
            Evidence.saw("moment", momentInLb)
                .and("breadth", Measure.inches(left.breadthIn()))
                .and("depth", Measure.inches(depthIn))));
    list.addAll(allowed(task));
    return list;
  }

  private List<CalculationStep> allowed(BeamTask task) {
    double duration = context.limits().duration().of(task.combination());
    AdjustedValues values = material.lasting(duration);
    Rectangle ply = material.section();
    double unbracedIn = task.scene().unbracedIn();
    double lengthIn = BeamLoading.UNIFORM.effectiveLengthIn(unbracedIn, ply.depthIn());
    BeamStability stability = BeamStability.of(ply, lengthIn, values);
    List<CalculationStep> list = new ArrayList<>();
    // Once for each duration: another check of the same one has the same factor.
    if (ply.depthIn() > ply.breadthIn() && rolled.add(duration)) {
      list.addAll(rolling(task, stability, duration));
    }
    double starPsi = material.lasting(1).bending().psi();
    list.add(
        task.both(
            "bending-allowed",
            psi(starPsi * duration * stability.stabilityFactor()),
            Evidence.saw("star", psi(starPsi))
                .and("duration", Measure.ratio(duration))
                .and("stability", Measure.ratio(stability.stabilityFactor()))));
    return list;
  }

  private List<CalculationStep> rolling(BeamTask task, BeamStability stability, double duration) {
    BeamScene scene = task.scene();
    Measure depth = Measure.inches(section.depthIn());
    Measure length = Measure.inches(stability.effectiveLengthIn());
    boolean stocky = scene.unbracedIn() < STOCKY_DEPTHS * section.depthIn();
    double ratio = stability.criticalStressPsi() / stability.startStressPsi();
    Evidence unbraced = Evidence.saw("unbraced", Measure.inches(scene.unbracedIn()));
    return List.of(
        stocky
            ? task.both("effective-length-stocky", length, unbraced)
            : task.both("effective-length", length, unbraced.and("depth", depth)),
        task.both(
            "slenderness",
            Measure.ratio(stability.slendernessRatio()),
            Evidence.saw("length", length)
                .and("depth", depth)
                .and("breadth", Measure.inches(material.section().breadthIn()))),
        task.both(
            "critical",
            Measure.ratio(ratio),
            Evidence.saw("stiffness", psi(material.lasting(1).elasticityMinimum().psi()))
                .and("slenderness", Measure.ratio(stability.slendernessRatio()))
                .and("star", psi(material.lasting(1).bendingStar().psi()))
                .and("duration", Measure.ratio(duration))),
        task.both(
            "mean", Measure.ratio((1 + ratio) / 1.9), Evidence.saw("ratio", Measure.ratio(ratio))),
        task.both(
            "stability",
            Measure.ratio(stability.stabilityFactor()),
            Evidence.saw("ratio", Measure.ratio(ratio))
                .and("mean", Measure.ratio((1 + ratio) / 1.9))));
  }

  List<CalculationStep> shear(BeamTask task, Measure shear) {
    double duration = context.limits().duration().of(task.combination());
    double lastingPsi = material.lasting(1).shear().psi();
    double breadthIn = section.breadthIn();
    double depthIn = section.depthIn();
    Measure breadth = Measure.inches(breadthIn);
    Measure depth = Measure.inches(depthIn);
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        task.both(
            "shear",
            psi(3 * shear.amount() / (2 * breadthIn * depthIn)),
            Evidence.saw("shear", shear).and("breadth", breadth).and("depth", depth)));
    list.add(
        task.both(
            "shear-allowed",
            psi(lastingPsi * duration),
            Evidence.saw("lasting", psi(lastingPsi)).and("duration", Measure.ratio(duration))));
    double notchIn = task.scene().notchIn();
    if (notchIn > 0) {
      double leftIn = depthIn - notchIn;
      double share = leftIn / depthIn;
      list.add(
          task.both(
              "notch",
              CalculationSteps.pounds(
                  2.0 / 3 * lastingPsi * duration * breadthIn * leftIn * share * share),
              Evidence.saw("allowed", psi(lastingPsi * duration))
                  .and("breadth", breadth)
                  .and("rest", Measure.inches(leftIn))
                  .and("depth", depth)));
    }
    return list;
  }

  List<CalculationStep> bearing(BeamTask task, Measure reaction, Seat contact) {
    double factor = contact.bearingFactor();
    double lastingPsi = material.lasting(1).bearing().psi();
    Measure seat = Measure.inches(contact.lengthIn());
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        task.both(
            "bearing",
            psi(reaction.amount() / contact.areaIn2()),
            Evidence.saw("reaction", reaction)
                .and("breadth", Measure.inches(contact.breadthIn()))
                .and("seat", seat)));
    if (factor > 1) {
      list.add(task.both("bearing-factor", Measure.ratio(factor), Evidence.saw("seat", seat)));
    }
    list.add(
        task.both(
            "bearing-allowed",
            psi(lastingPsi * factor),
            Evidence.saw("lasting", psi(lastingPsi)).and("factor", Measure.ratio(factor))));
    return list;
  }

  static Measure psi(double amount) {
    return new Measure(amount, Unit.PSI);
  }
}
