package org.scantling.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.design.Site;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.property.House;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.tables.DemandRow;
import org.scantling.tables.Tables;

/** A demand changed in memory is the demand changed by {@code --set}. */
class SiteDemandTest {
  private static final Path FILE = Path.of("scenarios", "everything-at-once.yaml");
  private static final Path LANE = Path.of("scenarios", "mower-lane.yaml");
  private static final Tables TABLES = Tables.load();
  private static final SiteReader READER = new SiteReader(Vocabulary.of(TABLES));

  static Stream<DemandRow> rows() {
    // A bay is set by two paths; it has its own test.
    return TABLES.demands().rows().stream().filter(row -> Demand.of(row.id()) != Demand.BAY);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_value_is_set_as_the_command_line_sets_it(DemandRow row) {
    Demand demand = Demand.of(row.id());
    SiteDemand changed = new SiteDemand(demand);
    // A machine can be set otherwise only where one passes.
    Path file = demand == Demand.MACHINE_WIDTH ? LANE : FILE;
    for (Outcome value : values(row, demand)) {
      Site site = READER.read(file).site();
      Setting setting = Setting.parse(changed.setting(site) + "=" + written(value));

      assertThat(changed.with(site, value)).isEqualTo(READER.read(file, List.of(setting)).site());
      assertThat(changed.stated(changed.with(site, value))).contains(value);
    }
  }

  /**
   * Bays of one length would put a post where none may stand, or be told of a walk that has none.
   */
  @Test
  void no_longer_bay_is_sought_where_posts_keep_a_stretch_free() {
    Site site = READER.read(Path.of("scenarios", "over-the-root.yaml")).site();
    DemandRow bay = TABLES.demands().row(Demand.BAY.path());
    Site open = site.with(site.walkway().keepingFree(List.of()));

    assertThat(new DemandScales(TABLES).of(bay, site, House.propose(site))).isEmpty();
    assertThat(new DemandScales(TABLES).of(bay, open, House.propose(open))).isPresent();
  }

  @Test
  void longer_bays_are_as_many_bays_and_a_longer_walk() {
    Site site = READER.read(FILE, List.of(Setting.parse("walkway.bays=3"))).site();
    List<Setting> both =
        List.of(Setting.parse("walkway.bays=3"), Setting.parse("walkway.length=180 in"));

    assertThat(new SiteDemand(Demand.BAY).with(site, new Outcome.Amount(Measure.inches(60))))
        .isEqualTo(READER.read(FILE, both).site());
  }

  @Test
  void ground_that_rises_across_the_walk_goes_on_rising_as_it_is_tried_steeper() {
    SiteDemand share = new SiteDemand(Demand.CROSS_SLOPE);
    SiteDemand step = new SiteDemand(Demand.CROSS_FALL);
    Site rising = READER.read(FILE, List.of(Setting.parse("site.cross-slope=-6 %"))).site();
    Site stepped = READER.read(FILE, List.of(Setting.parse("site.cross-slope=-8 in"))).site();

    assertThat(share.stated(rising)).contains(new Outcome.Amount(new Measure(6, Unit.PERCENT)));
    assertThat(step.stated(rising)).isEmpty();
    assertThat(share.with(rising, new Outcome.Amount(new Measure(9, Unit.PERCENT))))
        .isEqualTo(READER.read(FILE, List.of(Setting.parse("site.cross-slope=-9 %"))).site());
    assertThat(step.stated(stepped)).contains(new Outcome.Amount(Measure.inches(8)));
    assertThat(share.stated(stepped)).isEmpty();
    assertThat(step.with(stepped, new Outcome.Amount(Measure.inches(11))))
        .isEqualTo(READER.read(FILE, List.of(Setting.parse("site.cross-slope=-11 in"))).site());
  }

  @Test
  void a_demand_that_cannot_be_searched_is_named() {
    Site site = READER.read(FILE).site();

    assertThatThrownBy(() -> new SiteDemand(Demand.USERS).stated(site))
        .hasMessage("walkway.users is not a demand along which turning points can be searched");
  }

  /** Of numbers both ends of what is searched, so that no end is refused as a slip of the pen. */
  private static List<Outcome> values(DemandRow row, Demand demand) {
    if (row.scale().isPresent()) {
      DemandRow.Scale scale = row.scale().get();
      assertThat(scale.step().unit()).isEqualTo(demand.unit());
      return List.of(new Outcome.Amount(scale.least()), new Outcome.Amount(scale.most()));
    }
    return switch (demand) {
      case VINE -> List.of(new Outcome.Word("kiwi"));
      case SOIL -> List.of(new Outcome.Word("bedrock"));
      case EXPOSURE -> List.of(new Outcome.Word("D"));
      case SPECIES -> List.of(new Outcome.Word("redwood"));
      case GRADE -> List.of(new Outcome.Word("No.1"));
      case HEADER -> List.of(new Outcome.Word("on-top"));
      case FOOTING -> List.of(new Outcome.Word("concrete"));
      case KEEP -> List.of(new Outcome.Word("cost"));
      case LARGEST_POST -> List.of(new Outcome.Word("6x6"));
      case LARGEST_HEADER -> List.of(new Outcome.Word("4x6"));
      case LARGEST_CROSSBEAM -> List.of(new Outcome.Word("2x8"));
      case BASIS -> List.of(new Outcome.Word("proven"));
      default -> throw new AssertionError(demand + " is a word that this test does not know");
    };
  }

  private static String written(Outcome value) {
    if (value instanceof Outcome.Word word) {
      return word.text();
    }
    Measure measure = ((Outcome.Amount) value).measure();
    if (measure.unit() == Unit.COUNT) {
      return Long.toString(Math.round(measure.amount()));
    }
    return measure.amount() + " " + measure.unit().imperialSymbol();
  }
}
