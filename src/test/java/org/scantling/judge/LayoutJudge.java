package org.scantling.judge;

import java.util.ArrayList;
import java.util.Collections;
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
    same(
        "crossbeams",
        design.count("crossbeam"),
        design.layout("crossbeamCount") + (design.pliesAtPosts() - 1) * (design.bays() + 1));
    if (design.pliesAtPosts() > 1) {
      pairs(post);
    }
    same("posts of the list", design.count("post"), design.layout("postCount"));
    double run = design.layout("lengthIn") + post + 2 * design.layout("headerOverhangIn");
    if (!design.stepped()) {
      headers(design.layout("headerOverhangIn") + post / 2);
    }
    List<Double> places = design.crossbeamsIn();
    double last =
        places.get(places.size() - 1) + design.need("crossbeam").stock().thicknessIn() / 2;
    if (last > design.layout("lengthIn") / 2 + run / 2 + CLOSE_IN) {
      faults.add("the last crossbeam stands past the end of the header");
    }
  }

  /** Two crossbeams side by side at each row of posts stand on them, and braces hold on to them. */
  private void pairs(double postIn) {
    double together = design.pliesAtPosts() * design.need("crossbeam").stock().thicknessIn();
    if (together > postIn + CLOSE_IN) {
      faults.add("two crossbeams, " + together + " broad, hang over a post of " + postIn);
    }
    if (!design.bracket() || design.member("brace").isEmpty()) {
      faults.add("crossbeams are doubled where no braces hold the posts");
    }
    if (design.layout("crossbeamPliesAtPosts") != design.pliesAtPosts()) {
      faults.add("the layout and the decision have other crossbeams at the posts");
    }
  }

  /** Each piece from the middle of a post to that of another, at the ends of the walk its tail. */
  private void headers(double tailIn) {
    List<Double> bays = design.baysIn();
    List<Double> needed = new ArrayList<>();
    int bay = 0;
    for (int piece : design.pieces()) {
      double long_ = bay == 0 ? tailIn : 0;
      for (int i = 0; i < piece; i++) {
        long_ += bays.get(bay++);
      }
      for (int board = 0; board < (design.paired() ? 4 : 2); board++) {
        needed.add(bay == bays.size() ? long_ + tailIn : long_);
      }
    }
    List<Double> listed = new ArrayList<>();
    for (Design.Member line : design.all("header")) {
      listed.addAll(Collections.nCopies(line.count(), line.lengthIn()));
    }
    Collections.sort(needed);
    Collections.sort(listed);
    boolean fits = needed.size() == listed.size();
    for (int i = 0; fits && i < needed.size(); i++) {
      fits = listed.get(i) >= needed.get(i) - CLOSE_IN && listed.get(i) <= needed.get(i) * 1.04;
    }
    if (!fits) {
      faults.add("headers are listed " + listed + " long, and come to " + needed);
    }
  }

  private void heights() {
    double under =
        design.layout("headerTopIn")
            - Math.max(design.need("header").stock().depthIn(), design.need("crossbeam").notchIn());
    double overHigherIn = design.layout("headroomIn") + design.dropIn();
    if (overHigherIn > under + CLOSE_IN
        && overHigherIn
            > design.crossbeamTopIn() - design.need("crossbeam").stock().depthIn() + CLOSE_IN) {
      faults.add("headroom " + design.layout("headroomIn") + " over timber at " + under);
    }
    posts();
    if (design.json().path("footings").path("depthIn").asDouble() < 1) {
      faults.add("no footing");
    }
  }

  /** A level top on two heights of ground: as many longer posts as shorter, by the fall across. */
  private void posts() {
    if (design.stepped() || !design.decided("layout.top-line").contains("level")) {
      return;
    }
    List<Design.Member> posts = design.all("post");
    double longest = posts.stream().mapToDouble(Design.Member::lengthIn).max().orElseThrow();
    double shortest = posts.stream().mapToDouble(Design.Member::lengthIn).min().orElseThrow();
    if (Math.abs(longest - shortest - design.dropIn()) > 1.0 / 8) {
      faults.add("posts are " + shortest + " and " + longest + ", a fall of " + design.dropIn());
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
