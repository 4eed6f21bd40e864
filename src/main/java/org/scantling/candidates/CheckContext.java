package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scantling.answers.AnswerGeometry;
import org.scantling.answers.Answers;
import org.scantling.answers.ResultCache;
import org.scantling.answers.Stock;
import org.scantling.concurrent.Lazy;
import org.scantling.confirm.BracedFeet;
import org.scantling.confirm.BracedWalk;
import org.scantling.confirm.CrossbeamChecks;
import org.scantling.confirm.FootSway;
import org.scantling.confirm.FootingWork;
import org.scantling.confirm.HeaderChecks;
import org.scantling.confirm.HighRow;
import org.scantling.confirm.Limits;
import org.scantling.confirm.Material;
import org.scantling.confirm.PostChecks;
import org.scantling.confirm.PostInGround;
import org.scantling.confirm.SideBlow;
import org.scantling.confirm.TopLoads;
import org.scantling.confirm.WindOnWalk;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.design.WayOfBuilding;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.loads.DurationFactors;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.rulebase.RuleBaseFault;
import org.scantling.tables.JointRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.SoilRow;
import org.scantling.tables.Sold;
import org.scantling.tables.Tables;
import org.scantling.tables.TimberUse;
import org.scantling.tables.VineRow;
import org.scantling.tables.Yard;

/**
 * Works the checks for candidates, with everything else as answered so far. What several checks
 * need is worked out once; what was worked out for an earlier pass is looked up in the cache.
 */
public final class CheckContext {
  /**
   * What is still to be decided when a check is worked.
   *
   * @param seatsOpen true where seats are cut no deeper than a size allows
   * @param asDug true where the depth of the holes is decided, false where a hole would still be
   *     dug deeper for a post that sways
   */
  private record Open(boolean seatsOpen, boolean asDug) {}

  private final Tables tables;
  private final Optional<Yard> yard;
  private final Stock stock;
  private final GivenLayout given;
  private final ResultCache cache;
  private final Answers answers;
  private final Open open;
  private final Lazy<Geometry> geometry = new Lazy<>(this::laidOut);
  private final Lazy<TopLoads> topLoads = new Lazy<>(() -> new TopLoading(this).loads());
  private final Lazy<WindOnWalk> wind = new Lazy<>(() -> new WindLoading(this).onWalk());
  private final Lazy<PostChecks.Standing> standing = new Lazy<>(this::stands);
  private final Lazy<Splice> splice = new Lazy<>(() -> HeaderCuts.of(this).splice());
  private final Lazy<HeaderChecks> headers = new Lazy<>(this::loaded);
  private final Lazy<Optional<BracedWalk>> braced = new Lazy<>(() -> BracketChecks.walk(this));

  /**
   * @param yard where the timber is bought, if its list is at hand
   * @param given what of the layout is no answer
   */
  public CheckContext(
      Tables tables,
      Optional<Yard> yard,
      Stock stock,
      GivenLayout given,
      ResultCache cache,
      Answers answers) {
    this(tables, yard, stock, given, cache, answers, new Open(false, false));
  }

  private CheckContext(
      Tables tables,
      Optional<Yard> yard,
      Stock stock,
      GivenLayout given,
      ResultCache cache,
      Answers answers,
      Open open) {
    this.open = open;
    this.tables = tables;
    this.yard = yard;
    this.stock = stock;
    this.given = given;
    this.cache = cache;
    this.answers = answers;
  }

  public Geometry geometry() {
    return geometry.get();
  }

  private Geometry laidOut() {
    return AnswerGeometry.of(answers, stock, thumb("crossbeam.end-margin"), given.told());
  }

  /** The lengths that can be bought here of what was decided for a role, shortest first. */
  public List<Double> soldIn(Question size) {
    String option = answers.option(size);
    boolean inTheGround = size == POST_SIZE && !onBrackets();
    TimberUse use =
        new TimberUse(grading().species(size), grading().grade(size, option), inTheGround);
    return Sold.of(stock.row(option).id(), use, tables, yard).lengthsIn();
  }

  /** The same context for a structure whose seats are still to be decided. */
  public CheckContext seatsOpen() {
    return new CheckContext(
        tables, yard, stock, given, cache, answers, new Open(true, open.asDug()));
  }

  /**
   * The same context with one question answered otherwise; a seat that is still open is cut no
   * deeper than the rule lets it be cut into that size.
   */
  public CheckContext with(Question question, String option) {
    Answers other = answers.with(Answer.option(question, option));
    double share = thumb("notch.interior-depth-share");
    Answers seated =
        open.seatsOpen() && question == CROSSBEAM_SIZE
            ? seated(other, CROSSBEAM_NOTCH, share * stock.row(option).widthIn())
            : open.seatsOpen() && question == HEADER_SIZE
                ? seated(other, HEADER_NOTCH, share * stock.row(option).widthIn())
                : other;
    return new CheckContext(tables, yard, stock, given, cache, seated, open);
  }

