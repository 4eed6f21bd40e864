package org.scantling.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.cli.Run;

/** Files that once ended the program, each refused now where it is wrong, or answered. */
class KnownFaultsTest {
  private static final Path CASES = Path.of("src/test/resources/faults");

  @TempDir private Path folder;

  private static Run propose(String site, String... more) {
    List<String> args = new ArrayList<>(List.of("propose", CASES.resolve(site).toString()));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  private static String said(Run run) {
    return run.err().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "header-notch-as-deep-as-the-header|headers.notch: 3 1/2\" must be less than 3 1/2\", as a 4x4 is deep.",
        "crossbeam-notch-as-deep-as-the-crossbeam|crossbeams.notch: 3 1/2\" must be less than 3 1/2\", as a 2x4 is"
            + " deep.",
        "rail-above-the-posts|side-panels.rail-height: 9'-11 1/16\" must be less than 6'-10\", the height of the posts.",
        "rail-at-the-top|side-panels.rail-height: 6'-11\" must be less than 6'-10\", the height of the posts.",
      })
  void a_base_that_cannot_be_built_is_refused_at_its_line(String name, String complaint) {
    Run run = propose(name + ".yaml").endedWith(2);

    assertThat(run.out()).isEmpty();
    assertThat(said(run)).containsPattern("base/" + name + ".yaml:\\d+: ").contains(complaint);
  }

  /** A base's notch tried in the smaller header of the proposal left less than no wood. */
  @Test
  void what_moved_a_choice_is_found_where_the_base_seats_deeper_than_the_new_header_is_deep() {
    propose("seats-deeper-than-the-new-header.yaml", "--list", "climbers").endedWith(0);
  }

  @ParameterizedTest
  @CsvSource({"headers,4x4,notch,3.2", "headers,4x4,notch,3.4", "crossbeams,2x4,notch,3.4"})
  void a_seat_deeper_than_its_rule_is_cut_less_deep(
      String group, String size, String key, double amountIn) throws IOException {
    String base = Files.readString(CASES.resolve("base/arbour.yaml"));
    String deeper =
        group.equals("headers")
            ? base.replace(
                "overhang: 12 in, notch: 0.5 in", "overhang: 12 in, notch: " + amountIn + " in")
            : base.replace("  notch: 0.5 in\n", "  notch: " + amountIn + " in\n");
    assertThat(deeper).isNotEqualTo(base);
    Files.createDirectory(folder.resolve("base"));
    Files.writeString(folder.resolve("base/arbour.yaml"), deeper);
    Files.copy(CASES.resolve("site.yaml"), folder.resolve("site.yaml"));

    String json =
        Run.of("propose", folder.resolve("site.yaml").toString(), "--format", "json")
            .endedWith(0)
            .out();

    // A sixth of the depth, IRC R502.8.1; never the base's own.
    assertThat(json)
        .contains(group + ".notch.depth-share")
        .doesNotContain("\"depthIn\": " + amountIn);
  }

  @ParameterizedTest
  @CsvSource({"5.157,45x145", "4.9,45x195", "7.2,4x8"})
  void a_seat_from_another_yard_lands_on_a_smaller_timber(double notchIn, String size)
      throws IOException {
    String base = Files.readString(CASES.resolve("base/arbour.yaml"));
    Files.createDirectory(folder.resolve("base"));
    Files.writeString(
        folder.resolve("base/arbour.yaml"),
        base.replace(
            "size: 4x4, overhang: 12 in, notch: 0.5 in",
            "size: " + size + ", overhang: 12 in, notch: " + notchIn + " in"));
    Files.copy(CASES.resolve("site.yaml"), folder.resolve("site.yaml"));

    Run run = Run.of("propose", folder.resolve("site.yaml").toString());

    assertThat(run.status()).as(run.err()).isIn(0, 3);
  }

  /**
   * Two braces of 30 in under rows 60.005 in apart: they meet, and the check of their room fails.
   */
  @Test
  void braces_that_all_but_meet_are_checked_as_braces_that_meet() throws IOException {
    String base = Files.readString(Path.of("scenarios/base/kiwi-court.yaml"));
    Files.createDirectory(folder.resolve("base"));
    Path design = folder.resolve("base/arbour.yaml");
    Files.writeString(design, base.replace("row-spacing: 118 in", "row-spacing: 60.005 in"));
    Files.copy(CASES.resolve("site.yaml"), folder.resolve("site.yaml"));
    String site = folder.resolve("site.yaml").toString();

    Run run = Run.of("check", site, "--design", design.toString()).endedWith(0);

    assertThat(run.out()).startsWith("Nothing holds the posts upright");
  }

