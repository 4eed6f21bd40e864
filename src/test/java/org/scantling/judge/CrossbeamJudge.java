package org.scantling.judge;

import java.util.List;
import java.util.stream.IntStream;

/** A crossbeam as a beam on the two rows with a tail at each end. */
final class CrossbeamJudge {
  private final Stock stock;
  private final Wood wood;
  private final double notchIn;
  private final double spanIn;
  private final double tailIn;
  private final double seatIn;
  private final Beam beam;
  private final int first;
  private final int last;
  private final Loaded loaded;
  private final Loaded besideSeats;
  private final Climate climate;
  private final Edge edge;

  CrossbeamJudge(Design design, Climate climate) {
    this.climate = climate;
    edge = new Edge(design, climate);
    Design.Member member = design.need("crossbeam");
    stock = member.stock();
    wood = member.wood();
    notchIn = member.notchIn();
    spanIn = design.layout("rowSpacingIn");
    double longIn = member.lengthIn();
    tailIn = (longIn - spanIn) / 2;
    seatIn = design.need("header").stock().thicknessIn();
    double right = tailIn + spanIn;
    List<Double> matters =
        List.of(
            0.0,
            tailIn - seatIn / 2,
            tailIn,
            tailIn + seatIn / 2,
            longIn / 2,
            right - seatIn / 2,
            right,
            right + seatIn / 2,
            longIn);
    Grid grid = Grid.of(matters, List.of(), spanIn / 24);
    double[] x = grid.placesIn();
    boolean[] held = grid.near(List.of(tailIn, right));
    beam = new Beam(x, grid.cuts(), held);
    first = IntStream.range(0, x.length).filter(i -> held[i]).findFirst().orElseThrow();
    last = IntStream.range(0, x.length).filter(i -> held[i]).max().orElseThrow();
    double[][] units = new double[3][x.length];
    for (int i = 0; i + 1 < x.length; i++) {
      int bay = i < first ? 0 : i < last ? 1 : 2;
      units[bay][i] += (x[i + 1] - x[i]) / 2;
      units[bay][i + 1] += (x[i + 1] - x[i]) / 2;
    }
    boolean[] all = new boolean[x.length];
    boolean[] beside = new boolean[x.length];
    for (int i = 0; i < x.length; i++) {
      all[i] = true;
      beside[i] =
          Math.abs(x[i] - tailIn) > seatIn / 2 - 1e-6 && Math.abs(x[i] - right) > seatIn / 2 - 1e-6;
    }
    double person = Tables.value("live", "live.person");
    double[] none = new double[x.length];
    loaded = new Loaded(0, none, none, units, climate.onCrossbeam(), person, all);
    besideSeats = new Loaded(0, none, none, units, climate.onCrossbeam(), person, beside);
  }

  void judge(Findings findings) {
    double gross = stock.sectionIn3();
    double left = stock.depthIn() - notchIn;
    double net = stock.thicknessIn() * left * left / 6;
    double stiff = wood.elasticityPsi() * stock.inertiaIn4();
    findings.add("crossbeam.stability", Combination.DEAD, wood.beamSlenderness(stock, spanIn), 50);
    for (Combination load : Combination.ALL) {
      double duration = load.duration();
      double fb = wood.bendingPsi() * duration * wood.beamStability(stock, spanIn, duration);
      double fv = wood.shearPsi() * duration;
      for (int i = 0; i < beam.nodes(); i++) {
        if (i > first && i < last) {
          double[] moment = beam.moment(i);
          double bent = load.up() ? loaded.size(moment, load) : loaded.most(moment, load);
          findings.add("crossbeam.bending", load, bent / gross, fb);
          sag(findings, "crossbeam.deflection", load, beam.sag(i), spanIn, stiff);
        }
        if (i + 1 < beam.nodes()) {
          double shear = besideSeats.size(beam.shear(i), load);
          findings.add("crossbeam.shear", load, 1.5 * shear / stock.areaIn2(), fv);
          findings.add(
              "crossbeam.notched-shear",
              load,
              shear,
              2 / 3.0 * fv * stock.thicknessIn() * left * Math.pow(left / stock.depthIn(), 2));
        }
      }
      for (int post : new int[] {first, last}) {
        findings.add(
            "crossbeam.seat-bending", load, loaded.size(beam.moment(post), load) / net, fb);
        findings.add(
            "crossbeam.bearing",
            load,
            loaded.most(beam.reaction(post), load) / (stock.thicknessIn() * seatIn),
            wood.bearingPsi() * (seatIn < 6 ? (seatIn + 0.375) / seatIn : 1));
      }
      sag(findings, "crossbeam.tail-deflection", load, beam.sag(0), 2 * tailIn, stiff);
    }
  }

