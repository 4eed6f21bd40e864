package org.scantling.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.ThumbTrial.Standing;

/** Counting over a grid. */
class AgreementTest {
  private static final List<Grid.Axis> AXES =
      List.of(
          new Grid.Axis("walkway.headroom", List.of("7 ft", "8 ft")),
          new Grid.Axis("site.climate.wind-speed", List.of("95 mph", "115 mph", "140 mph")));

  private static ThumbTrial trial(Standing standing) {
    Source source = new Source(SourceKind.COMMON_PRACTICE, "common practice, no source", false);
    RuleNote note = new RuleNote("posts.size.tall", Phase.POSTS, "post size/tall", source);
    boolean spoke = standing == Standing.SAFER;
    return new ThumbTrial(note, Question.POST_SIZE, standing, spoke, "4x4", "6x6");
  }

  @Test
  void the_grid_has_every_combination_the_mildest_first() {
    assertThat(Grid.sites(AXES))
        .hasSize(6)
        .startsWith(List.of("7 ft", "95 mph"), List.of("7 ft", "115 mph"))
        .endsWith(List.of("8 ft", "140 mph"));
    assertThat(Grid.sites(Grid.axes())).hasSizeGreaterThan(200);
  }

  @Test
  void sites_are_counted_by_how_the_rule_stands() {
    Agreement agreement = new Agreement(AXES);
    agreement.add(List.of("7 ft", "95 mph"), List.of(trial(Standing.SAFER)));
    agreement.add(List.of("7 ft", "115 mph"), List.of(trial(Standing.EQUAL)));
    agreement.add(List.of("7 ft", "140 mph"), List.of(trial(Standing.NOT_ENOUGH)));
    agreement.add(List.of("8 ft", "140 mph"), List.of(trial(Standing.NOT_ENOUGH)));
    agreement.add(List.of("8 ft", "115 mph"), List.of());

    assertThat(agreement.sites()).isEqualTo(5);
    assertThat(agreement.without()).isEqualTo(1);
    assertThat(agreement.rules()).containsExactly("posts.size.tall");
    assertThat(agreement.spoke("posts.size.tall")).isEqualTo(1);
    assertThat(agreement.count("posts.size.tall", Standing.SAFER)).isEqualTo(1);
    assertThat(agreement.count("posts.size.tall", Standing.EQUAL)).isEqualTo(1);
    assertThat(agreement.count("posts.size.tall", Standing.NOT_ENOUGH)).isEqualTo(2);
    assertThat(agreement.firstShort("posts.size.tall").orElseThrow().site())
        .containsExactly("7 ft", "140 mph");
  }

  @Test
  void a_range_ends_where_its_row_says_and_never_is_no_range() {
    ThumbRange some =
        new ThumbRange(
            "posts.size.tall",
            Optional.of(Map.of("walkway.headroom", "8 ft", "site.climate.wind-speed", "115 mph")),
            "height does not tell the wind");
    ThumbRange never = new ThumbRange("posts.size.tall", Optional.empty(), "silent");

    assertThat(some.holds(AXES, List.of("8 ft", "115 mph"))).isTrue();
    assertThat(some.holds(AXES, List.of("7 ft", "140 mph"))).isFalse();
    assertThat(some.ends(AXES)).containsExactly("site.climate.wind-speed");
    assertThat(never.holds(AXES, List.of("7 ft", "95 mph"))).isFalse();
    assertThat(never.ends(AXES)).isEmpty();
  }

  @Test
  void every_range_ends_at_values_of_the_grid_and_says_why() {
    assertThat(ThumbRange.all()).hasSizeGreaterThan(8);
    for (ThumbRange range : ThumbRange.all().values()) {
      assertThat(range.reason()).as(range.rule()).isNotBlank();
      range.most().ifPresent(most -> Grid.axes().forEach(axis -> ends(range, most, axis)));
    }
  }

  private static void ends(ThumbRange range, Map<String, String> most, Grid.Axis axis) {
    assertThat(axis.values()).as(range.rule()).contains(most.get(axis.path()));
  }

  @Test
  void of_ten_one_is_at_least_one_and_ten_is_all() {
    Agreement agreement = new Agreement(AXES);
    for (int i = 0; i < 20; i++) {
      Standing standing = i == 0 ? Standing.NOT_ENOUGH : Standing.EQUAL;
      agreement.add(List.of("7 ft", "95 mph"), List.of(trial(standing)));
      Standing other = i == 0 ? Standing.EQUAL : Standing.NOT_ENOUGH;
      agreement.add(List.of("7 ft", "115 mph"), List.of(trial(other)));
      agreement.add(List.of("7 ft", "140 mph"), List.of(trial(Standing.NOT_ENOUGH)));
    }
    assertThat(tenths(agreement, "95 mph")).isEqualTo(1);
    assertThat(tenths(agreement, "115 mph")).isEqualTo(9);
    assertThat(tenths(agreement, "140 mph")).isEqualTo(10);
    assertThat(agreement.tenths("posts.size.tall", 0, "8 ft", Standing.EQUAL)).isEmpty();
  }

  private static long tenths(Agreement agreement, String wind) {
    return agreement.tenths("posts.size.tall", 1, wind, Standing.NOT_ENOUGH).orElseThrow();
  }
}
