package org.scantling.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The stations of every member for a set of load cases, and the laying of loads on them. */
final class FrameCases {
  private static final double PLACE_SLACK_RATIO = 1e-9;

  private final Frame frame;
  private final List<Stations> stations;
  private final List<LineLoad> blanks;

  FrameCases(Frame frame, List<List<FrameLoad>> cases) {
    this.frame = frame;
    int members = frame.elements().size();
    List<List<Double>> breaks = new ArrayList<>(members);
    for (int member = 0; member < members; member++) {
      breaks.add(new ArrayList<>());
    }
    for (List<FrameLoad> loads : cases) {
      loads.forEach(load -> addBreaks(breaks, load));
    }
    Stations[] made = new Stations[members];
    for (int member = 0; member < members; member++) {
      double[] anchors = {0, frame.elements().get(member).lengthIn};
      double[] places = breaks.get(member).stream().mapToDouble(Double::doubleValue).toArray();
      made[member] = Stations.of(anchors, places);
    }
    this.stations = Arrays.asList(made);
    this.blanks = stations.stream().map(LineLoad::new).toList();
  }

  private void addBreaks(List<List<Double>> breaks, FrameLoad load) {
    if (load instanceof FrameLoad.Uniform uniform) {
      int member = frame.member(uniform.member());
      breaks.get(member).add(place(member, "uniform load start", uniform.fromIn()));
      breaks.get(member).add(end(member, uniform));
    } else if (load instanceof FrameLoad.Point point) {
      int member = frame.member(point.member());
      breaks.get(member).add(place(member, "point load", point.atIn()));
    }
  }

  private double end(int member, FrameLoad.Uniform uniform) {
    return Double.isInfinite(uniform.toIn())
        ? frame.elements().get(member).lengthIn
        : place(member, "uniform load end", uniform.toIn());
  }

  private double place(int member, String what, double placeIn) {
    FrameElement element = frame.elements().get(member);
    double slack = PLACE_SLACK_RATIO * element.lengthIn;
    if (!(placeIn >= -slack && placeIn <= element.lengthIn + slack)) {
      throw new IllegalArgumentException(
          what
              + " at "
              + placeIn
              + " in must be on member "
              + element.member.name()
              + ", 0 to "
              + element.lengthIn
              + " in");
    }
    return Math.max(0, Math.min(placeIn, element.lengthIn));
  }

  /** No load on a member; the same one for all cases, never to be added to. */
  LineLoad blank(int member) {
    return blanks.get(member);
  }

  /**
   * Lays a member's load as two: along it and across it, in place of a blank where it is the first.
   */
  void lay(FrameLoad load, LineLoad[] along, LineLoad[] across) {
    if (load instanceof FrameLoad.Uniform uniform) {
      int member = frame.member(uniform.member());
      FrameElement element = frame.elements().get(member);
      double fromIn = place(member, "uniform load start", uniform.fromIn());
      double toIn = end(member, uniform);
      double x = uniform.xLbPerIn();
      double y = uniform.yLbPerIn();
      own(along, member)
          .add(new BeamLoad.Uniform(fromIn, toIn, element.along(uniform.axes(), x, y)));
      own(across, member)
          .add(new BeamLoad.Uniform(fromIn, toIn, element.across(uniform.axes(), x, y)));
    } else if (load instanceof FrameLoad.Point point) {
      int member = frame.member(point.member());
      FrameElement element = frame.elements().get(member);
      double x = point.xLb();
      double y = point.yLb();
      own(along, member).add(new BeamLoad.Point(point.atIn(), element.along(point.axes(), x, y)));
      own(across, member).add(new BeamLoad.Point(point.atIn(), element.across(point.axes(), x, y)));
    }
  }

  private LineLoad own(LineLoad[] loads, int member) {
    if (!loads[member].laden()) {
      loads[member] = new LineLoad(stations.get(member));
    }
    return loads[member];
  }
}
