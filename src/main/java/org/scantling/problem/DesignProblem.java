package org.scantling.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.scantling.answers.Answers;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Fixed;
import org.scantling.answers.ResultCache;
import org.scantling.answers.Stock;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.GivenLayout;
import org.scantling.design.BaseDesign;
import org.scantling.design.Bays;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Answer;
import org.scantling.reasons.AtPostsTrial;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.RoleTimber;
import org.scantling.reasons.ServiceRecord;
import org.scantling.reasons.TimberRole;
import org.scantling.reasons.TrackRecord;
import org.scantling.tables.Market;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;
import org.scantling.tables.Yard;

/**
 * One site with its base and the tables: everything that does not change while the engine works.
 */
public final class DesignProblem {
  /** The preference that tries no alternatives: the proven rhythm decides. */
  public static final String KEEP_LOOK = "look";

  /** The basis by which rules may read the record; they have no use for it by another. */
  private static final String BY_RECORD = "proven";

  private final Site site;
  private final Tables tables;
  private final Overrides overrides;
  private final String market;
  private final Stock stock;
  private final BaseRecord base;
  private final Offer offer;
  private final ResultCache cache;
  private final List<Fact> facts = new ArrayList<>();

  /**
   * What is laid down besides the site and the tables.
   *
   * @param bayCounts every number of bays that is to be tried
   * @param trials what came of trying each of them
   * @param fixed the answers that a given design fixes
   * @param record how the base has stood, where that is known; worked out meanwhile
   * @param yard what the yard sells, where it gave a list
   * @param told the bays, where the site or a given design tells them one by one
   */
  private record Overrides(
      List<Integer> bayCounts,
      List<BayTrial> trials,
      Fixed fixed,
      Supplier<Optional<TrackRecord>> record,
      Optional<Yard> yard,
      Optional<Bays> told) {}

  /**
   * @param cache what was worked out before, with the same tables
   */
  public DesignProblem(Site site, Tables tables, ResultCache cache) {
    this(
        site,
        tables,
        cache,
        new Overrides(
            possibleBays(site, tables),
            List.of(),
            Fixed.nothing(),
            Optional::empty,
            Optional.empty(),
            site.walkway().divided()));
  }

  private DesignProblem(Site site, Tables tables, ResultCache cache, Overrides overrides) {
    this.cache = cache;
    this.site = site;
    this.tables = tables;
    this.overrides = overrides;
    this.market = Market.of(site.materials().market(), tables);
    this.stock = new Stock(tables, market);
    this.base = record(site.base());
    this.offer = new Offer(stock, madeOf(base.facts(), tables));
    facts.addAll(SiteFacts.of(site, tables));
    facts.addAll(base.facts());
    site.base()
        .proven()
        .map(stood -> new ServiceRecord(stood.builtYear(), stood.slopePercent()))
        .ifPresent(facts::add);
    facts.addAll(offer.matches());
    facts.addAll(roleTimbers(site));
    facts.addAll(overrides.trials());
    if (readsRecord()) {
      record().ifPresent(record -> facts.addAll(record.checks()));
    }
  }

  /** The same problem with what came of trying every number of bays. */
  public DesignProblem withTrials(List<BayTrial> trials) {
    return trials.isEmpty()
        ? this
        : with(
            new Overrides(
                overrides.bayCounts(),
                trials,
                overrides.fixed(),
                overrides.record(),
                overrides.yard(),
                overrides.told()));
  }

  /** The same problem with that number of bays and no other. */
  public DesignProblem withBays(int bays) {
    return with(
        new Overrides(
            List.of(bays),
            List.of(),
            overrides.fixed(),
            overrides.record(),
            overrides.yard(),
            overrides.told()));
  }

  /** The same problem with a cache of its own, for another core. */
  public DesignProblem forAnotherCore() {
    return new DesignProblem(site, tables, cache.another(), overrides);
  }

  /** The same problem with how the base has stood. */
  public DesignProblem withRecord(Supplier<Optional<TrackRecord>> record) {
    return with(
        new Overrides(
            overrides.bayCounts(),
            overrides.trials(),
            overrides.fixed(),
            record,
            overrides.yard(),
            overrides.told()));
  }

  /** The same problem with a structure that is decided already. */
  public DesignProblem withDesign(BaseDesign design) {
    return with(
        new Overrides(
            List.of(design.posts().bays()),
            List.of(),
            Fixed.by(record(design)),
            overrides.record(),
            overrides.yard(),
            Optional.of(design.posts().along())));
  }

  /** The same problem with timber from a yard whose list is at hand. */
  public DesignProblem withYard(Optional<Yard> yard) {
    return yard.isEmpty()
        ? this
        : with(
            new Overrides(
                overrides.bayCounts(),
                overrides.trials(),
                overrides.fixed(),
                overrides.record(),
                yard,
                overrides.told()));
  }

  private DesignProblem with(Overrides others) {
    return new DesignProblem(site, tables, cache, others);
  }

