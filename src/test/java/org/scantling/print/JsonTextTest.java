package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.scantling.quantity.Check;
import tools.jackson.databind.node.ObjectNode;

/** A number that means nothing is not left to stand as if it meant something. */
class JsonTextTest {
  private static ObjectNode ratio(double ratio) {
    ObjectNode node = JsonText.object();
    JsonText.ratio(node, ratio);
    return node;
  }

  @Test
  void a_ratio_that_has_lost_its_meaning_says_so() {
    assertThat(ratio(9.99).has("beyond")).isFalse();
    assertThat(ratio(10).get("beyond").stringValue()).isEqualTo("over-10-times");
    assertThat(ratio(999).get("beyond").stringValue()).isEqualTo("over-10-times");
    assertThat(ratio(Check.LEANS_OVER).get("beyond").stringValue()).isEqualTo("leans-over");
    assertThat(ratio(Check.LEANS_OVER).get("ratio").doubleValue()).isEqualTo(1000);
  }
}
