package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.print.Block.Grid;
import org.scantling.print.Block.Item;
import org.scantling.print.Block.Outline;
import org.scantling.print.Block.Step;
import org.scantling.quantity.UnitSystem;

class PageTest {
  private static final PrintOptions NARROW = new PrintOptions(UnitSystem.IMPERIAL, false, 40);

  private final Page page =
      new Page()
          .title("Walk")
          .paragraph("One.")
          .heading("Parts")
          .items(List.of(new Item("Post", "4x4"), new Item("", "nothing *else*")))
          .add(new Outline(List.of(new Step(0, "a"), new Step(1, "b"))));

  @Test
  void text_sets_blocks_apart_but_keeps_a_heading_with_what_follows() {
    assertThat(TextPage.print(page, NARROW))
        .isEqualTo(
            """
            Walk
            ====

            One.

            Parts
            -----
            - Post: 4x4
            - nothing *else*

            a
              b
            """);
  }

  @Test
  void markdown_keeps_its_own_signs_from_being_read_as_marks() {
    assertThat(MarkdownPage.print(page))
        .isEqualTo(
            """
            # Walk

            One.

            ## Parts

            - **Post:** 4x4
            - nothing \\*else\\*

            - a
              - b
            """);
  }

  @Test
  void a_line_never_breaks_inside_a_fraction_or_before_a_unit() {
    assertThat(Wrap.lines("the post is 5 1/2\" broad", "", "", 14))
        .containsExactly("the post is", "5 1/2\" broad");
    assertThat(Wrap.lines("it asks for 40 psf of it", "- ", "  ", 16))
        .containsExactly("- it asks for", "  40 psf of it");
  }

  @Test
  void feet_and_inches_stay_together_whatever_follows() {
    assertThat(Wrap.lines("they stand 7 ft 1 in tall", "", "", 18))
        .containsExactly("they stand", "7 ft 1 in tall");
  }

  @Test
  void a_word_longer_than_the_line_stands_alone() {
    assertThat(Wrap.lines("a averylongword b", "", "", 5))
        .containsExactly("a", "averylongword", "b");
  }

  @Test
  void a_table_wraps_its_widest_column() {
    List<String> lines =
        GridText.lines(List.of(List.of("a", "b"), List.of("x", "one two three four")), 12);
    assertThat(lines).containsExactly("a  b", "x  one two", "   three", "   four");
  }

  @Test
  void an_empty_list_leaves_no_trace() {
    assertThat(new Page().items(List.of()).blocks()).isEmpty();
    assertThat(new Page().add(new Grid(List.of(List.of("a")))).blocks()).hasSize(1);
  }

  @Test
  void a_page_too_narrow_to_read_is_refused() {
    assertThatThrownBy(() -> new PrintOptions(UnitSystem.IMPERIAL, false, 39))
        .hasMessage("width 39 must be 40 or more");
  }

  @Test
  void a_number_that_is_none_is_refused() {
    assertThatThrownBy(() -> JsonText.rounded(Double.NaN)).hasMessage("number NaN must be finite");
  }

  @Test
  void lists_read_as_sentences() {
    assertThat(Sentence.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    assertThat(Sentence.list(List.of("a"))).isEqualTo("a");
    assertThat(Sentence.phrases(List.of("a, b", "c"))).isEqualTo("a, b; and c");
    assertThat(Sentence.phrases(List.of("a", "b"))).isEqualTo("a and b");
    assertThat(Sentence.phrases(List.of("a", "b", "c"))).isEqualTo("a; b; and c");
  }
}
