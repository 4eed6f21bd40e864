package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class EmbeddedPostTest {
  private static final EmbeddedPost POST = new EmbeddedPost(new LateralLoad(150, 60), 48);

  @Test
  void bending_goes_on_growing_below_the_ground() {
    assertThat(POST.momentInLb(0)).isEqualTo(9000);
    assertThat(POST.mostBentAtIn()).isCloseTo(11.1, within(0.05));
    assertThat(POST.greatestMomentInLb()).isCloseTo(10071, within(0.5));
    assertThat(POST.momentInLb(10)).isLessThan(POST.greatestMomentInLb());
    assertThat(POST.momentInLb(12.2)).isLessThan(POST.greatestMomentInLb());
  }

  @Test
  void the_shear_in_the_ground_is_more_than_the_push() {
    assertThat(POST.shearLb(0)).isEqualTo(150);
    assertThat(POST.turnsAtIn()).isCloseTo(33.4, within(0.05));
    assertThat(POST.shearLb(33.4)).isCloseTo(-431, within(0.5));
    assertThat(POST.greatestShearLb()).isCloseTo(431, within(0.5));
  }

  @Test
  void a_push_at_the_ground_itself_shears_most_there() {
    EmbeddedPost stub = new EmbeddedPost(new LateralLoad(200, 0), 36);
    assertThat(stub.greatestShearLb()).isEqualTo(200);
    assertThat(stub.turnsAtIn()).isCloseTo(27, within(1e-12));
  }

  @Test
  void a_post_that_nothing_pushes_is_not_bent() {
    EmbeddedPost still = new EmbeddedPost(new LateralLoad(0, 60), 48);
    assertThat(still.greatestMomentInLb()).isZero();
    assertThat(still.greatestShearLb()).isZero();
  }

  @Property
  void the_foot_is_free_of_shear_and_bending(
      @ForAll @DoubleRange(min = 1, max = 2000) double forceLb,
      @ForAll @DoubleRange(min = 0, max = 200) double heightIn,
      @ForAll @DoubleRange(min = 10, max = 120) double depthIn) {
    EmbeddedPost post = new EmbeddedPost(new LateralLoad(forceLb, heightIn), depthIn);
    double size = forceLb * (heightIn + depthIn) * 1e-9;
    assertThat(post.momentInLb(depthIn)).isCloseTo(0, within(size));
    assertThat(post.shearLb(depthIn)).isCloseTo(0, within(size));
    assertThat(post.greatestMomentInLb()).isGreaterThan(forceLb * heightIn);
    assertThat(post.greatestShearLb()).isGreaterThanOrEqualTo(forceLb);
    assertThat(post.mostBentAtIn()).isBetween(0.0, post.turnsAtIn());
    assertThat(post.shearLb(post.mostBentAtIn())).isCloseTo(0, within(forceLb * 1e-12));
  }

  @Test
  void it_refuses_depths_that_cannot_be() {
    assertThatThrownBy(() -> new EmbeddedPost(new LateralLoad(150, 60), 0))
        .hasMessage("embedment 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> POST.shearLb(48.5))
        .hasMessage("depth below the ground 48.5 in must be from 0.0 to 48.0");
    assertThatThrownBy(() -> POST.momentInLb(-1))
        .hasMessage("depth below the ground -1.0 in must be from 0.0 to 48.0");
  }
}
