package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BearingTest {
  @Test
  void pressure_counts_on_the_contact_only() {
    Bearing bearing = Bearing.across(1000, new Seat(3.5, 1.5, 0), Sample.stress(625));
    assertThat(bearing.stressPsi()).isCloseTo(190.48, within(0.005));
    assertThat(bearing.check().ratio()).isCloseTo(190.48 / 625, within(1e-4));
  }

  @Test
  void a_short_seat_away_from_the_end_borrows_strength() {
    assertThat(new Seat(3.5, 1.5, 12).bearingFactor()).isCloseTo(1.25, within(1e-12));
    assertThat(Bearing.across(1000, new Seat(3.5, 1.5, 3), Sample.stress(625)).check().capacity())
        .isCloseTo(781.25, within(1e-9));
    assertThat(new Seat(3.5, 1.5, 2.99).bearingFactor()).isEqualTo(1);
    assertThat(new Seat(3.5, 6, 12).bearingFactor()).isEqualTo(1);
    assertThat(new Seat(3.5, 5.99, 12).bearingFactor()).isGreaterThan(1);
  }

  @Test
  void end_grain_asks_for_a_plate_above_three_quarters() {
    assertThat(Bearing.onEndGrain(6000, 12.25, Sample.stress(1350)).stressPsi())
        .isCloseTo(490, within(0.5));
    assertThat(Bearing.onEndGrain(750, 1, Sample.stress(1000)).needsPlateOnEndGrain()).isFalse();
    assertThat(Bearing.onEndGrain(751, 1, Sample.stress(1000)).needsPlateOnEndGrain()).isTrue();
  }

  @Test
  void strength_at_an_angle_lies_between_along_and_across() {
    assertThat(Hankinson.at(1500, 625, 0)).isCloseTo(1500, within(1e-9));
    assertThat(Hankinson.at(1500, 625, 90)).isCloseTo(625, within(1e-9));
    assertThat(Hankinson.at(1500, 625, 30)).isCloseTo(1111.1, within(0.05));
    AdjustedValues values = Sample.column(1500, 580_000);
    assertThat(Bearing.atAngle(500, 1, values, 30).check().capacity())
        .isCloseTo(1111.1, within(0.05));
  }

  @Test
  void bearing_refuses_no_contact_and_no_angle() {
    assertThatThrownBy(() -> new Seat(0, 1.5, 0))
        .hasMessage("seat breadth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Seat(3.5, 0, 0))
        .hasMessage("seat length 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Seat(3.5, 1.5, -1))
        .hasMessage("distance of the seat to the end -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> Bearing.onEndGrain(-1, 1, Sample.stress(1000)))
        .hasMessage("bearing force -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> Bearing.onEndGrain(1, 0, Sample.stress(1000)))
        .hasMessage("contact area 0.0 in² must be above zero and finite");
    assertThatThrownBy(() -> Hankinson.at(1500, 625, 91))
        .hasMessage("angle to the grain 91.0 degrees must be from 0.0 to 90.0");
    assertThatThrownBy(() -> Hankinson.at(0, 625, 9))
        .hasMessage("strength along the grain 0.0 must be above zero and finite");
    assertThatThrownBy(() -> Hankinson.at(1, 0, 9))
        .hasMessage("strength across the grain 0.0 must be above zero and finite");
  }
}
