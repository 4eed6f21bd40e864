package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class ContinuousBeamPropertyTest {
  /** A beam by its pieces: left overhang, spans, right overhang. */
  record Shape(double left, List<Double> spans, double right) {
    double[] supports() {
      double[] supports = new double[spans.size() + 1];
      supports[0] = left;
      for (int i = 0; i < spans.size(); i++) {
        supports[i + 1] = supports[i] + spans.get(i);
      }
      return supports;
    }

    double length() {
      double[] supports = supports();
      return supports[supports.length - 1] + right;
    }

    ContinuousBeam beam() {
      return ContinuousBeam.of(length(), supports());
    }
  }

  /** Where along the beam, as shares of its length, and how much. */
  record Spot(double from, double share, double amount) {
    BeamLoad on(double length) {
      double start = from * length;
      return share < 0.3
          ? new BeamLoad.Point(start, amount)
          : new BeamLoad.Uniform(start, start + share * (length - start), amount / 100);
    }

    double total(double length) {
      return share < 0.3 ? amount : amount / 100 * share * (1 - from) * length;
    }

    double middle(double length) {
      return share < 0.3 ? from * length : (from + share * (1 - from) / 2) * length;
    }
  }

  @Provide
  Arbitrary<Shape> shapes() {
    Arbitrary<Double> overhang =
        Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(1, 40));
    Arbitrary<List<Double>> spans =
        Arbitraries.doubles().between(20, 200).list().ofMinSize(1).ofMaxSize(8);
    return Combinators.combine(overhang, spans, overhang).as(Shape::new);
  }

  @Provide
  Arbitrary<Spot> spots() {
    return Combinators.combine(
            Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(0, 0.99)),
            Arbitraries.doubles().between(0, 1),
            Arbitraries.doubles().between(0, 1000))
        .as(Spot::new)
        .withoutEdgeCases();
  }

  @Provide
  Arbitrary<List<Spot>> loads() {
    return spots().list().ofMinSize(1).ofMaxSize(5).withoutEdgeCases();
  }

  private static BeamLoad[] on(Shape shape, List<Spot> spots) {
    return spots.stream().map(spot -> spot.on(shape.length())).toArray(BeamLoad[]::new);
  }

  private static BeamLoad mirrored(BeamLoad load, double length) {
    if (load instanceof BeamLoad.Uniform even) {
      return new BeamLoad.Uniform(
          length - even.toIn(), length - even.fromIn(), even.forceLbPerIn());
    }
    BeamLoad.Point point = (BeamLoad.Point) load;
    return new BeamLoad.Point(length - point.atIn(), point.forceLb());
  }

  @Property
  void supports_carry_all_load_without_turning(
      @ForAll("shapes") Shape shape, @ForAll("loads") List<Spot> spots) {
    BeamResult result = shape.beam().solve(on(shape, spots));
    double force = Arrays.stream(result.reactionsLb()).sum();
    double moment = 0;
    double[] supports = shape.supports();
    for (int i = 0; i < supports.length; i++) {
      moment += result.reactionLb(i) * supports[i];
    }
    double size = 1;
    for (Spot spot : spots) {
      double total = spot.total(shape.length());
      force -= total;
      moment -= total * spot.middle(shape.length());
      size += total;
    }
    assertThat(force).isCloseTo(0, within(1e-9 * size));
    assertThat(moment).isCloseTo(0, within(1e-8 * size * shape.length()));
  }

  @Property
  void nothing_moves_at_supports_and_nothing_bends_at_tips(
      @ForAll("shapes") Shape shape, @ForAll("loads") List<Spot> spots) {
    BeamResult result = shape.beam().solve(on(shape, spots));
    double moment = 1 + Math.abs(result.largestMoment().amount());
    double scale = moment * shape.length() * shape.length();
    for (double support : shape.supports()) {
      assertThat(result.deflectionLbIn3(support)).isCloseTo(0, within(1e-9 * scale));
      // The slope is the same on both sides: a kink would show as a difference of chords.
      double step = 1e-3;
      if (support > step && support < shape.length() - step) {
        double before = -result.deflectionLbIn3(support - step) / step;
        double after = result.deflectionLbIn3(support + step) / step;
        assertThat(after - before).isCloseTo(0, within(2 * moment * step + 1e-9 * scale / step));
      }
    }
    assertThat(result.momentInLb(0)).isCloseTo(0, within(1e-9 * moment));
    assertThat(result.momentInLb(shape.length())).isCloseTo(0, within(1e-9 * moment));
  }

  @Property
  void cases_combine_as_if_solved_together(
      @ForAll("shapes") Shape shape,
      @ForAll("loads") List<Spot> some,
      @ForAll("loads") List<Spot> others,
      @ForAll @DoubleRange(min = -2, max = 2) double factor) {
    ContinuousBeam beam = shape.beam();
    List<BeamLoad> first = List.of(on(shape, some));
    List<BeamLoad> second = List.of(on(shape, others));
    BeamResult combined = BeamResult.combine(beam.solve(List.of(first, second)), 1, factor);
    List<BeamLoad> scaled =
        others.stream()
            .map(s -> new Spot(s.from(), s.share(), factor * s.amount()).on(shape.length()))
            .toList();
    List<BeamLoad> all = new ArrayList<>(first);
    all.addAll(scaled);
    BeamResult direct = beam.solve(all.toArray(BeamLoad[]::new));
    double size = 1;
    for (Spot spot : some) {
      size += spot.total(shape.length());
    }
    for (Spot spot : others) {
      size += 2 * spot.total(shape.length());
    }
    double moment = size * shape.length();
    for (int i = 0; i < beam.supportCount(); i++) {
      assertThat(combined.reactionLb(i)).isCloseTo(direct.reactionLb(i), within(1e-9 * size));
    }
    assertThat(combined.mostSagging().amount())
        .isCloseTo(direct.mostSagging().amount(), within(1e-9 * moment));
    assertThat(combined.mostHogging().amount())
        .isCloseTo(direct.mostHogging().amount(), within(1e-9 * moment));
    assertThat(combined.largestSpanDeflection(0).amount())
        .isCloseTo(
            direct.largestSpanDeflection(0).amount(),
            within(1e-9 * moment * shape.length() * shape.length()));
  }

  @Property
  void a_mirrored_beam_answers_in_the_mirror(
      @ForAll("shapes") Shape shape, @ForAll("spots") Spot spot) {
    List<Double> turned = new ArrayList<>(shape.spans());
    Collections.reverse(turned);
    Shape mirror = new Shape(/* left= */ shape.right(), turned, /* right= */ shape.left());
    BeamResult one = shape.beam().solve(spot.on(shape.length()));
    BeamResult other = mirror.beam().solve(mirrored(spot.on(shape.length()), shape.length()));
    double size = 1 + spot.total(shape.length());
    int last = shape.spans().size();
    for (int i = 0; i <= last; i++) {
      assertThat(one.reactionLb(i)).isCloseTo(other.reactionLb(last - i), within(1e-7 * size));
    }
    double at = 0.37 * shape.length();
    assertThat(one.momentInLb(at))
        .isCloseTo(other.momentInLb(shape.length() - at), within(1e-7 * size * shape.length()));
    assertThat(one.largestMoment().amount())
        .isCloseTo(other.largestMoment().amount(), within(1e-7 * size * shape.length()));
  }

  @Property
  void more_of_the_same_load_never_bends_shears_or_sags_less(
      @ForAll("shapes") Shape shape,
      @ForAll("loads") List<Spot> spots,
      @ForAll @DoubleRange(min = 1, max = 5) double factor) {
    ContinuousBeam beam = shape.beam();
    BeamResult less = beam.solve(on(shape, spots));
    BeamResult more = BeamResult.combine(List.of(less), factor);
    double slack = 1 - 1e-12;
    assertThat(Math.abs(more.largestMoment().amount()))
        .isGreaterThanOrEqualTo(slack * Math.abs(less.largestMoment().amount()));
    assertThat(Math.abs(more.largestShear().amount()))
        .isGreaterThanOrEqualTo(slack * Math.abs(less.largestShear().amount()));
    assertThat(Math.abs(more.largestSpanDeflection(0).amount()))
        .isGreaterThanOrEqualTo(slack * Math.abs(less.largestSpanDeflection(0).amount()));
  }

  @Property
  void more_load_anywhere_on_one_simple_span_never_sags_less_anywhere(
      @ForAll("loads") List<Spot> spots, @ForAll("spots") Spot extra) {
    ContinuousBeam beam = ContinuousBeam.of(120, 0, 120);
    Shape shape = new Shape(0, List.of(120.0), 0);
    List<Spot> all = new ArrayList<>(spots);
    all.add(extra);
    BeamResult less = beam.solve(on(shape, spots));
    BeamResult more = beam.solve(on(shape, all));
    for (double at = 0; at <= 120; at += 10) {
      assertThat(more.momentInLb(at)).isGreaterThanOrEqualTo(less.momentInLb(at) - 1e-6);
      assertThat(more.deflectionLbIn3(at)).isGreaterThanOrEqualTo(less.deflectionLbIn3(at) - 1e-2);
    }
  }

  @Property
  void peaks_are_not_exceeded_anywhere(
      @ForAll("shapes") Shape shape, @ForAll("loads") List<Spot> spots) {
    BeamResult result = shape.beam().solve(on(shape, spots));
    double moment = 1e-9 * (1 + Math.abs(result.largestMoment().amount()));
    Peak sagging = result.mostSagging();
    Peak hogging = result.mostHogging();
    Peak shear = result.largestShear();
    for (int i = 0; i <= 997; i++) {
      double at = Math.min(shape.length(), shape.length() * i / 997);
      assertThat(result.momentInLb(at))
          .isBetween(hogging.amount() - moment, sagging.amount() + moment);
      assertThat(Math.abs(result.shearLb(at))).isLessThanOrEqualTo(Math.abs(shear.amount()) + 1e-9);
    }
    for (int span = 0; span < shape.spans().size(); span++) {
      double from = shape.supports()[span];
      double most = Math.abs(result.largestSpanDeflection(span).amount());
      for (int i = 0; i <= 97; i++) {
        double at = Math.min(shape.length(), from + shape.spans().get(span) * i / 97);
        assertThat(Math.abs(result.deflectionLbIn3(at))).isLessThanOrEqualTo(most * 1.000001 + 1);
      }
    }
  }

  @Property
  void a_load_and_the_sag_it_makes_elsewhere_can_change_places(
      @ForAll("shapes") Shape shape,
      @ForAll @DoubleRange(min = 0, max = 1) double one,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    // Maxwell's reciprocal theorem.
    double a = one * shape.length();
    double b = other * shape.length();
    ContinuousBeam beam = shape.beam();
    double there = beam.solve(new BeamLoad.Point(a, 1)).deflectionLbIn3(b);
    double back = beam.solve(new BeamLoad.Point(b, 1)).deflectionLbIn3(a);
    assertThat(there).isCloseTo(back, within(1e-9 * Math.pow(shape.length(), 3)));
  }

  @Property
  void lifted_it_hogs_where_pressed_it_sags(
      @ForAll("shapes") Shape shape, @ForAll("loads") List<Spot> spots) {
    double length = shape.length();
    BeamLoad[] down = spots.stream().map(spot -> spot.on(length)).toArray(BeamLoad[]::new);
    BeamLoad[] up =
        spots.stream()
            .map(spot -> new Spot(spot.from(), spot.share(), -spot.amount()).on(length))
            .toArray(BeamLoad[]::new);
    BeamResult pressed = shape.beam().solve(down);
    BeamResult lifted = shape.beam().solve(up);
    double size = 1e-6 * (1 + Math.abs(pressed.largestMoment().amount()));
    assertThat(lifted.mostHogging().amount())
        .isCloseTo(-pressed.mostSagging().amount(), within(size));
    assertThat(lifted.mostSagging().amount())
        .isCloseTo(-pressed.mostHogging().amount(), within(size));
    assertThat(pressed.momentInLb(pressed.mostHogging().atIn()))
        .isCloseTo(pressed.mostHogging().amount(), within(size));
  }
}
