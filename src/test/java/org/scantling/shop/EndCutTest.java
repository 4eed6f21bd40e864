package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.quantity.UnitSystem;

/** How ends are told, and where the points of a shaped tail lie. */
class EndCutTest {
  private static final EndWords WORDS = new EndWords(new Said(UnitSystem.IMPERIAL));

  private static Shape ended(EndCut first, EndCut last) {
    Shape.Ends ends = new Shape.Ends("foot", "top");
    return new Shape("post", "4x4", 3.5, 3.5, 96, 0, ends, first, last, List.of(), List.of());
  }

  @Test
  void ends_alike_are_told_once() {
    assertThat(WORDS.both(ended(EndCut.square(), EndCut.square()))).isEqualTo("square");
  }

  @Test
  void ends_that_differ_are_told_by_their_names() {
    EndCut sloping = new EndCut.Sloping(3.434, 0.3125, "the side toward the first post");
    assertThat(WORDS.both(ended(EndCut.square(), sloping)))
        .isEqualTo(
            "foot square; top 3.4° off square, longer by 5/16\" on the side toward the first"
                + " post");
  }

  @Test
  void a_shaped_end_refers_to_its_template() {
    assertThat(WORDS.of(new EndCut.Shaped("slant", List.of()))).isEqualTo("shaped by the template");
  }

  /** The base's tail is drawn on a 2x6: 5 1/2 in deep, a nose of 2 in, back 3 in. */
  @Test
  void on_a_timber_of_the_same_depth_the_tail_is_as_it_was() {
    assertThat(tail("same-place", new BaseDesign.EndCut("slant", 2, 3)))
        .containsExactly(corner(0, 0), corner(0, 2), corner(3, 5.5));
  }

  /** On a 2x8, 7 1/4 / 5 1/2 as deep: a nose of 2.636 and back 3.955, to the nearest sixteenth. */
  @Test
  void on_a_deeper_timber_every_point_goes_with_the_depth() {
    EndCut.Shaped tail = (EndCut.Shaped) cut("step-free", slant(2, 3), "walkway.clear-width=8 ft");
    assertThat(tail.outline())
        .containsExactly(corner(0, 0), corner(0, 2.625), corner(3.9375, 7.25));
  }

  /**
   * A quarter of an ellipse from the nose, 2 in down, to the underside, 3 in back: a sixth of the
   * quarter turn on, it is 3 (1 - cos 15°) = 0.102 back and 2 + 3.5 sin 15° = 2.906 down, at half
   * of it 3 (1 - cos 45°) = 0.879 back and 2 + 3.5 sin 45° = 4.475 down.
   */
  @Test
  void a_curved_tail_begins_upright_and_ends_level() {
    List<EndCut.Corner> outline = tail("same-place", new BaseDesign.EndCut("curve", 2, 3));

    assertThat(outline).hasSize(8).startsWith(corner(0, 0), corner(0, 2), corner(0.125, 2.875));
    assertThat(outline.get(4)).isEqualTo(corner(0.875, 4.5));
    assertThat(outline.get(7)).isEqualTo(corner(3, 5.5));
  }

  @Test
  void a_plumb_end_and_a_nose_as_deep_as_the_timber_are_square() {
    assertThat(cut("same-place", Optional.of(new BaseDesign.EndCut("plumb", 0, 0))))
        .isEqualTo(EndCut.square());
    assertThat(cut("same-place", Optional.of(new BaseDesign.EndCut("slant", 5.5, 3))))
        .isEqualTo(EndCut.square());
    assertThat(cut("same-place", Optional.empty())).isEqualTo(EndCut.square());
  }

  private static EndCut.Corner corner(double backIn, double downIn) {
    return new EndCut.Corner(backIn, downIn);
  }

  private static List<EndCut.Corner> tail(String scenario, BaseDesign.EndCut proven) {
    return ((EndCut.Shaped) cut(scenario, Optional.of(proven))).outline();
  }

  private static Optional<BaseDesign.EndCut> slant(double dropIn, double runIn) {
    return Optional.of(new BaseDesign.EndCut("slant", dropIn, runIn));
  }

  private static EndCut cut(String scenario, Optional<BaseDesign.EndCut> proven, String... wishes) {
    return new TailTemplate(Jobs.ended(scenario, proven, wishes)).cut();
  }
}
