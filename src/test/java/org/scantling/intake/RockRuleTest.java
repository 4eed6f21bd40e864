package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.tables.Tables;

class RockRuleTest {
  private static final SiteReader READER = new SiteReader(Vocabulary.of(Tables.load()));
  private static final Path LEDGE = Path.of("scenarios", "ledge-walk.yaml");

  @Test
  void ground_that_is_rock_from_the_top_down_has_none_below_it() {
    List<Setting> rock = List.of(Setting.parse("site.soil=bedrock"));
    IntakeException refused =
        catchThrowableOfType(IntakeException.class, () -> READER.read(LEDGE, rock));

    assertThat(refused)
        .hasMessage(
            "scenarios/ledge-walk.yaml:7: site.rock-at: 44 in (beside soil: bedrock) must be left"
                + " out where rock begins at the ground, as bedrock says. Maybe soil is what lies"
                + " over the rock? Then say soil: sandy-gravel, sand or clay.");
  }

  @Test
  void other_ground_may_have_rock_below_it() {
    List<Setting> layers = List.of(Setting.parse("site.soil=foliated-rock"));

    assertThat(READER.read(LEDGE, layers).site().ground().rockAtIn()).hasValue(44);
  }
}
