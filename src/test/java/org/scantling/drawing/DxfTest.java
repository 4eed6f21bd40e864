package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.UnitSystem;
import org.scantling.shop.Piece;
import org.scantling.shop.SetOut;

/** The files for programs that draw, read back: everything stands where the lists have it. */
class DxfTest {
  private static final double HAIR = 1e-5;

  static Stream<String> jobs() {
    return Job.all().stream();
  }

  private static double perInch(UnitSystem units) {
    return units == UnitSystem.METRIC ? 25.4 : 1;
  }

  private static List<DxfFile.Entity> on(DxfFile file, String kind, String layer) {
    return file.entities().stream()
        .filter(each -> each.kind().equals(kind) && each.layer().equals(layer))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_file_is_of_release_12_and_spans_what_its_head_says(String job) {
    for (UnitSystem units : UnitSystem.values()) {
      Map<String, String> models = Job.of(job).laidOut(units).models();
      assertThat(models).containsOnlyKeys("set-out.dxf", "side.dxf", "end.dxf");
      models.forEach(
          (name, text) -> {
            DxfFile file = DxfFile.read(text);
            assertThat(file.header()).containsEntry("$ACADVER", "AC1009");
            assertThat(text)
                .startsWith(
                    units == UnitSystem.METRIC
                        ? "999\r\n1 unit is 1 millimeter;"
                        : "999\r\n1 unit is 1 inch;");
            double[] least = numbers(file.header().get("$EXTMIN"));
            double[] most = numbers(file.header().get("$EXTMAX"));
            for (DxfFile.Entity each : file.entities()) {
              for (double[] vertex : each.vertices()) {
                assertThat(vertex[0]).isBetween(least[0] - HAIR, most[0] + HAIR);
                assertThat(vertex[1]).isBetween(least[1] - HAIR, most[1] + HAIR);
              }
            }
          });
    }
  }

  private static double[] numbers(String text) {
    return Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_stake_stands_where_it_is_set_out(String job) {
    for (UnitSystem units : UnitSystem.values()) {
      DxfFile plan = DxfFile.read(Job.of(job).laidOut(units).models().get("set-out.dxf"));
      SetOut setOut = Job.of(job).lists().setOut();
      List<DxfFile.Entity> holes =
          plan.entities().stream().filter(each -> each.kind().equals("CIRCLE")).toList();
      for (SetOut.PostMark post : setOut.posts()) {
        assertThat(holes)
            .as(post.name())
            .anyMatch(
                each ->
                    Math.abs(each.number(10) - post.alongIn() * perInch(units)) < HAIR
                        && Math.abs(each.number(20) - post.acrossIn() * perInch(units)) < HAIR
                        && Math.abs(2 * each.number(40) - setOut.ground().holeIn() * perInch(units))
                            < HAIR);
        assertThat(plan.entities())
            .anyMatch(each -> each.kind().equals("TEXT") && each.text(1).equals(post.name()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_post_of_the_first_row_is_as_long_and_as_thick_as_it_is_cut(String job) {
    for (UnitSystem units : UnitSystem.values()) {
      DxfFile side = DxfFile.read(Job.of(job).laidOut(units).models().get("side.dxf"));
      List<DxfFile.Entity> drawn =
          on(side, "POLYLINE", "POST").stream()
              .sorted(Comparator.comparingDouble(each -> each.least(0)))
              .toList();
      List<SetOut.PostMark> posts = Job.of(job).lists().setOut().posts();
      List<SetOut.PostMark> row = posts.subList(0, posts.size() / 2);
      assertThat(drawn).hasSameSizeAs(row);
      for (int i = 0; i < row.size(); i++) {
        DxfFile.Entity post = drawn.get(i);
        Piece piece = piece(job, row.get(i).mark());
        assertThat(post.closed()).isTrue();
        // Stakes are marked by the sixteenth, posts stand where they are worked out.
        assertThat((post.least(0) + post.most(0)) / 2)
            .isCloseTo(row.get(i).alongIn() * perInch(units), within(perInch(units) / 32));
        assertThat(post.most(0) - post.least(0))
            .isCloseTo(piece.shape().breadthIn() * perInch(units), within(HAIR));
        // The list rounds to the tape: half a sixteenth, or half a millimeter.
        assertThat(post.most(1) - post.least(1))
            .isCloseTo(piece.shape().lengthIn() * perInch(units), within(perInch(units) / 16));
      }
    }
  }

  private static Piece piece(String job, String mark) {
    return Job.of(job).lists().pieces().all().stream()
        .filter(each -> each.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void pieces_lie_on_layers_of_their_own_and_figures_on_another(String job) {
    Job drawn = Job.of(job);
    DxfFile end = DxfFile.read(drawn.laidOut(UnitSystem.IMPERIAL).models().get("end.dxf"));

    assertThat(end.layers())
        .containsAll(
            drawn.lists().pieces().all().stream()
                .map(each -> each.shape().role().toUpperCase(Locale.ROOT))
                .toList());
    assertThat(on(end, "POLYLINE", "CROSSBEAM")).isNotEmpty();
    assertThat(on(end, "POLYLINE", "HEADER")).isNotEmpty();
    assertThat(on(end, "TEXT", "DIMENSIONS").stream().map(each -> each.text(1)))
        .containsAll(
            drawn.picture("end.svg", UnitSystem.IMPERIAL).dimensions().stream()
                .map(Picture.Dimension::words)
                .toList());
  }

  @Test
  void a_sign_that_is_no_plain_one_is_written_by_its_number() {
    Job job = Job.of("same-place");

    job.laidOut(UnitSystem.IMPERIAL)
        .models()
        .values()
        .forEach(text -> assertThat(text.codePoints().allMatch(sign -> sign < 127)).isTrue());
  }

  @Test
  void the_reader_finds_what_is_wrong() {
    String good = Job.of("same-place").laidOut(UnitSystem.IMPERIAL).models().get("end.dxf");

    for (String[] fault :
        new String[][] {
          {"SEQEND", "SEQ"},
          {"  8\r\nPOST\r\n", "  8\r\nPOSTS\r\n"},
          {"  0\r\nEOF\r\n", ""},
          {"  0\r\nCIRCLE", "  0\r\nELLIPSE"},
          {"LINE\r\n", "LWPOLYLINE\r\n"},
        }) {
      if (good.contains(fault[0])) {
        String bad = good.replace(fault[0], fault[1]);
        assertThatThrownBy(() -> DxfFile.read(bad))
            .as(fault[0])
            .isInstanceOfAny(AssertionError.class, IndexOutOfBoundsException.class);
      }
    }
  }
}