  /** What the base is made of, with the usual brace where it has none. */
  private static List<Proven> madeOf(List<Proven> base, Tables tables) {
    if (base.stream().anyMatch(each -> each.question() == Question.BRACE_SIZE)) {
      return base;
    }
    List<Proven> all = new ArrayList<>(base);
    all.add(Proven.option(Question.BRACE_SIZE, tables.defaults().row("brace").word()));
    return all;
  }

  private BaseRecord record(BaseDesign design) {
    return new BaseRecord(design, stock, tables.thumb("crossbeam.end-margin").amount());
  }

  /** What a given design fixes; nothing where the structure is yet to be decided. */
  public Fixed fixed() {
    return overrides.fixed();
  }

  /** How a given design answers a question, if it does. */
  public Optional<Answer> fixed(Question question, Answers soFar) {
    return overrides.fixed().any()
        ? overrides.fixed().answer(question, soFar, fallIn(soFar))
        : Optional.empty();
  }

  /** True where rules may ease a check by how the base has stood. */
  public boolean readsRecord() {
    return site.preferences().basis().equals(BY_RECORD);
  }

  /** How the base has stood, where that is known. */
  public Optional<TrackRecord> record() {
    return overrides.record().get();
  }

  /**
   * Where the first pass starts: the given design, else the base. Brackets of the base that are not
   * to be give way at once: their braces would ask for bolts before it is decided how the posts
   * stand.
   */
  public Answers start(List<Fact> tried) {
    if (overrides.fixed().any()) {
      return overrides.fixed().start();
    }
    Answers all =
        doubled(tried)
            ? base.answers()
                .with(Answer.option(Question.CROSSBEAMS_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS))
            : base.answers();
    boolean hinged =
        all.has(Question.FOOTING_KIND)
            && all.option(Question.FOOTING_KIND).equals(WayOfBuilding.BRACKET);
    return hinged
        ? otherwise(tried)
            .map(kind -> all.with(Answer.option(Question.FOOTING_KIND, kind)))
            .orElse(all)
        : all;
  }

  /** True where crossbeams are asked doubled at the posts, have to be, or may serve better so. */
  private boolean doubled(List<Fact> tried) {
    return site.preferences().crossbeamsAtPosts().equals(WayOfBuilding.DOUBLED_AT_POSTS)
        || ledNowhere(Question.CROSSBEAMS_AT_POSTS, tried)
        || tried.stream().anyMatch(AtPostsTrial.class::isInstance);
  }

  private static boolean ledNowhere(Question question, List<Fact> tried) {
    return tried.stream()
        .anyMatch(each -> each instanceof DeadEnd end && end.question() == question);
  }

  /** How posts are asked to stand by themselves, or have to since brackets have led nowhere. */
  private Optional<String> otherwise(List<Fact> tried) {
    String asked = site.preferences().footing();
    if (List.of(WayOfBuilding.EMBEDDED, WayOfBuilding.CONCRETE).contains(asked)) {
      return Optional.of(WayOfBuilding.EMBEDDED);
    }
    return asked.equals(WayOfBuilding.MOMENT_BASE) || ledNowhere(Question.FOOTING_KIND, tried)
        ? Optional.of(WayOfBuilding.MOMENT_BASE)
        : Optional.empty();
  }

  /** What the ground falls along one bay. */
  public double fallIn(Answers soFar) {
    return site.ground().slopePercent() / 100 * soFar.number(Question.BAY);
  }

  /**
   * The walk in so many bays: as the site or a given design tells them one by one, else alike but
   * for posts that have to move.
   */
  public Bays bays(int count) {
    return overrides
        .told()
        .filter(told -> told.count() == count)
        .orElseGet(() -> site.walkway().into(count));
  }

  /** Bays that are not so many of one length, for these answers. */
  private Optional<Bays> uneven(Answers answers) {
    boolean moved = !site.walkway().free().isEmpty() && answers.has(Question.BAYS);
    return overrides
        .told()
        .or(
            () ->
                moved
                    ? Optional.of(bays(Integer.parseInt(answers.option(Question.BAYS))))
                        .filter(bays -> !bays.even())
                    : Optional.empty());
  }

  /** Every number of bays that could divide the walk. */
  public List<Integer> bayCounts() {
    return overrides.bayCounts();
  }

  /**
   * The numbers of bays that are tried as whole structures: all whose bays the rules take and that
   * differ enough, or as many as the row allows, spread evenly. On a long walk there are over a
   * hundred, and neighbours hardly differ.
   *
   * @param allowed false for a number that the rules stop
   */
  public List<Integer> triedWhole(IntPredicate allowed) {
    double longestIn = tables.thumb("bay.longest").amount();
    double apartRatio = tables.thumb("bay.tried-apart").amount();
    int most = (int) Math.round(tables.thumb("bay.tried-most").amount());
    double lengthIn = site.walkway().lengthIn();
    List<Integer> apart = new ArrayList<>();
    for (int bays : bayCounts()) {
      boolean near = !apart.isEmpty() && bays < (1 + apartRatio) * apart.get(apart.size() - 1);
      if (lengthIn / bays <= longestIn && allowed.test(bays) && !near) {
        apart.add(bays);
      }
    }
    return spread(apart, most);
  }

