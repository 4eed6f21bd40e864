package org.scantling.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.scantling.design.BaseDesign;
import org.scantling.design.CrossFall;
import org.scantling.design.FreeStretch;
import org.scantling.design.Site;
import org.scantling.reasons.Demand;

/**
 * Builds a site from a file that had no problem. Only the words of the preferences have defaults.
 */
final class SiteAssembly {
  private final Readings said;
  private final BaseDesign base;

  SiteAssembly(Readings said, BaseDesign base) {
    this.said = said;
    this.base = base;
  }

  Site site() {
    return new Site(
        said.word("title"),
        base,
        ClimateAssembly.climate(said),
        new Site.Ground(
            said.maybeWord("site.soil"),
            said.maybeNumber("site.slope").orElse(0),
            said.maybeWord("site.isolated-posts"),
            across(),
            said.maybeNumber("site.rock-at")),
        new Site.Walkway(
            said.number("walkway.length"),
            said.maybeNumber("walkway.clear-width"),
            users(),
            said.maybeNumber("walkway.headroom"),
            bays(),
            said.numbers("walkway.bays"),
            free()),
        planting(),
        MaterialsAssembly.materials(said),
        preferences());
  }

  private CrossFall across() {
    return new CrossFall(
        said.maybeNumber(Demand.CROSS_SLOPE.path()).orElse(0),
        said.maybeNumber(Demand.CROSS_FALL.path()).orElse(0));
  }

  private OptionalInt bays() {
    int listed = said.numbers("walkway.bays").size();
    return listed > 0 ? OptionalInt.of(listed) : said.maybeCount("walkway.bays");
  }

  private List<FreeStretch> free() {
    return IntStream.range(0, said.size(StretchRule.PATH))
        .mapToObj(place -> StretchRule.PATH + "[" + place + "]")
        .map(path -> new FreeStretch(said.number(path + ".from"), said.number(path + ".to")))
        .toList();
  }

  private List<Site.User> users() {
    return IntStream.range(0, said.size("walkway.users"))
        .mapToObj(place -> user("walkway.users[" + place + "]"))
        .toList();
  }

  private Site.User user(String path) {
    return said.maybeWord(path).isPresent()
        ? new Site.User.Known(said.word(path))
        : new Site.User.Machine(said.number(path + ".machine-width"));
  }

  private List<Site.Planting> planting() {
    return IntStream.range(0, said.size("planting"))
        .mapToObj(place -> new Site.Planting(said.word("planting[" + place + "].vine")))
        .toList();
  }

  private Site.Preferences preferences() {
    return new Site.Preferences(
        preference("footing", "auto"),
        preference("header", "auto"),
        preference("keep", "look"),
        preference("basis", "published"),
        preference("embedment-basis", "code"),
        preference("risk-category", "I"),
        preference("snow-share", "open"),
        preference("crossbeams-at-posts", "auto"),
        new Site.Largest(largest("post"), largest("header"), largest("crossbeam")));
  }

  private Optional<String> largest(String member) {
    return said.maybeWord("preferences.largest-" + member);
  }

  private String preference(String key, String usual) {
    return said.maybeWord("preferences." + key).orElse(usual);
  }
}
