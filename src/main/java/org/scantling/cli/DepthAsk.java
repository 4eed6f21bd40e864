package org.scantling.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.depths.DepthCase;
import org.scantling.depths.DepthRequest;
import org.scantling.depths.DepthRequest.Stand;
import org.scantling.depths.DepthTable;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.intake.Intake;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/** What the options of {@code depths} ask, of a site or of the plain walk. */
final class DepthAsk {
  private static final String MPH = "mph";
  private static final Pattern BARE = Pattern.compile("\\d+(?:\\.\\d+)?");
  private static final Pattern UNIT = Pattern.compile("\\d+(?:\\.\\d+)?\\s*([A-Za-z/]+)");

  private final Workplace workplace;
  private final DepthLists lists;
  private final DepthPlace place;
  private final boolean metric;
  private final OptionReader reader = new OptionReader();
  private final PlainWalk plain;

  /**
   * @param metric true where nobody names winds and frosts and they are wanted in metric steps
   */
  DepthAsk(Workplace workplace, DepthLists lists, DepthPlace place, boolean metric) {
    this.metric = metric;
    this.workplace = workplace;
    this.lists = lists;
    this.place = place;
    this.plain = new PlainWalk(workplace.tables(), metric, reader);
  }

  /** Of the plain walk that comes with the program. */
  DepthTable plain() {
    Optional<Site> site = plain.site(place.ofSite());
    Optional<BaseDesign> design = plain.design(place.ofDesign());
    List<String> sizes = sizes(lists.posts().orElseGet(() -> usual(steps("depths.post"))));
    List<String> soils = soils(lists.soils().orElseGet(() -> usual("depths.soil")));
    List<Double> winds = winds(lists.winds().orElseGet(() -> usual(steps("depths.wind"))));
    List<Double> frosts = frosts(lists.frosts().orElseGet(() -> usual(steps("depths.frost"))));
    BaseDesign.Posts posts = plain.design(List.of()).orElseThrow().posts();
    List<Stand> stands = stands(posts, sizes, soils, fill(posts));
    reader.done();
    DepthRequest request =
        new DepthRequest(site.orElseThrow(), design.orElseThrow(), stands, winds, frosts);
    refuseWhatCannotBe(request);
    return workplace.depths().of(request);
  }

  /** Of a site with the structure that was proposed for it. */
  DepthTable at(Intake intake, Proposal proposal) {
    place
        .ofDesign()
        .forEach(
            each ->
                reader.misplaced(
                    PlainWalk.option(each.path()), CommandWords.say("depths.plain-only")));
    BaseDesign design = ProposedDesign.of(proposal, intake.site().base());
    BaseDesign.Posts posts = design.posts();
    if (lists.fills().isPresent() && !DepthCase.inTheGround(posts)) {
      reader.misplaced("--fill", CommandWords.say("depths.on-piers"));
    }
    String soil = ((Outcome.Word) decided(proposal, Question.SOIL)).text();
    double windMph = number(proposal, Question.WIND_SPEED);
    double frostIn = number(proposal, Question.FROST_DEPTH);
    List<Stand> stands =
        stands(
            posts,
            sizes(lists.posts().orElse(List.of(posts.size()))),
            soils(lists.soils().orElse(List.of(soil))),
            fill(posts));
    List<Double> winds =
        lists
            .winds()
            .map(this::winds)
            .orElseGet(() -> with(windMph, winds(usual(steps("depths.wind")))));
    List<Double> frosts =
        lists
            .frosts()
            .map(this::frosts)
            .orElseGet(() -> with(frostIn, frosts(usual(steps("depths.frost")))));
    reader.done();
    DepthRequest request = new DepthRequest(intake.site(), design, stands, winds, frosts);
    refuseWhatCannotBe(request);
    DepthCase own = own(posts, soil).at(windMph, frostIn);
    DepthCase here = here(request, own);
    return workplace
        .depths()
        .of(request, here, Optional.of(proposal).filter(it -> here.equals(own)));
  }

  /** What is asked of the site, where one value is given; else as the site has it. */
  private DepthCase here(DepthRequest request, DepthCase own) {
    Stand stand = request.stands().size() == 1 ? request.stands().get(0) : Stand.of(own);
    return stand.at(
        request.windsMph().size() == 1 ? request.windsMph().get(0) : own.windSpeedMph(),
        request.frostsIn().size() == 1 ? request.frostsIn().get(0) : own.frostDepthIn());
  }

