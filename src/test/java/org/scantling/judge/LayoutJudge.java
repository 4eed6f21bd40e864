package org.scantling.judge;

import java.util.ArrayList;
import java.util.List;

/** Whether the measures of a proposal add up. */
final class LayoutJudge {
  private static final double CLOSE_IN = 0.02;

  private final Design design;
  private final List<String> faults = new ArrayList<>();

  private LayoutJudge(Design design) {
    this.design = design;
  }

  static List<String> faults(Design design) {
    LayoutJudge judge = new LayoutJudge(design);
    judge.plan();
    judge.timbers();
    judge.heights();
    return judge.faults;
  }

  private void plan() {
    double rows = design.layout("rowSpacingIn");
    double bay = design.layout("bayIn");
    double length = design.layout("lengthIn");
    same("length", length, baysIn(bay));
    same("bay diagonal", design.layout("bayDiagonalIn"), Math.hypot(bay, rows));
    same("overall diagonal", design.layout("overallDiagonalIn"), Math.hypot(length, rows));
    same("posts", design.layout("postCount"), 2 * (design.bays() + 1));
    same("footings", design.footing("count"), design.layout("postCount"));
    double post = design.need("post").stock().thicknessIn();
    same("clear width", design.layout("clearWidthIn"), rows - post);
    atLeast("clear width", design.layout("clearWidthIn"), design.criterion("clearWidthIn"));
    atLeast("headroom", design.layout("headroomIn"), design.criterion("headroomIn"));
    same(
        "pieces of a header",
        design.pieces().stream().mapToInt(Integer::intValue).sum(),
        design.bays());
  }

  private double baysIn(double bayIn) {
    double sum = 0;
    for (var each : design.json().path("layout").path("baysIn")) {
      sum += each.asDouble();
    }
    return sum > 0 ? sum : design.bays() * bayIn;
  }

  private void timbers() {
    double post = design.need("post").stock().thicknessIn();
    Stock header = design.need("header").stock();
    double outside = design.paired() ? post + 2 * header.thicknessIn() : header.thicknessIn();
    same(
        "length of a crossbeam",
        design.need("crossbeam").lengthIn(),
        design.layout("rowSpacingIn") + outside + 2 * design.layout("crossbeamOverhangIn"));
    same("crossbeams", design.need("crossbeam").count(), design.layout("crossbeamCount"));
    same("posts of the list", design.need("post").count(), design.layout("postCount"));
    double run = design.layout("lengthIn") + post + 2 * design.layout("headerOverhangIn");
    double long_ = design.need("header").lengthIn();
    if (!design.stepped() && (long_ < run - CLOSE_IN || long_ > run * 1.04)) {
      faults.add("a header is " + long_ + " long over a run of " + run);
    }
    double last =
        (design.layout("crossbeamCount") - 1) * design.layout("crossbeamSpacingIn") / 2
            + design.need("crossbeam").stock().thicknessIn() / 2;
    if (last > run / 2 + CLOSE_IN) {
      faults.add("the last crossbeam stands past the end of the header");
    }
  }

  private void heights() {
    double under =
        design.layout("headerTopIn")
            - Math.max(design.need("header").stock().depthIn(), design.need("crossbeam").notchIn());
    if (design.layout("headroomIn") > under + CLOSE_IN
        && design.layout("headroomIn")
            > design.crossbeamTopIn() - design.need("crossbeam").stock().depthIn() + CLOSE_IN) {
      faults.add("headroom " + design.layout("headroomIn") + " over timber at " + under);
    }
    if (design.json().path("footings").path("depthIn").asDouble() < 1) {
      faults.add("no footing");
    }
  }

  private void same(String what, double printed, double worked) {
    if (Math.abs(printed - worked) > CLOSE_IN) {
      faults.add(what + " is printed " + printed + ", and it comes to " + worked);
    }
  }

  private void atLeast(String what, double proposed, double asked) {
    if (proposed < asked - CLOSE_IN) {
      faults.add(what + " " + proposed + " is less than the " + asked + " that was asked");
    }
  }
}
