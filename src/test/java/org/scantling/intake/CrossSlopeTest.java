package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.CrossFall;
import org.scantling.tables.Tables;

class CrossSlopeTest {
  private static final Vocabulary WORDS = Vocabulary.of(Tables.load());

  private static CrossFall across(String written) {
    String site =
        """
        title: Along the bank
        base: base/gate-arbour.yaml
        site:
          climate: { frost-depth: 42 in, ground-snow: 30 psf, wind-speed: 115 mph }
          cross-slope: %s
        walkway:
          length: 16 ft
        """
            .formatted(written);
    return new SiteReader(WORDS)
        .read(new SourceText("site.yaml", 1, site, Example.folder("good")), List.of())
        .site()
        .ground()
        .across();
  }

  @ParameterizedTest
  @CsvSource({"4 %,4", "-4 %,-4", "\"1:20\",5", "1/4 in per ft,2.0833", "6 in over 8 ft,6.25"})
  void a_share_is_read_as_along_the_walk(String written, double percent) {
    assertThat(across(written).sharePercent()).isCloseTo(percent, within(1e-3));
    assertThat(across(written).toldIn()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"6 in,6", "-6 in,-6", "150 mm,5.9055", "1 ft 2 in,14"})
  void a_length_alone_is_the_fall_from_row_to_row(String written, double fallIn) {
    assertThat(across(written).toldIn()).isCloseTo(fallIn, within(1e-3));
    assertThat(across(written).sharePercent()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"6", "steep", "80 %", "9 ft", "30 psf"})
  void anything_else_is_refused_with_what_would_be_right(String written) {
    IntakeException refused = catchThrowableOfType(IntakeException.class, () -> across(written));
    assertThat(refused.problems()).hasSize(1);
    assertThat(refused.problems().get(0).field()).isEqualTo("site.cross-slope");
  }

  @Test
  void a_file_that_says_nothing_is_of_level_ground() {
    assertThat(across("level")).isEqualTo(CrossFall.LEVEL);
  }
}