  private static Stand own(BaseDesign.Posts posts, String soil) {
    return new Stand(posts.size(), posts.heightIn(), posts.bayIn(), soil, fill(posts));
  }

  private static String fill(BaseDesign.Posts posts) {
    return posts.footing().equals(WayOfBuilding.CONCRETE)
        ? WayOfBuilding.CONCRETE
        : posts.backfill().orElse(WayOfBuilding.CONCRETE);
  }

  private List<Stand> stands(
      BaseDesign.Posts own, List<String> sizes, List<String> soils, String fill) {
    List<Stand> stands = new ArrayList<>();
    List<Double> heights =
        lists.heights().map(each -> heights(each)).orElse(List.of(own.heightIn()));
    List<Double> bays = lists.bays().map(each -> bays(each)).orElse(List.of(own.bayIn()));
    List<String> fills = lists.fills().map(each -> fills(each)).orElse(List.of(fill));
    for (String size : sizes) {
      for (double heightIn : heights) {
        for (double bayIn : bays) {
          for (String soil : soils) {
            fills.forEach(each -> stands.add(new Stand(size, heightIn, bayIn, soil, each)));
          }
        }
      }
    }
    return stands;
  }

  private List<String> sizes(List<String> written) {
    return plain.designs("posts.size", written).stream().map(each -> each.posts().size()).toList();
  }

  private List<Double> heights(List<String> written) {
    return plain.designs("posts.height", united(written, "")).stream()
        .map(each -> each.posts().heightIn())
        .toList();
  }

  private List<Double> bays(List<String> written) {
    return plain.designs("posts.bay", united(written, "")).stream()
        .map(each -> each.posts().bayIn())
        .toList();
  }

  private List<String> fills(List<String> written) {
    return plain.designs("posts.backfill", written).stream()
        .flatMap(each -> each.posts().backfill().stream())
        .toList();
  }

  private List<String> soils(List<String> written) {
    return plain.sites("site.soil", written).stream()
        .flatMap(each -> each.ground().soil().stream())
        .toList();
  }

  private List<Double> winds(List<String> written) {
    return plain.sites("site.climate.wind-speed", united(written, MPH)).stream()
        .map(each -> each.climate().windSpeedMph().orElseThrow())
        .toList();
  }

  private List<Double> frosts(List<String> written) {
    return plain.sites("site.climate.frost-depth", united(written, "")).stream()
        .map(each -> each.climate().frostDepthIn().orElseThrow())
        .toList();
  }

  /** Bare numbers of a list have the unit of the last one; a bare wind is in miles an hour. */
  private static List<String> united(List<String> written, String usual) {
    Matcher last = UNIT.matcher(written.get(written.size() - 1).strip());
    String unit = last.matches() ? last.group(1) : usual;
    return written.stream()
        .map(String::strip)
        .map(each -> BARE.matcher(each).matches() ? (each + " " + unit).strip() : each)
        .toList();
  }

  private static List<Double> with(double own, List<Double> usual) {
    TreeSet<Double> all = new TreeSet<>(usual);
    all.add(own);
    return List.copyOf(all);
  }

  private String steps(String row) {
    return metric ? row + "-metric" : row;
  }

  private List<String> usual(String row) {
    return List.of(workplace.tables().defaults().row(row).word().split(";"));
  }

  private static Outcome decided(Proposal proposal, Question question) {
    return proposal.decision(question).orElseThrow().proposed();
  }

  private static double number(Proposal proposal, Question question) {
    return ((Outcome.Amount) decided(proposal, question)).measure().amount();
  }

  /** What cannot be put together is told by the option that asks for it. */
  private void refuseWhatCannotBe(DepthRequest request) {
    TreeSet<String> told = new TreeSet<>();
    for (BaseDesign design : request.designs()) {
      workplace.cannotBe(design, request.site()).stream()
          .filter(each -> told.add(each.toString()))
          .forEach(
              each ->
                  reader.complain(PlainWalk.option(each.field()), each.found(), each.accepted()));
    }
    reader.done();
  }
}
