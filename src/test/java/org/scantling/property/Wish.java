package org.scantling.property;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.scantling.design.BaseDesign;
import org.scantling.design.CrossFall;
import org.scantling.design.FreeStretch;
import org.scantling.design.Site;

/**
 * What one random site asks for, in a form that a test can nudge one demand of.
 *
 * @param lengthIn length of the walk
 * @param clearWidthIn free width asked for; 0 where the users or the base decide
 * @param users who passes
 * @param headroomIn free height asked for; 0 where the base decides
 * @param climate frost, snow, wind and exposure
 * @param soil class of the soils table
 * @param vine class of the vines table
 * @param timber species and grade
 * @param choices preferences
 * @param layout what is said of where posts stand
 */
public record Wish(
    double lengthIn,
    double clearWidthIn,
    List<Site.User> users,
    double headroomIn,
    Climate climate,
    String soil,
    String vine,
    Timber timber,
    Choices choices,
    Layout layout) {

  /** A walk that the rules divide. */
  public Wish(
      double lengthIn,
      double clearWidthIn,
      List<Site.User> users,
      double headroomIn,
      Climate climate,
      String soil,
      String vine,
      Timber timber,
      Choices choices) {
    this(
        lengthIn,
        clearWidthIn,
        users,
        headroomIn,
        climate,
        soil,
        vine,
        timber,
        choices,
        Layout.LEFT_TO_RULES);
  }

  /**
   * Where posts stand, by parts of the length.
   *
   * @param parts that each bay takes, which need not come to one; none where the rules divide it
   * @param free from where to where, of one, no post may stand; two numbers a stretch
   * @param across fall of the ground from row to row
   * @param rockIn depth at which solid rock begins; 0 for none
   */
  public record Layout(List<Double> parts, List<Double> free, CrossFall across, double rockIn) {
    static final Layout LEFT_TO_RULES = new Layout(List.of(), List.of(), CrossFall.LEVEL, 0);
  }

  /** Frost depth in, ground snow psf, wind mph, exposure class. */
  public record Climate(double frostIn, double snowPsf, double windMph, String exposure) {}

  /** Species and grade. */
  public record Timber(String species, String grade) {}

  /** Preferences that a structure depends on. */
  public record Choices(
      String footing, String header, String embedmentBasis, String risk, String snowShare) {}

  /** A plain wish: the trade's everyday case, to be nudged by a test. */
  public static Wish plain() {
    return new Wish(
        120,
        0,
        List.of(),
        0,
        new Climate(36, 25, 110, "B"),
        "sandy-gravel",
        "clematis",
        new Timber("southern-pine", "No.2"),
        new Choices("auto", "auto", "code", "I", "open"));
  }

  public Wish length(double inches) {
    return new Wish(
        inches, clearWidthIn, users, headroomIn, climate, soil, vine, timber, choices, layout);
  }

  public Wish clearWidth(double inches) {
    return new Wish(
        lengthIn, inches, users, headroomIn, climate, soil, vine, timber, choices, layout);
  }

  public Wish users(List<Site.User> passing) {
    return new Wish(
        lengthIn, clearWidthIn, passing, headroomIn, climate, soil, vine, timber, choices, layout);
  }

  public Wish headroom(double inches) {
    return new Wish(
        lengthIn, clearWidthIn, users, inches, climate, soil, vine, timber, choices, layout);
  }

  public Wish climate(Climate other) {
    return new Wish(
        lengthIn, clearWidthIn, users, headroomIn, other, soil, vine, timber, choices, layout);
  }

  public Wish soil(String other) {
    return new Wish(
        lengthIn, clearWidthIn, users, headroomIn, climate, other, vine, timber, choices, layout);
  }

  public Wish vine(String other) {
    return new Wish(
        lengthIn, clearWidthIn, users, headroomIn, climate, soil, other, timber, choices, layout);
  }

  public Wish choices(Choices other) {
    return new Wish(
        lengthIn, clearWidthIn, users, headroomIn, climate, soil, vine, timber, other, layout);
  }

  /** The same with bays told one by one. */
  public Wish parts(List<Double> each) {
    return laidOut(new Layout(each, layout.free(), layout.across(), layout.rockIn()));
  }

  /** The same with something else said of where posts stand. */
  public Wish laidOut(Layout other) {
    return new Wish(
        lengthIn, clearWidthIn, users, headroomIn, climate, soil, vine, timber, choices, other);
  }

  /** The length of each bay by its part; none where the rules divide the walk. */
  public List<Double> parts() {
    return layout.parts();
  }

  /** The site that asks for this over a base. */
  public Site over(BaseDesign base) {
    return new Site(
        "Random site",
        base,
        new Site.Climate(
            OptionalDouble.of(climate.frostIn()),
            OptionalDouble.of(climate.snowPsf()),
            OptionalDouble.of(climate.windMph()),
            Optional.of(climate.exposure()),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        ground(),
        new Site.Walkway(
            lengthIn,
            asked(clearWidthIn),
            users,
            asked(headroomIn),
            parts().isEmpty() ? OptionalInt.empty() : OptionalInt.of(parts().size()),
            baysIn(),
            free()),
        List.of(new Site.Planting(vine)),
        new Site.Materials(Optional.of(timber.species()), Optional.of(timber.grade())),
        new Site.Preferences(
            choices.footing(),
            choices.header(),
            "look",
            "published",
            choices.embedmentBasis(),
            choices.risk(),
            choices.snowShare(),
            "auto"));
  }

  private Site.Ground ground() {
    Site.Ground level = new Site.Ground(Optional.of(soil), 0).fallingAcross(layout.across());
    return layout.rockIn() > 0 ? level.overRock(layout.rockIn()) : level;
  }

  private List<Double> baysIn() {
    double all = parts().stream().mapToDouble(Double::doubleValue).sum();
    return parts().stream().map(part -> lengthIn * part / all).toList();
  }

  private List<FreeStretch> free() {
    return IntStream.range(0, layout.free().size() / 2)
        .mapToObj(
            stretch ->
                new FreeStretch(
                    lengthIn * layout.free().get(2 * stretch),
                    lengthIn * layout.free().get(2 * stretch + 1)))
        .toList();
  }

  private static OptionalDouble asked(double inches) {
    return inches > 0 ? OptionalDouble.of(inches) : OptionalDouble.empty();
  }
}