  private static Answers seated(Answers answers, Question notch, double mostIn) {
    return answers.number(notch) <= mostIn ? answers : answers.with(Answer.number(notch, mostIn));
  }

  /** The same context where every answer is final: posts stand in the holes as they are dug. */
  public CheckContext asDug() {
    return new CheckContext(
        tables, yard, stock, given, cache, answers, new Open(open.seatsOpen(), true));
  }

  /** Fall of the headers over their length in plan. */
  double fallRatio() {
    boolean follows =
        answers.has(TOP_LINE) && answers.option(TOP_LINE).equals(WayOfBuilding.FOLLOWS_GROUND);
    return follows ? given.slopeRatio() : 0;
  }

  /** Length along the headers over length in plan. */
  double stretchRatio() {
    return Math.hypot(1, fallRatio());
  }

  /** True where the header of each bay lies lower than that of the bay before. */
  boolean stepped() {
    return TopLines.stepped(answers);
  }

  /** How far off the middle of a post at a step its load acts, along the walk. */
  double stepOffIn() {
    boolean hung = stepped() && !geometry().headers().paired();
    return hung ? TopLines.hungOffIn(geometry(), thumb("step.hanger-seat")) : 0;
  }

  /** The timber of an option; empty where the standard has no such grade in that size. */
  public Optional<Material> material(Question size, String option) {
    return grading().material(size, option);
  }

  public Grading grading() {
    return new Grading(stock, answers);
  }

  /** The checks of one candidate for a size question. */
  public List<Checked> checks(Question question, String option) {
    List<Checked> checks = new ArrayList<>(unbraced(question, option));
    checks.addAll(braced(question, option));
    return checks;
  }

  /** Those of them that leave the braces out. */
  public List<Checked> unbraced(Question question, String option) {
    return material(question, option)
        .map(material -> with(question, option).alone(question, material))
        .orElse(List.of());
  }

  /** Those of them that braces add, for which frames are solved. */
  public List<Checked> braced(Question question, String option) {
    return material(question, option)
        .map(material -> BracketChecks.checks(with(question, option), question))
        .orElse(List.of());
  }

  private List<Checked> alone(Question question, Material material) {
    return switch (question) {
      case CROSSBEAM_SIZE ->
          cache.checks(
              List.of(question, geometry(), topLoads(), blow(), material),
              () -> crossbeams().of(material, blow()));
      case HEADER_SIZE ->
          cache.checks(
              List.of(
                  question,
                  geometry(),
                  splice(),
                  topLoads(),
                  timber(CROSSBEAM_SIZE),
                  sunkIn(),
                  material),
              () -> headers().of(material));
      case POST_SIZE -> onBrackets() ? List.of() : post(material);
      default -> List.of();
    };
  }

  private List<Checked> post(Material material) {
    return cache.checks(
        List.of(
            POST_SIZE,
            geometry(),
            stepOffIn(),
            splice(),
            topLoads(),
            timber(CROSSBEAM_SIZE),
            timber(HEADER_SIZE),
            standing(),
            foot(),
            dugIn(),
            turningInLb(),
            material),
        () -> {
          PostInGround ground = ground();
          List<Checked> checks = new ArrayList<>(posts().heldBy(ground).of(material));
          checks.addAll(ground.of(material));
          return checks;
        });
  }

  /** A post as the ground holds it. */
  public PostInGround ground() {
    return new PostInGround(foot(), standing(), dugIn(), limits(), sources());
  }

  /**
   * How deep a post stands; before that is decided, as deep as a hole would be dug for its sake
   * before a stouter post is taken.
   */
  public double dugIn() {
    if (open.asDug()) {
      return answers.number(FOOTING_DEPTH);
    }
    double decidedIn = answers.find(FOOTING_DEPTH).map(Answer::number).orElse(0.0);
    double frostIn = answers.find(FROST_DEPTH).map(Answer::number).orElse(0.0);
    double wideIn = answers.find(HOLE_DIAMETER).map(Answer::number).orElse(leastHoleIn());
    double heldIn = embedmentIn(wideIn);
    double deepIn =
        Math.max(
            Math.max(decidedIn, frostIn), Math.max(heldIn, thumb("footing.deeper-than-stouter")));
    return Math.min(deepIn, given.rockAtIn().orElse(Double.POSITIVE_INFINITY));
  }

  /** True where no hole goes below what is told of its own ground. */
  boolean overRock() {
    return given.rockAtIn().isPresent();
  }

