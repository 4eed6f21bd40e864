package org.scantling.property;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.scantling.design.CrossFall;
import org.scantling.design.Site;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.SoilRow;
import org.scantling.tables.UserRow;
import org.scantling.tables.VineRow;

/** Random sites over everything that the rule base claims to cover. */
public final class RandomWish {
  private RandomWish() {}

  public static Arbitrary<Wish> any() {
    return Combinators.combine(
            Arbitraries.integers().between(48, 720),
            maybe(30, 120),
            users(),
            maybe(80, 108),
            climate(),
            Arbitraries.of(House.TABLES.soils().rows().stream().map(SoilRow::id).toList()),
            Arbitraries.of(House.TABLES.vines().rows().stream().map(VineRow::id).toList()),
            Combinators.combine(timber(), choices()).as(Made::new))
        .as(
            (length, width, users, headroom, climate, soil, vine, made) ->
                new Wish(
                    length,
                    width,
                    users,
                    headroom,
                    climate,
                    soil,
                    vine,
                    made.of(),
                    made.how(),
                    new Wish.Layout(
                        longEnough(length, parts(length, climate)),
                        free(length, climate),
                        across(length, climate),
                        rockIn(length, climate))));
  }

  private record Made(Wish.Timber of, Wish.Choices how) {}

  /**
   * Of one site in five, bays that need not be alike, the longest at most twice the shortest; drawn
   * from the rest of the wish, so that the other sites stay those that they were.
   */
  private static List<Double> parts(double lengthIn, Wish.Climate climate) {
    Random random = new Random(Objects.hash(lengthIn, climate));
    if (random.nextInt(5) > 0) {
      return List.of();
    }
    return IntStream.range(0, 2 + random.nextInt(5))
        .mapToObj(bay -> 1 + random.nextInt(101) / 100.0)
        .toList();
  }

  /**
   * On one site in six one or two stretches of up to a sixth of the length in which no post may
   * stand, drawn like the bays; where bays are told, posts may stand in them all the same.
   */
  private static List<Double> free(double lengthIn, Wish.Climate climate) {
    Random random = new Random(Objects.hash(climate, lengthIn));
    if (random.nextInt(6) > 0) {
      return List.of();
    }
    double first = random.nextInt(60) / 100.0;
    double second = first + 0.2 + random.nextInt(10) / 100.0;
    List<Double> free = new ArrayList<>(List.of(first, first + (1 + random.nextInt(16)) / 100.0));
    if (random.nextBoolean()) {
      free.addAll(List.of(second, second + (1 + random.nextInt(10)) / 100.0));
    }
    return free;
  }

  /** On one site in five one row up to a fifth of their distance lower, drawn like the bays. */
  private static CrossFall across(double lengthIn, Wish.Climate climate) {
    Random random = new Random(Objects.hash(climate, lengthIn, "across"));
    if (random.nextInt(5) > 0) {
      return CrossFall.LEVEL;
    }
    int sign = random.nextInt(3) == 0 ? -1 : 1;
    return random.nextBoolean()
        ? CrossFall.ofPercent(sign * (1 + random.nextInt(20)))
        : CrossFall.of(sign * (1 + random.nextInt(20)));
  }

  /** On one site in six solid rock, anywhere from a foot and a half to six feet down. */
  private static double rockIn(double lengthIn, Wish.Climate climate) {
    Random random = new Random(Objects.hash(climate, lengthIn, "rock"));
    return random.nextInt(6) > 0 ? 0 : 18 + random.nextInt(54);
  }

  /** None where posts would stand closer than a file takes. */
  private static List<Double> longEnough(double lengthIn, List<Double> parts) {
    double all = parts.stream().mapToDouble(Double::doubleValue).sum();
    return parts.stream().allMatch(part -> lengthIn * part / all >= 24) ? parts : List.of();
  }

  private static Arbitrary<Double> maybe(int least, int most) {
    return Arbitraries.oneOf(
        Arbitraries.just(0.0),
        Arbitraries.integers().between(least * 2, most * 2).map(halves -> halves / 2.0));
  }

  private static Arbitrary<List<Site.User>> users() {
    Arbitrary<Site.User> known =
        Arbitraries.of(House.TABLES.users().rows().stream().map(UserRow::id).toList())
            .map(Site.User.Known::new);
    Arbitrary<Site.User> machine =
        Arbitraries.integers().between(24, 90).map(Site.User.Machine::new);
    return Arbitraries.oneOf(known, machine).list().ofMaxSize(2);
  }

  private static Arbitrary<Wish.Climate> climate() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 72),
            Arbitraries.integers().between(0, 70),
            Arbitraries.integers().between(90, 140),
            Arbitraries.of("B", "C", "D"))
        .as(Wish.Climate::new);
  }

  /** The lowest grade is sold in small sizes only, so most sites in it end early: ask it rarely. */
  private static Arbitrary<Wish.Timber> timber() {
    List<Wish.Timber> large = new ArrayList<>();
    List<Wish.Timber> small = new ArrayList<>();
    for (DesignValueRow row : House.TABLES.designValues().rows()) {
      Wish.Timber timber = new Wish.Timber(row.species(), row.grade());
      List<Wish.Timber> sold = row.grade().equals("No.3") ? small : large;
      if (!sold.contains(timber)) {
        sold.add(timber);
      }
    }
    return Arbitraries.frequencyOf(
        Tuple.of(12, Arbitraries.of(large)), Tuple.of(1, Arbitraries.of(small)));
  }

  private static Arbitrary<Wish.Choices> choices() {
    return Combinators.combine(
            Arbitraries.frequencyOf(
                Tuple.of(6, Arbitraries.of("auto", "embedded", "concrete")),
                Tuple.of(1, Arbitraries.of("bracket", "moment-base"))),
            Arbitraries.of("auto", "on-top", "paired"),
            Arbitraries.frequencyOf(
                Tuple.of(4, Arbitraries.just("code")), Tuple.of(1, Arbitraries.just("experience"))),
            Arbitraries.of("I", "II"),
            Arbitraries.of("open", "full"))
        .as(Wish.Choices::new);
  }
}
