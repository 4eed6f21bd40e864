package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class LengthPropertyTest {
  private static final double HALF_SIXTEENTH_IN = 1 / 32.0;
  private static final double HALF_MILLIMETRE_IN = 0.5 / 25.4;
  private static final double LAST_BITS = 1e-9;

  @Property
  void trade_text_reads_back_within_half_a_sixteenth(
      @ForAll @DoubleRange(min = -1000, max = 10_000) double inches) {
    reads_back(inches, Length::feetAndInches, HALF_SIXTEENTH_IN);
    reads_back(inches, Length::inches, HALF_SIXTEENTH_IN);
  }

  @Property
  void metric_text_reads_back_within_half_a_millimetre(
      @ForAll @DoubleRange(min = -1000, max = 10_000) double inches) {
    reads_back(inches, Length::metric, HALF_MILLIMETRE_IN);
  }

  @Property
  void any_text_is_read_or_refused_in_words(@ForAll("scribbles") String text) {
    assertThatCode(
            () -> {
              for (QuantityKind kind : QuantityKind.values()) {
                try {
                  assertThat(kind.parse(text)).isFinite();
                } catch (QuantityException refused) {
                  assertThat(refused).hasMessageContaining("must be " + kind.noun());
                }
              }
            })
        .doesNotThrowAnyException();
  }

  @Provide
  Arbitrary<String> scribbles() {
    return Arbitraries.strings().withChars("0123456789'\"-/. ,+%ftinmcpshkPaFC°").ofMaxLength(14);
  }

  private static void reads_back(double inches, DoubleFunction<String> print, double slack) {
    String text = print.apply(inches);
    double again = Length.parse(text);
    assertThat(again).isEqualTo(inches, within(slack + LAST_BITS));
    assertThat(print.apply(again)).isEqualTo(text);
  }
}