  /** The hole that a post is given before any is decided. */
  public double leastHoleIn() {
    return stock.row(answers.option(POST_SIZE)).thicknessIn() * thumb("hole.width-in-posts");
  }

  /** How far the posts sway, and how deep they must stand for it, on the base that is decided. */
  public FootSway sway() {
    PostChecks posts =
        onMomentBases() ? posts().onBase(decidedBase().orElseThrow().turningInLb()) : posts();
    return new FootSway(foot(), posts, timber(POST_SIZE));
  }

  /** The walk as frames with knee braces, where it stands on brackets. */
  public Optional<BracedWalk> braced() {
    return braced.get();
  }

  /** False on brackets without braces that find room: nothing holds such posts upright. */
  public boolean upright() {
    return !onBrackets() || BracketChecks.stands(this);
  }

  public boolean onBrackets() {
    return stands(WayOfBuilding.BRACKET);
  }

  /** True where a metal base over a pier holds each post upright. */
  public boolean onMomentBases() {
    return stands(WayOfBuilding.MOMENT_BASE);
  }

  private boolean stands(String kind) {
    return answers.has(FOOTING_KIND) && answers.option(FOOTING_KIND).equals(kind);
  }

  /** True where no post reaches into its pier of concrete. */
  private boolean onPiers() {
    return onBrackets() || onMomentBases();
  }

  /**
   * How hard the base under a post is to turn; endless where the post stands in the ground. While a
   * size is tried it is the strongest base that there is: which one does is decided with the
   * joints.
   */
  private double turningInLb() {
    return onMomentBases()
        ? (open.asDug() ? decidedBase() : bases().reduce((weaker, stronger) -> stronger))
            .map(JointRow::turningInLb)
            .orElse(Double.POSITIVE_INFINITY)
        : Double.POSITIVE_INFINITY;
  }

  /** The base under the posts; before it is decided the weakest there is. */
  private Optional<JointRow> decidedBase() {
    return answers
        .find(BASE_JOINT)
        .map(each -> tables.joints().row(each.option()))
        .or(() -> bases().findFirst());
  }

  private Stream<JointRow> bases() {
    return tables.joints().rows().stream().filter(row -> row.question() == BASE_JOINT);
  }

  /** The ground in which the pier of a base stands: a given hole, or as deep as one may be dug. */
  PostInGround pierGround() {
    return (open.seatsOpen() ? this : asDug()).ground();
  }

  public List<Checked> footingChecks(double depthIn, double diameterIn) {
    return footing().of(depthIn, diameterIn, sources());
  }

  public CrossbeamChecks crossbeams() {
    return new CrossbeamChecks(geometry(), topLoads(), limits(), sources(), cache.beams());
  }

  /** Wind on the face of a crossbeam in full wind. */
  private SideBlow blow() {
    SizeRow size = stock.row(answers.option(CROSSBEAM_SIZE));
    return new SideBlow(
        wind().onCrossbeamLb() / geometry().crossbeamLengthIn(),
        tables.factors().size(answers.option(SPECIES), size).flatUseFactor());
  }

  public HeaderChecks headers() {
    return headers.get();
  }

  private HeaderChecks loaded() {
    return new HeaderChecks(
            geometry(), timber(CROSSBEAM_SIZE), topLoads(), limits(), sources(), cache.beams())
        .inPieces(splice())
        .withSinks(sunkIn());
  }

  /**
   * How the headers are pieced together: what every check of them and of what they rest on reads.
   */
  public Splice splice() {
    return splice.get();
  }

  /** How deep lag screws are sunk into the headers; those that are usual before any are decided. */
  public double sunkIn() {
    return headerJoint()
        .filter(joint -> joint.way().equals("lagged"))
        .map(joint -> tables.fastener(joint.fastener()).diameterIn())
        .map(diameterIn -> diameterIn * tables.shop("lag.head-sunk-share").amount())
        .orElse(0.0);
  }

  private Optional<JointRow> headerJoint() {
    String style = WayOfBuilding.headers(geometry().headers().paired());
    return answers
        .find(HEADER_JOINT)
        .map(joint -> tables.joints().row(joint.option()))
        .filter(joint -> joint.fits(style))
        .or(() -> tables.usualJoint(HEADER_JOINT, style));
  }

  public PostChecks posts() {
    return new PostChecks(headers(), timber(HEADER_SIZE), standing(), limits(), sources())
        .loadedOffIn(stepOffIn())
        .onBase(turningInLb());
  }

  public FootingWork footing() {
    Optional<BracedWalk> walk = braced();
    if (walk.isPresent()) {
      return new FootingWork(
          foot(), new BracedFeet(walk.get()), thumb("footing.bracket-clearance"));
    }
    return new FootingWork(
        foot(),
        standing(),
        headers(),
        new FootingWork.Beams(timber(HEADER_SIZE), timber(POST_SIZE)));
  }

