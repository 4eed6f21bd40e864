package org.scantling.timber;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * The numbers of the yield-limit equations, each worked once.
 *
 * @param bearingRatio Re, dowel bearing of the main piece over the side piece
 * @param lengthRatio Rt, length in the main piece over the side piece
 * @param k1 of mode II
 * @param k2 of mode IIIm
 * @param k3 of mode IIIs
 * @param reduction R_d
 * @param gap the equations of pieces that do not touch; none where they do
 */
record YieldEquations(
    Dowel dowel,
    DowelMember main,
    DowelMember side,
    double bearingRatio,
    double lengthRatio,
    double k1,
    double k2,
    double k3,
    YieldReduction reduction,
    Optional<DowelGap> gap) {

  static YieldEquations of(Dowel dowel, DowelMember main, DowelMember side, double gapIn) {
    double re = main.bearingPsi() / side.bearingPsi();
    double rt = main.bearingLengthIn() / side.bearingLengthIn();
    double root = Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re);
    double k1 = (root - re * (1 + rt)) / (1 + re);
    double inMain = yieldTerm(dowel, main, main.bearingLengthIn()) * (1 + 2 * re);
    double k2 = Math.sqrt(2 * (1 + re) + inMain) - 1;
    double inSide = yieldTerm(dowel, main, side.bearingLengthIn()) * (2 + re);
    double k3 = Math.sqrt(2 * (1 + re) / re + inSide) - 1;
    return new YieldEquations(
        dowel,
        main,
        side,
        re,
        rt,
        k1,
        k2,
        k3,
        YieldReduction.of(dowel, main, side),
        gapIn > 0 ? Optional.of(new DowelGap(dowel, main, side, gapIn)) : Optional.empty());
  }

  private static double yieldTerm(Dowel dowel, DowelMember main, double lengthIn) {
    double slimness = dowel.shankDiameterIn() / lengthIn;
    return 2 * dowel.bendingYieldPsi() * slimness * slimness / (3 * main.bearingPsi());
  }

  Map<YieldMode, Double> singleShear() {
    Map<YieldMode, Double> modes = new EnumMap<>(YieldMode.class);
    modes.put(YieldMode.MAIN_CRUSHES, mainCrushesLb());
    modes.put(YieldMode.SIDE_CRUSHES, sideCrushesLb());
    if (gap.isPresent()) {
      DowelGap apart = gap.get();
      modes.put(YieldMode.TILTS, apart.tiltsLb() / reduction.tiltFactor());
      modes.put(YieldMode.BENDS_TILTING_IN_MAIN, apart.tiltsInMainLb() / reduction.bendFactor());
      modes.put(YieldMode.BENDS_TILTING_IN_SIDE, apart.tiltsInSideLb() / reduction.bendFactor());
      modes.put(YieldMode.BENDS_TWICE, apart.bendsTwiceLb() / reduction.bendFactor());
    } else {
      modes.put(YieldMode.TILTS, tiltsLb());
      modes.put(YieldMode.BENDS_TILTING_IN_MAIN, tiltsInMainLb());
      modes.put(YieldMode.BENDS_TILTING_IN_SIDE, tiltsInSideLb());
      modes.put(YieldMode.BENDS_TWICE, bendsTwiceLb());
    }
    return modes;
  }

  Map<YieldMode, Double> doubleShear() {
    Map<YieldMode, Double> modes = new EnumMap<>(YieldMode.class);
    modes.put(YieldMode.MAIN_CRUSHES, mainCrushesLb());
    modes.put(YieldMode.SIDE_CRUSHES, 2 * sideCrushesLb());
    modes.put(YieldMode.BENDS_TILTING_IN_SIDE, 2 * tiltsInSideLb());
    modes.put(YieldMode.BENDS_TWICE, 2 * bendsTwiceLb());
    return modes;
  }

  private double mainCrushesLb() {
    return diameterIn() * main.bearingLengthIn() * main.bearingPsi() / reduction.crushFactor();
  }

  private double sideCrushesLb() {
    return diameterIn() * side.bearingLengthIn() * side.bearingPsi() / reduction.crushFactor();
  }

  private double tiltsLb() {
    return k1 * diameterIn() * side.bearingLengthIn() * side.bearingPsi() / reduction.tiltFactor();
  }

  private double tiltsInMainLb() {
    double forceLb = k2 * diameterIn() * main.bearingLengthIn() * main.bearingPsi();
    return forceLb / ((1 + 2 * bearingRatio) * reduction.bendFactor());
  }

  private double tiltsInSideLb() {
    double forceLb = k3 * diameterIn() * side.bearingLengthIn() * main.bearingPsi();
    return forceLb / ((2 + bearingRatio) * reduction.bendFactor());
  }

  private double bendsTwiceLb() {
    double product = 2 * main.bearingPsi() * dowel.bendingYieldPsi();
    double stressPsi = Math.sqrt(product / (3 * (1 + bearingRatio)));
    return diameterIn() * diameterIn() * stressPsi / reduction.bendFactor();
  }

  private double diameterIn() {
    return dowel.shankDiameterIn();
  }

  /**
   * What goes into the modes, then every mode.
   *
   * @param doubled of a main piece between two side pieces
   */
  List<FormulaLine> lines(Map<YieldMode, Double> modesLb, boolean doubled) {
    List<FormulaLine> lines = new ArrayList<>();
    if (gap.isEmpty()) {
      lines.addAll(coefficients(doubled));
    }
    lines.addAll(reduction.lines());
    gap.ifPresent(apart -> lines.addAll(apart.lines()));
    modesLb.forEach((mode, lb) -> lines.add(mode(mode, lb, doubled)));
    return lines;
  }

  private List<FormulaLine> coefficients(boolean doubled) {
    FormulaLine ratio =
        FormulaLine.of("bearing-ratio", Measure.ratio(bearingRatio))
            .with("main-bearing", Measure.psi(main.bearingPsi()))
            .with("side-bearing", Measure.psi(side.bearingPsi()));
    FormulaLine three =
        bent(FormulaLine.of("k3", Measure.ratio(k3)))
            .with("side-long", Measure.inches(side.bearingLengthIn()));
    if (doubled) {
      return List.of(ratio, three);
    }
    return List.of(
        ratio,
        FormulaLine.of("length-ratio", Measure.ratio(lengthRatio))
            .with("main-long", Measure.inches(main.bearingLengthIn()))
            .with("side-long", Measure.inches(side.bearingLengthIn())),
        FormulaLine.of("k1", Measure.ratio(k1))
            .with("re", Measure.ratio(bearingRatio))
            .with("rt", Measure.ratio(lengthRatio)),
        bent(FormulaLine.of("k2", Measure.ratio(k2)))
            .with("main-long", Measure.inches(main.bearingLengthIn())),
        three);
  }

  private FormulaLine bent(FormulaLine line) {
    return line.with("re", Measure.ratio(bearingRatio))
        .with("yield", Measure.psi(dowel.bendingYieldPsi()))
        .with("shank", Measure.inches(diameterIn()))
        .with("main-bearing", Measure.psi(main.bearingPsi()));
  }

  private FormulaLine mode(YieldMode mode, double lb, boolean doubled) {
    boolean crushes = mode == YieldMode.MAIN_CRUSHES || mode == YieldMode.SIDE_CRUSHES;
    String way = doubled && mode != YieldMode.MAIN_CRUSHES ? "double-" : "mode-";
    String id =
        (gap.isPresent() && !crushes ? "gap-" : way) + mode.numeral().toLowerCase(Locale.ROOT);
    FormulaLine line = FormulaLine.of(id, Measure.pounds(lb));
    if (gap.isPresent() && !crushes) {
      return gap.get().in(line).with("reduction", reduced(mode));
    }
    return in(line, mode).with("reduction", reduced(mode));
  }

  private Measure reduced(YieldMode mode) {
    return Measure.ratio(
        switch (mode) {
          case MAIN_CRUSHES, SIDE_CRUSHES -> reduction.crushFactor();
          case TILTS -> reduction.tiltFactor();
          case BENDS_TILTING_IN_MAIN, BENDS_TILTING_IN_SIDE, BENDS_TWICE -> reduction.bendFactor();
        });
  }

  /** The numbers of a mode's equation. */
  private FormulaLine in(FormulaLine plain, YieldMode mode) {
    FormulaLine line = plain.with("shank", Measure.inches(diameterIn()));
    Measure mainLong = Measure.inches(main.bearingLengthIn());
    Measure sideLong = Measure.inches(side.bearingLengthIn());
    Measure mainBearing = Measure.psi(main.bearingPsi());
    Measure sideBearing = Measure.psi(side.bearingPsi());
    Measure re = Measure.ratio(bearingRatio);
    return switch (mode) {
      case MAIN_CRUSHES -> line.with("main-long", mainLong).with("main-bearing", mainBearing);
      case SIDE_CRUSHES -> line.with("side-long", sideLong).with("side-bearing", sideBearing);
      case TILTS ->
          line.with("k", Measure.ratio(k1))
              .with("side-long", sideLong)
              .with("side-bearing", sideBearing);
      case BENDS_TILTING_IN_MAIN ->
          line.with("k", Measure.ratio(k2))
              .with("main-long", mainLong)
              .with("main-bearing", mainBearing)
              .with("re", re);
      case BENDS_TILTING_IN_SIDE ->
          line.with("k", Measure.ratio(k3))
              .with("side-long", sideLong)
              .with("main-bearing", mainBearing)
              .with("re", re);
      case BENDS_TWICE ->
          line.with("main-bearing", mainBearing)
              .with("yield", Measure.psi(dowel.bendingYieldPsi()))
              .with("re", re);
    };
  }
}