  @Test
  void a_rail_just_under_the_tops_comes_down_so_that_pickets_have_a_length() throws IOException {
    String base = Files.readString(CASES.resolve("base/arbour.yaml"));
    Files.createDirectory(folder.resolve("base"));
    Files.writeString(
        folder.resolve("base/arbour.yaml"),
        base.replace("rail-height: 24 in", "rail-height: 81 in"));
    Files.copy(CASES.resolve("site.yaml"), folder.resolve("site.yaml"));
    String site = folder.resolve("site.yaml").toString();

    String cuts = Run.of("propose", site, "--list", "cut-list").endedWith(0).out();

    assertThat(cuts).doesNotContain("-1'", "-2'", "-3'", " -");
    Run.of("propose", site, "--list", "buying").endedWith(0);
    assertThat(Run.of("why", site, "rail.height").endedWith(0).out()).contains("under the header");
  }

  @Test
  void a_yard_that_is_not_utf_8_is_told_where() {
    Run run =
        propose("site.yaml", "--yard", CASES + "/yard-in-latin-1.csv", "--list", "buying")
            .endedWith(2);

    assertThat(said(run))
        .contains(
            "yard-in-latin-1.csv:3: found 'not UTF-8 text from character 6 of this line on',"
                + " accepted is comma-separated text in UTF-8");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4x4,\"12 ft,9.99",
        "4x4,\"12 ft\" long,9.99",
        "\"4x4,12 ft",
      })
  void a_yard_broken_in_a_quote_is_told_in_a_sentence(String line) throws IOException {
    Path yard = folder.resolve("yard.csv");
    Files.writeString(yard, "size,length,price\n" + line + "\n");

    Run run = propose("site.yaml", "--yard", yard.toString(), "--list", "buying").endedWith(2);

    assertThat(said(run))
        .contains("yard.csv:", "accepted is")
        .doesNotContain("Exception", "[Source");
  }

  @Test
  void signs_that_drive_a_terminal_are_written_out() {
    Run run =
        propose("site.yaml", "--yard", CASES + "/yard-with-escapes.csv", "--list", "buying")
            .endedWith(2);

    assertThat(run.err()).contains("\\u001b]0;other title\\u0007\\u001b[31m4x4");
    assertThat(run.err()).doesNotContain("\u001b", "\u0007");
  }

  @ParameterizedTest
  @CsvSource({"202e", "2066", "200f", "001b", "0085", "feff"})
  void a_key_that_turns_the_line_around_is_written_out(String code) throws IOException {
    String sign = Character.toString(Integer.parseInt(code, 16));
    Path site = folder.resolve("site.yaml");
    Files.writeString(site, "{\"ti" + sign + "tle\": \"x\"}", StandardCharsets.UTF_8);

    Run run = Run.of("propose", site.toString()).endedWith(2);

    assertThat(run.err()).doesNotContain(sign);
  }

  @Test
  void a_long_message_is_cut() throws IOException {
    Path site = folder.resolve("site.yaml");
    StringBuilder text = new StringBuilder("title: x\n");
    for (int i = 0; i < 3000; i++) {
      text.append("key")
          .append("y".repeat(100))
          .append(i)
          .append(": ")
          .append("z".repeat(80))
          .append('\n');
    }
    Files.writeString(site, text);

    assertThat(Run.of("propose", site.toString()).endedWith(2).err()).hasSizeLessThan(12_000);
  }

  @Test
  void a_picture_sign_at_the_end_of_a_buffer_is_read() {
    propose("picture-sign-at-the-end-of-a-buffer.yaml").endedWith(0);
  }

  @Test
  void a_place_counts_characters_as_people_see_them() throws IOException {
    Path site = folder.resolve("site.yaml");
    byte[] line = "title: \uD83D\uDC69\u200D\uD83C\uDF3Ee\u0301 ".getBytes(StandardCharsets.UTF_8);
    byte[] broken = java.util.Arrays.copyOf(line, line.length + 1);
    broken[line.length] = (byte) 0xff;
    Files.write(site, broken);

    // A farmer, which is three code points, and an accented letter of two, count one each.
    assertThat(said(Run.of("propose", site.toString()).endedWith(2)))
        .contains("not UTF-8 text from character 11 of this line on");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "joints.csv|id,fastener|crossbeam-toenail,nail.common.60d|fastener: found 'nail.common.60d'",
        "joints.csv|id,fastener|crossbeam-toenail,bolt.1-2.8|a nail of fasteners.csv",
        "joints.csv|id,thread_in|crossbeam-screws,9|a thread that with its tip is no longer than the 4 in",
        "joints.csv|id,style|header-paired-four,on-top|way: found 'bolted', accepted is one of bolted (style paired)",
        "joints.csv|id,usual|crossbeam-toenail,no|accepted is yes in one row of joint.crossbeam",
        "joints.csv|id,count|crossbeam-toenail,0|a whole number from 1 to 24",
        "joints.csv|id,count|crossbeam-toenail,1.5|a whole number from 1 to 24",
        "joints.csv|id,rated_lift_lb,rated_side_lb|crossbeam-angles,0,0|rated_lift_lb: found '0'",
        "sizes.csv|id,stock_family|4x4,4x4-long|stock_family: found '4x4-long'",
        "sizes.csv|id,market|2x4,metric|a family that stock-lengths.csv has in that market",
        "sizes.csv|id,roles|4x8,post|no post, for a post is square",
        "sizes.csv|id,rank|4x8,1.5|rank: found '1.5', accepted is a whole number",
        "sizes.csv|id,thickness_in|4x4,0|thickness_in: found '0'",
        "stock-lengths.csv|id,stock_family|north-america.8x,9x|sizes.csv",
        "stock-lengths.csv|id,lengths_in|north-america.8x,1e9|lengths_in: found '1e9'",
        "packs.csv|id,count|nail.common.16d,1/3|a whole number from 1",
        "packs.csv|id,count|nail.common.16d,0|a whole number from 1",
        "packs.csv|id,count,words|nail.of-ours,5,box|a fastener of fasteners.csv",
        "fasteners.csv|id,diameter_in|nail.common.16d,0|diameter_in: found '0'",
        "fasteners.csv|id,diameter_in|nail.box.10d,0.13|a fastener that a row of joints.csv names",
        "wind.csv|id,from_ratio|wind.lattice.flat.sparse,10|from_ratio: found '10.0', accepted is 0.0",
        "wind.csv|id,to_ratio|wind.lattice.flat.middle,0.2|to_ratio: found '0.2', accepted is 0.3",
        "wind.csv|id,value|wind.lattice.solid-from,0.9|value: found '0.9', accepted is 0.7",
        "wind.csv|id,value|wind.lattice.solid-from,0.09|value: found '0.09', accepted is 0.7",
        "defaults.csv|id,word|grade,No2|one of Select-Structural, No.1, No.2, No.3",
        "defaults.csv|id,word|species,oak|one of southern-pine",
        "defaults.csv|id,word|exposure,E|one of B, C, D",
        "defaults.csv|id,word|soil,peat|one of bedrock",
        "defaults.csv|id,word|market,europe|one of north-america, metric",
        "defaults.csv|id,word|picket.metric,2x4|one of 45x95",
        "defaults.csv|id,word|picket.screw,nail.common.8d|one of screw",
        "defaults.csv|id,word|incised.redwood,perhaps|one of yes, no",
        "defaults.csv|id,word|isolated-posts,NaN|one of yes, no",
        "defaults.csv|id,word|brace.temporary.metric,2x4|one of 45x95",
        "defaults.csv|id,word|brace.temporary-screw,nail.common.8d|one of screw",
        "defaults.csv|id,word|grades-upward,No.2;No.1|each of",
        "defaults.csv|id,word|blocking.joint,crossbeam-glue|one of crossbeam-toenail, crossbeam-screws",
        "adjustment-factors.csv|id,property|flat-use.2-3.8-8,tension|property: found 'tension', accepted is bending",
        "adjustment-factors.csv|id,nominal_width_from_in,nominal_width_to_in|flat-use.2-3.8-8,9,9|a row whose thickness and width hold",
        "adjustment-factors.csv|id,value|bolt-geometry.rows.perpendicular.long.full,1.15|at least the 5.0 of bolt-geometry.rows.perpendicular.long.least",
        "adjustment-factors.csv|id,value|penetration.nail.least,12|at most the 10.0 of penetration.nail.full",
        "design-values.csv|id,elasticity_psi|southern-pine.no-2.dimension.2-4,130000|no more than elasticity_psi",
        "design-values.csv|id,species|southern-pine.no-2.dimension.2-4,oak|what something asks for",
        "design-values.csv|id,bending_psi|southern-pine.no-2.dimension.2-4,1e12|from 50 to 5000",
        "exposure.csv|id,gradient_height_ft|B,5|gradient_height_ft: found '5'",
        "users.csv|id,clear_width_in|two-abreast,1e12|clear_width_in: found '1e12'",
        "vines.csv|id,wet_design_psf|wisteria,30|from wet_low_psf to wet_high_psf",
        "thumb.csv|id,value|bay.longest,-3|a twentieth of 144",
        "thumb.csv|id,value|notch.interior-depth-share,5|a twentieth of 1/6",
        "thumb.csv|id,value|joint.bolts-per-crossing,7|an id that this table has",
        "thumb.csv|id,value|post.breadth-woody-vine,3.5|an id that this table has",
        "shop.csv|id,value|picket.screws,1.5|a whole number, such as 2",
        "thumb.csv|id,value|limit.bays,1|an id that this table has",
        "thumb.csv|id,value|footing.pressure-depth-most,1|a twentieth of 144",
        "frost-places.csv|id,frost_depth_in|calgary-ab,60|none of this table is read yet",
        "steps.csv|id,text|services,Wait {weeks} weeks.|text: found 'Wait {weeks} weeks.'",
        "steps.csv|id,occasion|services,at-dawn|what something asks for",
        "steps.csv|id,occasion|braces,header=light|an occasion on which brace-hole is known, such as braces",
        "adjustment-factors.csv|id,value|column.shape.sawn,1.05|from 0.1 to 1",
        "cautions.csv|id,occasion|call-before-digging,at-dawn|what something asks for",
      })
  void a_row_of_a_house_that_cannot_be_is_refused_where_it_stands(
      String table, String heading, String row, String complaint) throws IOException {
    Path house = Files.createDirectory(folder.resolve("house"));
    Files.writeString(house.resolve(table), heading + "\n" + row + "\n");

    Run run =
        propose("site.yaml", "--house-rules", house.toString(), "--list", "buying").endedWith(2);

    assertThat(run.out()).isEmpty();
    assertThat(said(run)).startsWith(table + ":2: ").contains(complaint);
  }

  /**
   * No check stops a header that is longer than what is sold, so no larger size is tried for it.
   */
  @Test
  void headers_that_no_length_sold_makes_are_a_case_for_an_engineer() throws IOException {
    Path house = Files.createDirectory(folder.resolve("house"));
    Files.writeString(house.resolve("stock-lengths.csv"), "id,lengths_in\nmetric.145,12;24\n");

    Path site = folder.resolve("court.yaml");
    Files.writeString(
        site,
        """
        title: A walk between two beds
        base: %s
        site:
          climate: { frost-depth: 36 in, ground-snow: 25 psf, wind-speed: 110 mph, exposure: B }
          soil: sandy-gravel
        walkway: { length: 15 ft, users: [ two-abreast ] }
        planting: [ { vine: honeysuckle } ]
        materials: { market: metric }
        """
            .formatted(Path.of("scenarios/base/kiwi-court.yaml").toAbsolutePath()));

    Run run = Run.of("propose", site.toString(), "--house-rules", house.toString()).endedWith(3);

    assertThat(said(run)).isEmpty();
    assertThat(run.out()).contains("longer than the longest the yard sells");
  }

  /** A block longer than the stick that it was to be cut from ended the program. */
  @Test
  void long_blocks_are_cut_from_a_stick_that_holds_them() throws IOException {
    Path house = Files.createDirectory(folder.resolve("house"));
    Files.writeString(house.resolve("shop.csv"), "id,value\nblock.temporary-length,108\n");

    Run run =
        propose("site.yaml", "--house-rules", house.toString(), "--list", "buying").endedWith(0);

    assertThat(run.out()).contains("2x4 x 10'-0\", any");
  }

  @Test
  void a_size_taken_from_every_role_is_told_with_what_needs_it() throws IOException {
    Path house = Files.createDirectory(folder.resolve("house"));
    Files.writeString(house.resolve("sizes.csv"), "id,roles\n4x4,rail\n6x6,rail\n8x8,header\n");

    assertThat(said(propose("site.yaml", "--house-rules", house.toString()).endedWith(2)))
        .contains("sizes.csv:2: roles: found 'no post', accepted is at least one post sold in");
  }
}