  /** The depth that the push of the wind alone asks for, where nothing else is wanted. */
  public double embedmentIn(double diameterIn) {
    FootingWork work = braced().isPresent() ? footing() : FootingWork.sideways(foot(), standing());
    return work.embedment(diameterIn).depthIn();
  }

  public Material timber(Question question) {
    String option = answers.option(question);
    return material(question, option)
        .orElseThrow(
            () ->
                new RuleBaseFault("no rule stopped " + option + ", of which no strength is known"));
  }

  public TopLoads topLoads() {
    return topLoads.get();
  }

  public Limits limits() {
    return new Limits(
        new DurationFactors(
            tables.factors().loadDuration("dead").amount(),
            tables.factors().loadDuration("snow").amount(),
            tables.factors().loadDuration("roof-live").amount(),
            tables.factors().loadDuration("wind").amount()),
        tables.factor("creep.wet").amount(),
        1 / thumb("deflection.total-share"),
        1 / thumb("deflection.live-share"),
        tables.factor("effective-length.flagpole").amount(),
        tables.factor("column.shape.sawn").amount(),
        thumb("drift.height-share"),
        thumb("post.eccentricity-share"),
        thumb("header.pair-share"));
  }

  public PostChecks.Standing standing() {
    return standing.get();
  }

  private PostChecks.Standing stands() {
    WindOnWalk wind = wind();
    // No check of a post is worked before the housing of its rail is known.
    boolean railed = answers.has(RAIL_SIZE) && answers.has(RAIL_NOTCH);
    return new PostChecks.Standing(
        wind.across(),
        wind.along(),
        railed ? answers.number(RAIL_NOTCH) : 0,
        railed ? housingEdgeIn() : 0,
        geometry().plan().bays() > 1 ? 2 : 1,
        highRow(wind));
  }

  /** The posts on the higher ground, shorter by what it falls to the other row. */
  private Optional<HighRow> highRow(WindOnWalk wind) {
    return windOnHigherRow().map(wind::highRow);
  }

  /** The same wind as it comes to those posts; nothing where both rows stand alike. */
  public Optional<WindOnWalk> windOnHigherRow() {
    double shorterIn = geometry().posts().heightIn() - Math.abs(acrossIn());
    return given.across().level() || shorterIn <= 0
        ? Optional.empty()
        : Optional.of(new WindLoading(this).onWalk(shorterIn));
  }

  /**
   * Height of that edge of the housing at which the post is bent harder: the lower one where the
   * ground holds it, the upper one where its foot turns on a bracket and braces hold its head.
   */
  private double housingEdgeIn() {
    double halfIn = stock().row(answers.option(RAIL_SIZE)).widthIn() / 2;
    return answers.number(RAIL_HEIGHT) + (onBrackets() ? halfIn : -halfIn);
  }

  public WindOnWalk wind() {
    return wind.get();
  }

  /** True where the soil is trusted with twice its tabled value. */
  public boolean doubled() {
    return answers
        .find(FOOTING_SIDE)
        .filter(each -> each.option().equals(WayOfBuilding.DOUBLED))
        .isPresent();
  }

  public FootingWork.Foot foot() {
    SoilRow soil = tables.soil(answers.option(SOIL));
    return new FootingWork.Foot(
        onPiers() || answers.option(FOOTING_BACKFILL).equals(WayOfBuilding.CONCRETE),
        onPiers() ? 0 : stock.row(answers.option(POST_SIZE)).thicknessIn(),
        new PresumptiveSoil(
            soil.verticalBearingPsf(),
            soil.lateralBearingPsfPerFt(),
            soil.frictionRatio().orElse(0),
            soil.cohesionPsf().orElse(0)),
        doubled() ? thumb("footing.isolated-factor") : 1,
        new BallastWeights(thumb("footing.concrete-weight"), thumb("footing.soil-weight"), 0),
        soil.stiffening().map(SoilRow.Stiffening::lbPerIn3).orElse(0.0),
        thumb("footing.grip-share"));
  }

  VineRow vine() {
    return tables.vine(answers.option(VINE));
  }

  public Answers answers() {
    return answers;
  }

  ResultCache cache() {
    return cache;
  }

  public Stock stock() {
    return stock;
  }

  double slopeRatio() {
    return given.slopeRatio();
  }

  /** How much lower the ground lies at the second row; negative where it lies higher. */
  double acrossIn() {
    return given.across().level() ? 0 : given.across().fallIn(geometry().plan().rowSpacingIn());
  }

  public Tables tables() {
    return tables;
  }

  Function<String, Source> sources() {
    return id -> tables.check(id).source();
  }

  private double thumb(String id) {
    return tables.thumb(id).amount();
  }
}