  private static List<Integer> spread(List<Integer> all, int most) {
    if (all.size() <= most) {
      return all;
    }
    return IntStream.range(0, most)
        .map(i -> most == 1 ? 0 : Math.round((float) i * (all.size() - 1) / (most - 1)))
        .mapToObj(all::get)
        .distinct()
        .toList();
  }

  private static List<Integer> possibleBays(Site site, Tables tables) {
    double leastIn = tables.thumb("bay.least").amount();
    if (site.walkway().divided().isPresent()) {
      return List.of(site.walkway().baysIn().size());
    }
    int fitting = Math.max(1, (int) Math.ceil(site.walkway().lengthIn() / leastIn));
    int most = Math.max(fitting, site.walkway().bays().orElse(1));
    return IntStream.rangeClosed(1, most).boxed().toList();
  }

  public Site site() {
    return site;
  }

  public Tables tables() {
    return tables;
  }

  public Stock stock() {
    return stock;
  }

  public Offer offer() {
    return offer;
  }

  public BaseRecord base() {
    return base;
  }

  public ResultCache cache() {
    return cache;
  }

  /** The context in which checks are worked, with the answers so far. */
  public CheckContext context(Answers answers) {
    CheckContext context =
        new CheckContext(
            tables,
            overrides.yard(),
            stock,
            new GivenLayout(site.ground().slopePercent() / 100, uneven(answers)),
            cache,
            answers);
    return overrides.fixed().any() ? context : context.seatsOpen();
  }

  /** What one role is made of, where it is another than the rest. */
  public Optional<RoleTimber> ofRole(Question question) {
    return facts.stream()
        .filter(RoleTimber.class::isInstance)
        .map(RoleTimber.class::cast)
        .filter(each -> each.question() == question)
        .findFirst();
  }

  /** By the site file, or where it says nothing of timber by the base. */
  private static List<RoleTimber> roleTimbers(Site site) {
    boolean asked = site.materials().named();
    Site.Materials said =
        asked ? site.materials() : site.base().materials().orElse(site.materials());
    List<RoleTimber> timbers = new ArrayList<>();
    for (TimberRole role : TimberRole.values()) {
      Site.Timber timber = said.byRole().get(role.key());
      if (timber != null) {
        timber.species().ifPresent(it -> timbers.add(new RoleTimber(role.species(), it, asked)));
        timber.grade().ifPresent(it -> timbers.add(new RoleTimber(role.grade(), it, asked)));
      }
    }
    return timbers;
  }

  /** The site's demands and the base's answers. */
  public List<Fact> facts() {
    return facts;
  }

  /** True where the timber comes in metric sizes. */
  public boolean metric() {
    return Market.isMetric(market);
  }

  public boolean railed() {
    return overrides.fixed().any()
        ? overrides.fixed().has(Question.RAIL_SIZE)
        : site.base().sidePanels().isPresent();
  }

  /** The words that answer a question, least demanding first. */
  public List<String> words(Question question) {
    return switch (question) {
      case EXPOSURE -> tables.exposures().rows().stream().map(row -> row.id()).toList();
      case SOIL -> tables.soils().rows().stream().map(row -> row.id()).toList();
      case VINE -> vines();
      case SPECIES, POST_SPECIES, HEADER_SPECIES, CROSSBEAM_SPECIES, RAIL_SPECIES, BRACE_SPECIES ->
          tables.designValues().rows().stream().map(row -> row.species()).distinct().toList();
      case GRADE ->
          tables.designValues().rows().stream().map(row -> row.grade()).distinct().toList();
      case POST_GRADE, HEADER_GRADE, CROSSBEAM_GRADE, RAIL_GRADE, BRACE_GRADE -> stock.grades();
      case HEADER_STYLE -> List.of(WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED);
      case CROSSBEAM_BLOCKING -> List.of(WayOfBuilding.NO_BLOCKS, WayOfBuilding.OVER_HEADERS);
      case TOP_LINE ->
          List.of(WayOfBuilding.LEVEL, WayOfBuilding.FOLLOWS_GROUND, WayOfBuilding.STEPPED);
      case FOOTING_KIND ->
          List.of(WayOfBuilding.EMBEDDED, WayOfBuilding.BRACKET, WayOfBuilding.MOMENT_BASE);
      case FOOTING_BACKFILL ->
          List.of(WayOfBuilding.TAMPED_SOIL, WayOfBuilding.GRAVEL, WayOfBuilding.CONCRETE);
      case FOOTING_SIDE -> List.of(WayOfBuilding.AS_TABLED, WayOfBuilding.DOUBLED);
      case BRACING -> List.of(WayOfBuilding.NO_BRACES, WayOfBuilding.KNEE_BRACES);
      case CROSSBEAMS_AT_POSTS ->
          List.of(WayOfBuilding.SINGLE_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS);
      default -> throw new IllegalArgumentException(question.id() + " is not answered by a word");
    };
  }

  private List<String> vines() {
    return tables.vines().rows().stream()
        .sorted(
            Comparator.comparingDouble(VineRow::wetDesignPsf)
                .thenComparingDouble(VineRow::sideFillLeafRatio)
                .thenComparing(VineRow::id))
        .map(VineRow::id)
        .toList();
  }
}