  private void sag(
      Findings findings,
      String check,
      Combination load,
      double[] line,
      double lengthIn,
      double stiff) {
    if (!load.up()) {
      findings.add(check + "-total", load, loaded.lastingSag(line, load) / stiff, lengthIn / 180);
      findings.add(check + "-live", load, loaded.passingSag(line, load) / stiff, lengthIn / 240);
    }
  }

  /** Lift on one seat of the first crossbeam, 0.6D + 0.6W. */
  double edgeLiftLb() {
    double mean = -loaded.least(beam.reaction(first), Combination.LIFT);
    double wind = Combination.LIFT.wind() * climate.onCrossbeam().liftLb() * (spanIn / 2 + tailIn);
    double over = edge.overMean(0, edge.crossbeamAreaIn2());
    return mean + wind * (over - 1);
  }

  /** Wind on the face of a crossbeam that nothing else holds: how it bows and bends both ways. */
  void judgeSideways(Findings findings, double faceLb) {
    double[] share = share();
    double line = faceLb / (spanIn + 2 * tailIn);
    double flat = stock.depthIn() * Math.pow(stock.thicknessIn(), 3) / 12;
    double stiff = wood.elasticityPsi() * flat;
    double section = flat / (stock.thicknessIn() / 2);
    double edge = wood.beamSlenderness(stock, spanIn);
    double rolls = 1.2 * wood.bucklingPsi() / (edge * edge);
    for (Combination load : Combination.ALL) {
      double push = load.wind() * line;
      if (load == Combination.PRESSED) {
        for (int i = first + 1; i < last; i++) {
          double bow = Math.abs(Loaded.dot(beam.sag(i), share)) * push / stiff;
          findings.add("crossbeam.lateral-sag", load, bow, spanIn / 180);
        }
        double tip = Math.abs(Loaded.dot(beam.sag(0), share)) * push / stiff;
        findings.add("crossbeam.lateral-sag", load, tip, 2 * tailIn / 180);
      }
      double upright =
          wood.bendingPsi() * load.duration() * wood.beamStability(stock, spanIn, load.duration());
      double flatwise = wood.bendingPsi() * load.duration() * stock.flatUse();
      for (int i = first; i <= last && load.wind() > 0; i++) {
        boolean seat = beam.held(i);
        double left = seat ? stock.depthIn() - notchIn : stock.depthIn();
        double down =
            (seat ? loaded.size(beam.moment(i), load) : loaded.most(beam.moment(i), load))
                / (stock.thicknessIn() * left * left / 6);
        double aside =
            Math.abs(Loaded.dot(beam.moment(i), share)) * push / section * stock.depthIn() / left;
        findings.add(
            "crossbeam.biaxial",
            load,
            down / upright + aside / (flatwise * (1 - Math.pow(down / rolls, 2))),
            1);
      }
    }
  }

  private double[] share() {
    double[] share = new double[beam.nodes()];
    for (double[] bay : loaded.topUnits()) {
      for (int i = 0; i < share.length; i++) {
        share[i] += bay[i];
      }
    }
    return share;
  }

  /** Moment that rolls it over on its seat, 0.6D + 0.6W, its weight less the lift counted. */
  double rollingInLb(double faceLb) {
    double load = Combination.LIFT.wind() * faceLb / 2 * (stock.depthIn() / 2 - notchIn);
    double weight = Math.max(0, -edgeLiftLb());
    return load - weight * stock.thicknessIn() / 2;
  }

  /** What a person at the tip of a tail adds by leverage. */
  double leverRatio() {
    return 1 + tailIn / spanIn;
  }
}
