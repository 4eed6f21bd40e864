package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.design.FreeStretch;
import org.scantling.design.Site;
import org.scantling.tables.Tables;

class StretchRuleTest {
  private static final Vocabulary WORDS = Vocabulary.of(Tables.load());

  private static Site.Walkway walk(String noPost) {
    String site =
        """
        title: Past the gate
        base: base/gate-arbour.yaml
        site:
          climate: { frost-depth: 42 in, ground-snow: 30 psf, wind-speed: 115 mph }
        walkway:
          length: 16 ft
          no-post: %s
        """
            .formatted(noPost);
    return new SiteReader(WORDS)
        .read(new SourceText("site.yaml", 1, site, Example.folder("good")), List.of())
        .site()
        .walkway();
  }

  private static Problem problem(String noPost) {
    IntakeException refused = catchThrowableOfType(IntakeException.class, () -> walk(noPost));
    assertThat(refused.problems()).hasSize(1);
    return refused.problems().get(0);
  }

  @Test
  void stretches_are_read_from_where_to_where() {
    assertThat(walk("[ { from: 3 ft, to: 4 ft 6 in }, { from: 10 ft, to: 16 ft } ]").free())
        .containsExactly(new FreeStretch(36, 54), new FreeStretch(120, 192));
  }

  @Test
  void one_stretch_needs_no_list() {
    assertThat(walk("{ from: 0 in, to: 2 ft }").free()).containsExactly(new FreeStretch(0, 24));
  }

  @Test
  void a_stretch_that_ends_where_it_begins_is_refused_at_its_end() {
    Problem problem = problem("[ { from: 4 ft, to: 4 ft } ]");
    assertThat(problem.field()).isEqualTo("walkway.no-post[0].to");
    assertThat(problem.accepted()).contains("4'-0\"");
  }

  @Test
  void a_stretch_beyond_the_last_post_is_refused_at_its_end() {
    Problem problem = problem("[ { from: 1 ft, to: 2 ft }, { from: 15 ft, to: 17 ft } ]");
    assertThat(problem.field()).isEqualTo("walkway.no-post[1].to");
    assertThat(problem.accepted()).contains("16'-0\"");
  }
}
