package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowsApartTest {
  private static final double FAR_IN = 1e-9;

  private static TopLine top(String kind, double slopeRatio, double acrossIn) {
    Geometry geometry =
        new Geometry(
            new Geometry.Plan(96, 80, 3),
            new Geometry.Posts(5.5, 100),
            new Geometry.Headers(true, 1.5, 7.25, 12, 0),
            new Geometry.Crossbeams(4, 1.5, 5.5, 12, 0.5, 1.5));
    return new TopLine(geometry, kind, slopeRatio, acrossIn, 40);
  }

  @ParameterizedTest
  @ValueSource(strings = {WayOfBuilding.FOLLOWS_GROUND, WayOfBuilding.STEPPED})
  void posts_of_the_lower_row_are_longer_by_the_fall_across(String kind) {
    TopLine top = top(kind, 0.05, 8);
    for (int post = 0; post < top.posts(); post++) {
      assertThat(top.postLengthIn(1, post) - top.postLengthIn(0, post))
          .isCloseTo(8, within(FAR_IN));
      assertThat(top.belowGroundIn(0, post)).isCloseTo(40, within(FAR_IN));
      assertThat(top.belowGroundIn(1, post)).isCloseTo(40, within(FAR_IN));
    }
  }

  @Test
  void the_height_that_is_told_is_that_of_the_lower_row_whichever_it_is() {
    for (double acrossIn : new double[] {8, -8}) {
      TopLine top = top(WayOfBuilding.LEVEL, 0, acrossIn);
      int low = acrossIn > 0 ? 1 : 0;
      assertThat(top.lowRow()).isEqualTo(low);
      assertThat(top.topIn(0) - top.groundIn(low, 0)).isCloseTo(100, within(FAR_IN));
      assertThat(top.topIn(0) - top.groundIn(1 - low, 0)).isCloseTo(92, within(FAR_IN));
    }
  }

  @Test
  void headroom_is_lost_along_the_higher_row() {
    double levelIn = top(WayOfBuilding.LEVEL, 0, 0).headroomIn();
    assertThat(top(WayOfBuilding.LEVEL, 0, 8).headroomIn()).isCloseTo(levelIn - 8, within(FAR_IN));
    assertThat(top(WayOfBuilding.LEVEL, 0, -8).headroomIn()).isCloseTo(levelIn - 8, within(FAR_IN));
    assertThat(top(WayOfBuilding.STEPPED, 0.1, 8).headroomIn())
        .isCloseTo(levelIn - 8 - 8, within(FAR_IN));
  }

  @Test
  void a_fall_is_a_share_of_the_distance_between_the_rows_or_told_by_itself() {
    assertThat(CrossFall.ofPercent(-5).fallIn(80)).isCloseTo(-4, within(FAR_IN));
    assertThat(CrossFall.of(6).fallIn(80)).isEqualTo(6);
    assertThat(CrossFall.LEVEL.level()).isTrue();
    assertThat(CrossFall.of(6).level()).isFalse();
  }
}
