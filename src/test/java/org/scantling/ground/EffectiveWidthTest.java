package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EffectiveWidthTest {
  @Test
  void a_square_post_leans_on_its_diagonal() {
    EffectiveWidth width = EffectiveWidth.squarePost(5.5, 5.5);
    assertThat(width.widthIn()).isCloseTo(7.78, within(0.005));
    assertThat(width.kind()).isEqualTo(EffectiveWidth.Kind.SQUARE_POST);
  }

  @Test
  void an_oblong_post_counts_as_the_square_of_its_narrower_face() {
    assertThat(EffectiveWidth.squarePost(3.5, 5.5))
        .isEqualTo(EffectiveWidth.squarePost(3.5, 3.5))
        .isEqualTo(EffectiveWidth.squarePost(5.5, 3.5));
  }

  @Test
  void round_posts_and_collars_lean_on_their_diameter() {
    assertThat(EffectiveWidth.roundPost(6))
        .isEqualTo(new EffectiveWidth(EffectiveWidth.Kind.ROUND_POST, 6, 6));
    assertThat(EffectiveWidth.concreteCollar(12))
        .isEqualTo(new EffectiveWidth(EffectiveWidth.Kind.CONCRETE_COLLAR, 12, 12));
  }

  @Test
  void it_refuses_a_post_without_width() {
    assertThatThrownBy(() -> EffectiveWidth.squarePost(0, 3.5))
        .hasMessage("post breadth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> EffectiveWidth.concreteCollar(-12))
        .hasMessage("effective width -12.0 in must be above zero and finite");
  }
}
