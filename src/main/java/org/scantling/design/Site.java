package org.scantling.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The place and its demands, as the site file states them; what the file leaves out is empty here
 * and is decided by a rule, never silently filled.
 *
 * @param title what the builder calls the job
 * @param base the proven design that is adapted
 * @param climate frost, snow and wind as given
 * @param ground soil and slope
 * @param walkway length, users and the clearances asked for
 * @param planting the climbers, in the order of the file
 * @param materials species and grade, where asked for
 * @param preferences what the builder or client wants where the rules leave a choice
 */
public record Site(
    String title,
    BaseDesign base,
    Climate climate,
    Ground ground,
    Walkway walkway,
    List<Planting> planting,
    Materials materials,
    Preferences preferences) {

  public Site {
    planting = List.copyOf(planting);
  }

  /** The same site with another climate. */
  public Site with(Climate other) {
    return new Site(title, base, other, ground, walkway, planting, materials, preferences);
  }

  /** The same site with other ground. */
  public Site with(Ground other) {
    return new Site(title, base, climate, other, walkway, planting, materials, preferences);
  }

  /** The same site with another walk. */
  public Site with(Walkway other) {
    return new Site(title, base, climate, ground, other, planting, materials, preferences);
  }

  /** The same site with other timber. */
  public Site with(Materials other) {
    return new Site(title, base, climate, ground, walkway, planting, other, preferences);
  }

  /** The same site with other preferences. */
  public Site with(Preferences other) {
    return new Site(title, base, climate, ground, walkway, planting, materials, other);
  }

  /** The same site with other climbers. */
  public Site planted(List<Planting> other) {
    return new Site(title, base, climate, ground, walkway, other, materials, preferences);
  }

  /**
   * @param frostDepthIn depth asked by the local building department, to the bottom of the footing
   * @param groundSnowPsf ground snow load p_g
   * @param windSpeedMph basic wind speed, strength level, three-second gust
   * @param exposure wind exposure class: B, C or D
   * @param hardinessZone plant hardiness zone, used only for a first estimate
   * @param freezingIndexFDays air-freezing index, degree-days Fahrenheit
   * @param meanAnnualF mean annual air temperature
   * @param weather what else the file says of wind and snow
   */
  public record Climate(
      OptionalDouble frostDepthIn,
      OptionalDouble groundSnowPsf,
      OptionalDouble windSpeedMph,
      Optional<String> exposure,
      OptionalDouble hardinessZone,
      OptionalDouble freezingIndexFDays,
      OptionalDouble meanAnnualF,
      Weather weather) {

    /** A climate whose wind and snow are what they are taken for, on level ground. */
    public Climate(
        OptionalDouble frostDepthIn,
        OptionalDouble groundSnowPsf,
        OptionalDouble windSpeedMph,
        Optional<String> exposure,
        OptionalDouble hardinessZone,
        OptionalDouble freezingIndexFDays,
        OptionalDouble meanAnnualF) {
      this(
          frostDepthIn,
          groundSnowPsf,
          windSpeedMph,
          exposure,
          hardinessZone,
          freezingIndexFDays,
          meanAnnualF,
          Weather.NOTHING_MORE);
    }
  }

  /**
   * What kind of wind and snow a file gives, and what an official asks for.
   *
   * @param windBasis what the wind speed is: strength-gust, allowable-gust, mean-10-minute or
   *     mean-hourly
   * @param hourlyPressurePsf hourly wind pressure, 1 in 50 years, instead of a speed
   * @param snow ground snow and rain as Canadian tables print them, instead of a ground snow load
   * @param roofLivePsf live load that the official asks for on the top
   * @param hill the hill it stands on
   * @param place where on earth it lies, by which what is stated is held against what is measured
   */
  public record Weather(
      Optional<String> windBasis,
      OptionalDouble hourlyPressurePsf,
      Optional<SnowAndRain> snow,
      OptionalDouble roofLivePsf,
      Optional<Hill> hill,
      Optional<Locality> place) {
    /** The words for a strength-level three-second gust, which a wind is unless it says so. */
    public static final String STRENGTH_GUST = "strength-gust";

    static final Weather NOTHING_MORE =
        new Weather(
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());

    /** The same where the wind is given as a strength-level gust. */
    public Weather gusting() {
      return gusts() && hourlyPressurePsf.isEmpty()
          ? this
          : new Weather(
              Optional.of(STRENGTH_GUST), OptionalDouble.empty(), snow, roofLivePsf, hill, place);
    }

    /** The same where the snow is given as a load on the ground. */
    public Weather snowing() {
      return new Weather(windBasis, hourlyPressurePsf, Optional.empty(), roofLivePsf, hill, place);
    }

    /** True where a stated wind speed is a strength-level gust. */
    public boolean gusts() {
      return windBasis.orElse(STRENGTH_GUST).equals(STRENGTH_GUST);
    }
  }

  /**
   * @param groundPsf Ss, snow on the ground, 1 in 50 years
   * @param rainPsf Sr, rain that falls into it
   */
  public record SnowAndRain(double groundPsf, double rainPsf) {}

  /**
   * @param shape ridge, escarpment or hill
   * @param heightIn from the foot of the slope to the crest
   * @param halfLengthIn upwind of the crest to where the ground is half as high
   * @param fromCrestIn how far from the crest the walk stands; 0 on it
   */
  public record Hill(String shape, double heightIn, double halfLengthIn, double fromCrestIn) {}

  /**
   * @param soil class of the soils table
   * @param slopePercent fall of the ground along the walk; 0 where not given
   * @param isolatedPosts yes where each post stands by itself and may move half an inch at the
   *     ground, else no
   * @param across how the ground falls from row to row
   * @param rockAtIn depth below the ground at which solid rock begins, where the file tells it
   */
  public record Ground(
      Optional<String> soil,
      double slopePercent,
      Optional<String> isolatedPosts,
      CrossFall across,
      OptionalDouble rockAtIn) {
    public Ground(Optional<String> soil, double slopePercent) {
      this(soil, slopePercent, Optional.empty(), CrossFall.LEVEL, OptionalDouble.empty());
    }

    /** The same ground, of another soil. */
    public Ground of(String other) {
      return new Ground(Optional.of(other), slopePercent, isolatedPosts, across, rockAtIn);
    }

    /** The same ground with another fall along the walk. */
    public Ground falling(double otherPercent) {
      return new Ground(soil, otherPercent, isolatedPosts, across, rockAtIn);
    }

    /** The same ground with another fall across the walk. */
    public Ground fallingAcross(CrossFall other) {
      return new Ground(soil, slopePercent, isolatedPosts, other, rockAtIn);
    }

    /** The same ground with solid rock at a depth. */
    public Ground overRock(double atIn) {
      return new Ground(soil, slopePercent, isolatedPosts, across, OptionalDouble.of(atIn));
    }
  }

  /**
   * @param lengthIn first to last post, centre to centre
   * @param clearWidthIn free width asked for between the rows
   * @param users who and what passes
   * @param headroomIn free height asked for under the lowest overhead timber
   * @param bays number of bays asked for
   * @param baysIn each of them, from the first post on, where they are asked for by their lengths
   * @param free stretches in which no post may stand
   */
  public record Walkway(
      double lengthIn,
      OptionalDouble clearWidthIn,
      List<User> users,
      OptionalDouble headroomIn,
      OptionalInt bays,
      List<Double> baysIn,
      List<FreeStretch> free) {
    public Walkway {
      users = List.copyOf(users);
      baysIn = List.copyOf(baysIn);
      free = List.copyOf(free);
    }

    /** A walk of equal bays. */
    public Walkway(
        double lengthIn,
        OptionalDouble clearWidthIn,
        List<User> users,
        OptionalDouble headroomIn,
        OptionalInt bays) {
      this(lengthIn, clearWidthIn, users, headroomIn, bays, List.of(), List.of());
    }

    /** The bays that are asked for by their lengths. */
    public Optional<Bays> divided() {
      return baysIn.isEmpty() ? Optional.empty() : Optional.of(Bays.of(baysIn));
    }

    /** A longer or shorter walk, whose bays grow with it where they are asked for by length. */
    public Walkway ofLength(double otherLengthIn) {
      double ratio = otherLengthIn / lengthIn;
      return new Walkway(
          otherLengthIn,
          clearWidthIn,
          users,
          headroomIn,
          bays,
          baysIn.stream().map(each -> each * ratio).toList(),
          free);
    }

    /** The walk in so many bays: as they are told, else alike but for posts that have to move. */
    public Bays into(int count) {
      return divided()
          .filter(told -> told.count() == count)
          .orElseGet(() -> PostPlaces.of(count, lengthIn, free));
    }

    /** The same walk with another free width. */
    public Walkway ofClearWidth(double otherIn) {
      return new Walkway(
          lengthIn, OptionalDouble.of(otherIn), users, headroomIn, bays, baysIn, free);
    }

    /** The same walk with another free height. */
    public Walkway ofHeadroom(double otherIn) {
      return new Walkway(
          lengthIn, clearWidthIn, users, OptionalDouble.of(otherIn), bays, baysIn, free);
    }

    /** The same walk for other users. */
    public Walkway forUsers(List<User> others) {
      return new Walkway(lengthIn, clearWidthIn, others, headroomIn, bays, baysIn, free);
    }

    /** The same walk whose posts keep stretches free. */
    public Walkway keepingFree(List<FreeStretch> stretches) {
      return new Walkway(lengthIn, clearWidthIn, users, headroomIn, bays, baysIn, stretches);
    }

    /** A walk whose number of bays is left to the rules. */
    public Walkway(
        double lengthIn, OptionalDouble clearWidthIn, List<User> users, OptionalDouble headroomIn) {
      this(lengthIn, clearWidthIn, users, headroomIn, OptionalInt.empty());
    }

    /** The same walk divided into so many equal bays, of another length. */
    public Walkway dividedInto(int otherBays, double otherLengthIn) {
      return new Walkway(
          otherLengthIn,
          clearWidthIn,
          users,
          headroomIn,
          OptionalInt.of(otherBays),
          List.of(),
          free);
    }
  }

  /** Who or what passes under the structure. */
  public sealed interface User {
    /** A user of the users table, such as {@code two-abreast}. */
    record Known(String kind) implements User {}

    /** A machine given by its own width. */
    record Machine(double machineWidthIn) implements User {}
  }

  /**
   * @param vine class of the vines table
   */
  public record Planting(String vine) {}

  /**
   * Timber, where the site asks for it.
   *
   * @param species species group of the design values
   * @param grade visual grade
   * @param market where it is bought: north-america or metric
   * @param byRole what is asked for posts, headers, crossbeams, rails or braces alone
   */
  public record Materials(
      Optional<String> species,
      Optional<String> grade,
      Optional<String> market,
      Map<String, Timber> byRole) {
    public Materials {
      byRole = Map.copyOf(byRole);
    }

    public Materials(Optional<String> species, Optional<String> grade, Optional<String> market) {
      this(species, grade, market, Map.of());
    }

    public Materials(Optional<String> species, Optional<String> grade) {
      this(species, grade, Optional.empty());
    }

    /** True where some species or grade is named. */
    public boolean named() {
      return species.isPresent() || grade.isPresent() || !byRole.isEmpty();
    }
  }

  /**
   * The timber of one role, as far as it is another than that of the rest.
   *
   * @param species species group of the design values
   * @param grade visual grade
   */
  public record Timber(Optional<String> species, Optional<String> grade) {}

  /**
   * What is wanted where the rules leave a choice; each is a word of the contract.
   *
   * @param footing auto, embedded, concrete or bracket
   * @param header auto, on-top or paired
   * @param keep look, cost or members
   * @param basis published or proven
   * @param embedmentBasis code or experience
   * @param riskCategory I or II
   * @param snowShare open (the share of the sky the top covers) or full
   * @param crossbeamsAtPosts auto, single or doubled; it counts where knee braces hold the posts
   * @param largest the sizes that are wanted at most
   */
  public record Preferences(
      String footing,
      String header,
      String keep,
      String basis,
      String embedmentBasis,
      String riskCategory,
      String snowShare,
      String crossbeamsAtPosts,
      Largest largest) {
    /** With any size. */
    public Preferences(
        String footing,
        String header,
        String keep,
        String basis,
        String embedmentBasis,
        String riskCategory,
        String snowShare,
        String crossbeamsAtPosts) {
      this(
          footing,
          header,
          keep,
          basis,
          embedmentBasis,
          riskCategory,
          snowShare,
          crossbeamsAtPosts,
          Largest.any());
    }
  }

  /** The nominal sizes that are wanted at most; of headers that of one board. */
  public record Largest(
      Optional<String> post, Optional<String> header, Optional<String> crossbeam) {
    /** Any size will do. */
    public static Largest any() {
      return new Largest(Optional.empty(), Optional.empty(), Optional.empty());
    }
  }
}
