package org.scantling.judge;

import java.util.ArrayList;
import java.util.List;

/**
 * A header continuous over its posts as built: cut where the proposal says that it is cut. Of a
 * pair, one board is worked under all the load. Beside a post the top is pulled, which the check
 * over the post, on less wood, always covers.
 */
final class HeaderJudge {
  private final Design design;
  private final Stock stock;
  private final Wood wood;
  private final double notchIn;
  private final double tailIn;
  private final double seatIn;
  private final double longestBayIn;
  private final List<Double> postsIn = new ArrayList<>();
  private final List<Double> cutsIn = new ArrayList<>();
  private final Beam beam;
  private final Loaded board;
  private final Loaded boardBeside;
  private final Loaded whole;
  private final EdgeLoaded atEdge;

  HeaderJudge(Design design, Climate climate, double leverRatio) {
    this.design = design;
    Design.Member member = design.need("header");
    stock = member.stock();
    wood = member.wood();
    notchIn = design.paired() ? 0 : member.notchIn();
    seatIn = design.need("post").stock().thicknessIn();
    tailIn = design.layout("headerOverhangIn") + seatIn / 2;
    List<Double> bays = design.baysIn();
    longestBayIn = bays.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double at = 0;
    postsIn.add(at);
    for (double bay : bays) {
      at += bay;
      postsIn.add(at);
    }
    double total = at;
    int passed = 0;
    for (int piece : design.pieces()) {
      passed += piece;
      if (passed < bays.size()) {
        cutsIn.add(postsIn.get(passed));
      }
    }
    List<Double> crossbeams = design.crossbeamsIn();
    List<Double> matters = new ArrayList<>(crossbeams);
    matters.removeIf(x -> postsIn.stream().anyMatch(p -> Math.abs(p - x) < 0.02));
    matters.add(-tailIn);
    matters.add(total + tailIn);
    for (double post : postsIn) {
      matters.addAll(List.of(post - seatIn / 2, post, post + seatIn / 2));
    }
    Grid grid = Grid.of(matters, cutsIn, longestBayIn / 12);
    double[] x = grid.placesIn();
    beam = new Beam(x, grid.cuts(), grid.near(postsIn));
    double[][] units = new double[bays.size() + 2][x.length];
    double[] blocks = new double[x.length];
    for (double crossbeam : crossbeams) {
      List<Integer> on = new ArrayList<>();
      for (int i = 0; i < x.length; i++) {
        if (Math.abs(x[i] - crossbeam) < 0.02) {
          on.add(i);
        }
      }
      int bay = (int) postsIn.stream().filter(post -> post <= crossbeam + 0.02).count();
      double strip = stripIn(crossbeams, crossbeam) / design.layout("crossbeamSpacingIn");
      on.forEach(i -> units[bay][i] += strip / on.size());
      boolean last =
          crossbeam == crossbeams.get(0) || crossbeam == crossbeams.get(crossbeams.size() - 1);
      // A narrower strip carries less, but the timber on it weighs the same.
      Design.Member timber = design.need("crossbeam");
      double timberLb = (1 - strip) * timber.ownLbPerIn() * timber.lengthIn() / 2;
      double blockLb = design.blockLb() * (last ? 0.5 : 1) + timberLb;
      on.forEach(i -> blocks[i] += blockLb / on.size());
    }
    boolean[] all = new boolean[x.length];
    boolean[] beside = new boolean[x.length];
    for (int i = 0; i < x.length; i++) {
      double place = x[i];
      all[i] = true;
      beside[i] = postsIn.stream().allMatch(p -> Math.abs(p - place) > seatIn / 2 - 1e-6);
    }
    Top top = climate.onCrossbeam().times(design.need("crossbeam").lengthIn() / 2);
    double person = Tables.value("live", "live.person") * leverRatio;
    double own = member.ownLbPerIn();
    double[] share = grid.shareIn();
    board = new Loaded(own, share, blocks, units, top, person, all);
    boardBeside = new Loaded(own, share, blocks, units, top, person, beside);
    whole = new Loaded(own * (design.paired() ? 2 : 1), share, blocks, units, top, person, all);
    Edge edge = new Edge(design, climate);
    double shortestIn = bays.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double area =
        Math.max(shortestIn, shortestIn / 2 + tailIn) * design.need("crossbeam").lengthIn() / 2;
    double[] more = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      more[i] = edge.overMean(Math.min(x[i] + tailIn, total + tailIn - x[i]), area) - 1;
    }
    atEdge = new EdgeLoaded(whole, more);
  }

  /** Half of the space on either side; of the first and the last, the whole beside it. */
  private static double stripIn(List<Double> crossbeams, double crossbeam) {
    int i = crossbeams.indexOf(crossbeam);
    int last = crossbeams.size() - 1;
    double before = crossbeams.get(Math.max(i, 1)) - crossbeams.get(Math.max(i, 1) - 1);
    double after =
        crossbeams.get(Math.min(i, last - 1) + 1) - crossbeams.get(Math.min(i, last - 1));
    return (before + after) / 2;
  }

  int posts() {
    return postsIn.size();
  }

  double tailIn() {
    return tailIn;
  }

  /** Line of influence of all that a post takes, both pieces of a cut counted. */
  private double[] onPost(int post) {
    double[] sum = new double[beam.nodes()];
    for (int i = 0; i < beam.nodes(); i++) {
      if (Math.abs(beam.xIn(i) - postsIn.get(post)) < 1e-6) {
        double[] line = beam.reaction(i);
        for (int j = 0; j < sum.length; j++) {
          sum[j] += line[j];
        }
      }
    }
    return sum;
  }

  double pressLb(int post, Combination load) {
    return whole.most(onPost(post), load);
  }

  /** Lift of the whole top on a post, the mean of the main frame. */
  double liftLb(int post, Combination load) {
    return -whole.least(onPost(post), load);
  }

  /** One board of a pair under the whole top, with its own weight. */
  double boardPressLb(int post, Combination load) {
    return board.most(onPost(post), load);
  }

  double boardLiftLb(int post, Combination load) {
    return -new EdgeLoaded(board, atEdge.more()).least(onPost(post), load);
  }

  /** Lift on the joints and the footing of a post, the edge of the top counted. */
  double edgeLiftLb(int post, Combination load) {
    return -atEdge.least(onPost(post), load);
  }

  void judge(Findings findings, double sunkHeadIn) {
    double gross = stock.sectionIn3();
    double notched = stock.depthIn() - notchIn;
    double seated = notched - sunkHeadIn;
    double net = stock.thicknessIn() * seated * seated / 6;
    double stiff = wood.elasticityPsi() * stock.inertiaIn4();
    findings.add(
        "header.stability", Combination.DEAD, wood.beamSlenderness(stock, longestBayIn), 50);
    for (Combination load : Combination.ALL) {
      double fb =
          wood.bendingPsi()
              * load.duration()
              * wood.beamStability(stock, longestBayIn, load.duration());
      double fv = wood.shearPsi() * load.duration();
      for (int i = 0; i < beam.nodes(); i++) {
        double[] moment = beam.moment(i);
        if (beam.held(i)) {
          findings.add("header.seat-bending", load, board.size(moment, load) / net, fb);
        } else {
          double bent = load.up() ? board.size(moment, load) : board.most(moment, load);
          if (load.up()) {
            // What lifts a bay pulls at the top of the timber, as over a post, where it is let in.
            double lifted = Math.max(0, -board.least(moment, load));
            findings.add("header.seat-bending", load, lifted / net, fb);
          }
          findings.add("header.bending", load, bent / gross, fb);
          sag(findings, load, i, stiff);
        }
        if (i + 1 < beam.nodes() && !beam.cutAfter(i)) {
          double shear = boardBeside.size(beam.shear(i), load);
          findings.add("header.shear", load, 1.5 * shear / stock.areaIn2(), fv);
          if (notchIn > 0) {
            findings.add(
                "header.notched-shear",
                load,
                shear,
                2
                    / 3.0
                    * fv
                    * stock.thicknessIn()
                    * notched
                    * Math.pow(notched / stock.depthIn(), 2));
          }
        }
        if (beam.held(i) && !design.paired()) {
          bearing(findings, load, i);
        }
      }
    }
  }

  private void bearing(Findings findings, Combination load, int node) {
    boolean cut = cutsIn.stream().anyMatch(place -> Math.abs(place - beam.xIn(node)) < 1e-6);
    double seat = cut ? seatIn / 2 : seatIn;
    double toEnd =
        cut
            ? 0
            : Math.min(beam.xIn(node) - beam.xIn(0), beam.xIn(beam.nodes() - 1) - beam.xIn(node))
                - seatIn / 2;
    double more = seat < 6 && toEnd >= 3 ? (seat + 0.375) / seat : 1;
    findings.add(
        "header.bearing",
        load,
        board.most(beam.reaction(node), load) / (Math.min(stock.thicknessIn(), seatIn) * seat),
        wood.bearingPsi() * more);
  }

  /** The bay that a place lies in. */
  private double bayAtIn(double place) {
    int post = 1;
    while (post < posts() - 1 && postsIn.get(post) < place) {
      post++;
    }
    return postsIn.get(post) - postsIn.get(post - 1);
  }

  private void sag(Findings findings, Combination load, int node, double stiff) {
    if (load.up()) {
      return;
    }
    double at = beam.xIn(node);
    boolean tip = node == 0 || node == beam.nodes() - 1;
    boolean tail = at < 0 || at > postsIn.get(posts() - 1);
    if (tail && !tip) {
      return;
    }
    String check = tail ? "header.tail-deflection" : "header.deflection";
    double length = tail ? 2 * tailIn : bayAtIn(at);
    double[] line = beam.sag(node);
    findings.add(check + "-total", load, board.lastingSag(line, load) / stiff, length / 180);
    findings.add(check + "-live", load, board.passingSag(line, load) / stiff, length / 240);
  }
}
