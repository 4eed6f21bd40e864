package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.design.TopLine;
import org.scantling.quantity.Length;
import org.scantling.quantity.UnitSystem;
import org.scantling.shop.Piece;
import org.scantling.shop.SetOut;

/** Every figure tells the piece or the place that it names, and the line under it is as long. */
class DimensionsTest {
  /** Half of a sixteenth for the figure, and the same for what was rounded before it. */
  private static final double NEAR_IN = 0.07;

  static Stream<String> jobs() {
    return Job.all().stream();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_figure_is_that_of_the_lists(String job) {
    SoftAssertions all = new SoftAssertions();
    for (UnitSystem units : UnitSystem.values()) {
      for (Picture picture : Job.of(job).pictures(units)) {
        for (Picture.Dimension each : picture.dimensions()) {
          double trueIn =
              each.of().startsWith("detail ")
                  ? new DetailTold(Job.of(job)).inches(each.of())
                  : new Told(Job.of(job)).inches(each.of());
          all.assertThat(figure(each.words()))
              .as(picture.name() + ": " + each.of())
              .isEqualTo(written(trueIn, units));
        }
      }
    }
    all.assertAll();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void the_line_under_a_figure_is_as_long_as_it_says(String job) {
    SoftAssertions all = new SoftAssertions();
    int measured = 0;
    for (Picture picture : Job.of(job).pictures(UnitSystem.IMPERIAL)) {
      boolean broken = picture.says().contains("left out");
      for (Picture.Dimension each : picture.dimensions()) {
        boolean running = each.of().endsWith("running") || each.of().startsWith("crossbeam mark");
        if (!broken && !running) {
          measured++;
          all.assertThat(each.longPx() / picture.pxPerInch())
              .as(picture.name() + ": " + each.of())
              .isCloseTo(Length.parse(figure(each.words())), within(NEAR_IN));
        }
      }
    }
    all.assertAll();
    assertThat(measured).isGreaterThan(15);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void no_figure_is_left_out_for_want_of_room(String job) {
    Job drawn = Job.of(job);
    List<String> setOut = names(drawn, "set-out.svg");
    List<String> end = names(drawn, "end.svg");
    SetOut lists = drawn.lists().setOut();
    boolean broken = drawn.picture("set-out.svg", UnitSystem.IMPERIAL).says().contains("left out");
    int bays = lists.posts().size() / 2 - 1;

    assertThat(setOut).contains("A1 B1", "A1 A2");
    if (!broken) {
      assertThat(setOut.stream().filter(each -> each.endsWith("running"))).hasSize(bays + 1);
      List<Double> different =
          lists.bayDiagonals().stream().map(SetOut.Diagonal::lengthIn).distinct().toList();
      assertThat(setOut.stream().filter(each -> each.endsWith("diagonal")).count())
          .isGreaterThanOrEqualTo(different.size() + (bays > 1 ? 1 : 0));
      lists
          .overallDiagonal()
          .ifPresent(
              each -> assertThat(setOut).contains(each.from() + " " + each.to() + " diagonal"));
    }
    assertThat(end)
        .contains("clear width", "headroom", "over-all height", "hole width", "A1 B1", "B1 dig");
    every_detail_has_its_figures(drawn);
    assertThat(names(drawn, "side.svg")).contains("A1 A2", "A1 dig", "A1 top");
    assertThat(names(drawn, "then-and-now.svg")).contains("base over-all", "base length");
  }

  private static void every_detail_has_its_figures(Job drawn) {
    List<String> seat = names(drawn, "detail-seat.svg");
    String notched = drawn.structure().geometry().crossbeams().notchIn() > 0 ? "recess 0" : "tail";
    assertThat(seat).anyMatch(each -> each.contains(notched));
    assertThat(names(drawn, "detail-header.svg"))
        .anyMatch(each -> each.endsWith("breadth"))
        .anyMatch(
            each ->
                drawn.structure().geometry().headers().paired()
                    ? each.matches("detail H\\d+ bore \\d+ (first|last)")
                    : each.matches("detail H\\d+ (recess \\d+ width|depth)"));
    assertThat(names(drawn, "detail-footing.svg"))
        .contains("detail hole width", "detail A1 dig")
        .anyMatch(each -> each.matches("detail A1 (foot|foot over)"));
    if (drawn.structure().braces().isPresent()) {
      assertThat(names(drawn, "detail-brace-across.svg"))
          .anyMatch(each -> each.endsWith("leg up"))
          .anyMatch(each -> each.endsWith("length running"));
    }
    if (!drawn.lists().pieces().of("rail").isEmpty()) {
      assertThat(names(drawn, "detail-rail.svg"))
          .anyMatch(each -> each.endsWith("width"))
          .anyMatch(each -> each.endsWith("depth"))
          .anyMatch(each -> each.endsWith("across"));
    }
  }

  private static List<String> names(Job job, String picture) {
    return job.picture(picture, UnitSystem.IMPERIAL).dimensions().stream()
        .map(Picture.Dimension::of)
        .toList();
  }

  @Test
  void bays_add_up_to_the_walk_to_the_last_sixteenth() {
    for (String job : List.of("bean-row", "past-the-pipe", "sloping-path", "steep-ramp")) {
      List<Picture.Dimension> side =
          Job.of(job).picture("side.svg", UnitSystem.IMPERIAL).dimensions();
      List<SetOut.PostMark> posts = Job.of(job).lists().setOut().posts();
      int last = posts.size() / 2;
      double sumIn = 0;
      int found = 0;
      for (int post = 1; post < last; post++) {
        String bay = "A" + post + " A" + (post + 1);
        for (Picture.Dimension each : side) {
          if (each.of().equals(bay)) {
            sumIn += Length.parse(figure(each.words()));
            found++;
          }
        }
      }
      assertThat(found).as(job).isEqualTo(last - 1);
      assertThat(sumIn).as(job).isEqualTo(posts.get(last - 1).alongIn());
    }
  }

  /** Without the mark or the word before it. */
  private static String figure(String words) {
    return words.replaceFirst("^(?:[A-Z]\\d+ {2}|[a-z]+ )", "");
  }

  private static String written(double inches, UnitSystem units) {
    if (inches == 0) {
      return "0";
    }
    return units == UnitSystem.METRIC
        ? Length.millimetres(inches).replace(" mm", "")
        : Length.feetAndInches(inches);
  }

  /** What the lists and the structure say of a name. */
  private record Told(Job job) {
    double inches(String of) {
      String[] part = of.split(" ");
      if (part.length == 2 && post(part[0]) && post(part[1])) {
        return Math.hypot(
            mark(part[1]).alongIn() - mark(part[0]).alongIn(),
            mark(part[1]).acrossIn() - mark(part[0]).acrossIn());
      }
      return switch (part[part.length - 1]) {
        case "dig" -> mark(part[0]).digIn();
        case "top" -> topIn(mark(part[0]));
        case "running" -> mark(part[1]).alongIn();
        case "diagonal" -> diagonalIn(part[0], part[1]);
        default ->
            part[0].equals("crossbeam") && part[1].equals("mark")
                ? setOut().running().get(2).atIn().get(Integer.parseInt(part[2]) - 1)
                : named(of, part[0]);
      };
    }

    private double named(String of, String first) {
      Geometry geometry = job.structure().geometry();
      return switch (of) {
        case "clear width" -> setOut().spacers().get(setOut().spacers().size() - 1).lengthIn();
        case "headroom" -> top().headroomIn();
        case "hole width" -> setOut().ground().holeIn();
        case "machine width" -> machineIn();
        case "over-all height" -> highestIn(true) + Math.max(0, top().acrossIn());
        case "base over-all" -> job.base().overallHeightIn();
        case "base length" -> job.base().lengthIn();
        case "crossbeam length" -> geometry.crossbeamLengthIn();
        default ->
            of.endsWith("over-all")
                ? highestIn(false) - top().groundIn(0, geometry.plan().bays())
                : piece(first).shape().lengthIn();
      };
    }

    /** Upper edge of the crossbeam at the first post, or of the last one. */
    private double highestIn(boolean first) {
      double highIn = Double.NaN;
      double bestIn = Double.POSITIVE_INFINITY;
      for (Piece piece : job.lists().pieces().of("crossbeam")) {
        for (var place : piece.places()) {
          double alongIn = place.first().alongIn();
          double offIn = first ? Math.abs(alongIn) : -alongIn;
          if (offIn < bestIn) {
            bestIn = offIn;
            double lean = first ? 1 : top().stretchRatio();
            highIn = place.first().upIn() + piece.shape().depthIn() / 2 / lean;
          }
        }
      }
      return highIn;
    }

    private double machineIn() {
      return job.site().walkway().users().stream()
          .filter(Site.User.Machine.class::isInstance)
          .mapToDouble(user -> ((Site.User.Machine) user).machineWidthIn())
          .max()
          .orElseThrow();
    }

    private SetOut setOut() {
      return job.lists().setOut();
    }

    private TopLine top() {
      return job.structure().top();
    }

    private double topIn(SetOut.PostMark post) {
      return setOut().ground().lineOverDatumIn()
          + post.topOverLineIn()
          + top().slopeRatio() * post.alongIn()
          + (post.acrossIn() > 0 ? top().acrossIn() : 0);
    }

    private double diagonalIn(String from, String to) {
      return setOut().diagonals().stream()
          .filter(each -> each.from().equals(from) && each.to().equals(to))
          .findFirst()
          .orElseThrow()
          .lengthIn();
    }

    private Piece piece(String mark) {
      return job.lists().pieces().all().stream()
          .filter(each -> each.mark().equals(mark))
          .findFirst()
          .orElseThrow();
    }

    private boolean post(String name) {
      return setOut().posts().stream().anyMatch(each -> each.name().equals(name));
    }

    private SetOut.PostMark mark(String name) {
      return setOut().posts().stream()
          .filter(each -> each.name().equals(name))
          .findFirst()
          .orElseThrow();
    }
  }
}
