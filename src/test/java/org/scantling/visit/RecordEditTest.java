package org.scantling.visit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RecordEditTest {
  private static final String ITEM = "{ date: 2026, kind: storm, what: \"it blew\" }";

  @Test
  void the_first_entry_opens_the_record_at_the_end_of_what_is_proven() {
    String text =
        """
        # The gate.
        title: Gate   # by the pond
        proven:
          built: 2011
          climate: { frost-depth: 40 in }   # asked in 2012

        # Its posts.
        posts: { size: 4x4 }
        """;

    assertThat(RecordEdit.with(text, ITEM))
        .hasValue(
            text.replace("# asked in 2012\n", "# asked in 2012\n  record:\n    - " + ITEM + "\n"));
  }

  @Test
  void a_further_entry_follows_the_last_one() {
    String text =
        """
        proven:
          record:
          - { date: 2012, kind: snow, what: deep }   # up to the rail
          - date: 2014
            kind: repair
            what: new foot

          vine: hops
        posts: { size: 4x4 }
        """;

    assertThat(RecordEdit.with(text, ITEM))
        .hasValue(text.replace("new foot\n", "new foot\n  - " + ITEM + "\n"));
  }

  @Test
  void an_entry_goes_between_brackets_where_the_others_do() {
    String text = "proven:\n  record: [ { date: 2012, kind: snow, what: \"[deep] }\" } ]  # so\n";

    assertThat(RecordEdit.with(text, ITEM))
        .hasValue(text.replace("} ]  # so", "}, " + ITEM + " ]  # so"));
  }

  @Test
  void what_is_proven_may_stand_between_braces() {
    String text =
        "title: Gate\n"
            + "proven: { built: 2011,  # a { year\n"
            + "  vine: hops }\n"
            + "posts: { size: 4x4 }\n";

    assertThat(RecordEdit.with(text, ITEM))
        .hasValue(text.replace("hops }", "hops, record: [ " + ITEM + " ] }"));
  }

  @Test
  void a_record_between_braces_is_added_to_where_it_is() {
    String text = "proven: { record: [ { date: 2012, kind: snow, what: deep } ], built: 2011 }\n";

    assertThat(RecordEdit.with(text, ITEM))
        .hasValue(text.replace("deep } ]", "deep }, " + ITEM + " ]"));
  }

  @Test
  void lines_keep_the_ends_that_they_have() {
    String text = "proven:\r\n  built: 2011\r\nposts: { size: 4x4 }\r\n";

    assertThat(RecordEdit.with(text, ITEM))
        .hasValue(
            "proven:\r\n  built: 2011\r\n  record:\r\n    - "
                + ITEM
                + "\r\nposts: { size: 4x4 }\r\n");
  }

  @Test
  void a_drawing_has_no_place_for_it() {
    assertThat(RecordEdit.with("title: Gate\nposts: { size: 4x4 }\n", ITEM)).isEmpty();
  }
}
