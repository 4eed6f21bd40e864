package org.scantling.workings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.Material;
import org.scantling.quantity.FormulaLine;
import org.scantling.reasons.CalculationStep;
import org.scantling.timber.Rectangle;

/** Stresses of a beam beside what the timber is allowed, as its checks have worked them. */
final class BeamStresses {
  private final CheckContext context;
  private final Material material;
  private final Set<Double> rolled = new HashSet<>();

  BeamStresses(BeamMember member) {
    this.context = member.context();
    this.material = member.material();
  }

  Rectangle section() {
    return material.whole();
  }

  double creepFactor() {
    return context.limits().creepFactor();
  }

  double stiffnessPsi() {
    return material.lasting(1).elasticity().psi();
  }

  List<CalculationStep> sagging(BeamTask task) {
    List<CalculationStep> list = rolling(task);
    task.scene().sagging().forEach(line -> list.add(task.both(line.id(), line)));
    return list;
  }

  /** Over a support, where notch and sinks are gone: the stress has a line of its own. */
  List<CalculationStep> hogging(BeamTask task) {
    List<CalculationStep> list = rolling(task);
    for (FormulaLine line : task.scene().hogging()) {
      list.add(task.both(line.id().equals("bending") ? "seat-bending" : line.id(), line));
    }
    return list;
  }

  /** Once for each duration: another check of the same one has the same factor. */
  private List<CalculationStep> rolling(BeamTask task) {
    List<CalculationStep> list = new ArrayList<>();
    if (rolled.add(context.limits().duration().of(task.combination()))) {
      task.scene().rolling().forEach(line -> list.add(task.both(line.id(), line)));
    }
    return list;
  }

  List<CalculationStep> shear(BeamTask task) {
    return task.scene().shear().stream().map(line -> task.both(line.id(), line)).toList();
  }

  List<CalculationStep> bearing(BeamTask task) {
    return task.scene().bearing().stream().map(line -> task.both(line.id(), line)).toList();
  }
}
