package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.confirm.BracedFeet;
import org.scantling.confirm.BracedWalk;
import org.scantling.confirm.CrossbeamChecks;
import org.scantling.confirm.FootingWork;
import org.scantling.confirm.HeaderChecks;
import org.scantling.confirm.Limits;
import org.scantling.confirm.Material;
import org.scantling.confirm.PostChecks;
import org.scantling.confirm.TopLoads;
import org.scantling.confirm.WindOnWalk;
import org.scantling.design.Geometry;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.loads.DurationFactors;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.SolidityBands;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.tables.SoilRow;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;

/** Works the checks for candidates, with everything else as answered so far. */
final class Bench {
  private final Tables tables;
  private final Stock stock;
  private final Answers answers;

  Bench(Tables tables, Stock stock, Answers answers) {
    this.tables = tables;
    this.stock = stock;
    this.answers = answers;
  }

  Geometry geometry() {
    return Frame.of(answers, stock, thumb("crossbeam.end-margin"));
  }

  /** The same bench with one question answered otherwise. */
  private Bench with(Question question, String option) {
    return new Bench(tables, stock, answers.with(Answer.option(question, option)));
  }

  /** The timber of an option; empty where the standard has no such grade in that size. */
  Optional<Material> material(String option) {
    return stock.material(option, answers.option(SPECIES), answers.option(GRADE));
  }

  /** The checks of one candidate for a size question. */
  List<Checked> checks(Question question, String option) {
    Optional<Material> material = material(option);
    if (material.isEmpty()) {
      return List.of();
    }
    Bench tried = with(question, option);
    List<Checked> checks = new ArrayList<>(tried.alone(question, material.get()));
    tried.braced().ifPresent(walk -> checks.addAll(new BraceBench(tried, walk).checks(question)));
    return checks;
  }

  private List<Checked> alone(Question question, Material material) {
    return switch (question) {
      case CROSSBEAM_SIZE -> crossbeams().of(material);
      case HEADER_SIZE -> headers().of(material);
      case POST_SIZE -> braced().isEmpty() ? posts().of(material) : List.of();
      default -> List.of();
    };
  }

  /** The walk as frames with knee braces, where it stands on brackets. */
  Optional<BracedWalk> braced() {
    return BraceBench.walk(this);
  }

  boolean onBrackets() {
    return answers.has(FOOTING_KIND) && answers.option(FOOTING_KIND).equals("bracket");
  }

  List<Checked> footingChecks(double depthIn, double diameterIn) {
    return footing().of(depthIn, diameterIn, sources());
  }

  CrossbeamChecks crossbeams() {
    return new CrossbeamChecks(geometry(), topLoads(), limits(), sources());
  }

  HeaderChecks headers() {
    HeaderChecks whole =
        new HeaderChecks(geometry(), timber(CROSSBEAM_SIZE), topLoads(), limits(), sources());
    double soldIn = tables.stockLengths(stock.row(answers.option(HEADER_SIZE))).longestIn();
    return geometry().headerLengthIn() > soldIn ? whole.cutOverPosts() : whole;
  }

  PostChecks posts() {
    return new PostChecks(headers(), timber(HEADER_SIZE), standing(), limits(), sources());
  }

  FootingWork footing() {
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

  Material timber(Question question) {
    return material(answers.option(question)).orElseThrow();
  }

  TopLoads topLoads() {
    double pressurePsf = answers.number(WIND_PRESSURE) * wind("wind.gust") * coveredInLeaf();
    return new TopLoads(
        answers.number(VINE_LOAD),
        answers.number(LIVE_LOAD),
        tables.live("live.person").amount(),
        answers.number(FLAT_SNOW) * answers.number(SNOW_SHARE),
        pressurePsf * wind("wind.free-roof.clear.down"),
        pressurePsf * wind("wind.free-roof.clear.up"));
  }

  /** Share of the top that timber and leaves cover in summer. */
  private double coveredInLeaf() {
    Geometry geometry = geometry();
    double solid = geometry.crossbeams().breadthIn() / geometry.crossbeamSpacingIn();
    return solid + (1 - solid) * vine().canopyFillLeafRatio();
  }

  Limits limits() {
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
        thumb("post.eccentricity-share"));
  }

  PostChecks.Standing standing() {
    WindOnWalk wind = wind();
    boolean railed = answers.has(RAIL_SIZE);
    return new PostChecks.Standing(
        wind.across(),
        wind.along(),
        railed ? answers.number(RAIL_NOTCH) : 0,
        railed ? answers.number(RAIL_HEIGHT) : 0,
        geometry().plan().bays() > 1 ? 2 : 1);
  }

  WindOnWalk wind() {
    return new WindOnWalk(geometry(), sides(), windRules());
  }

  private WindOnWalk.Sides sides() {
    if (!answers.has(RAIL_SIZE)) {
      return new WindOnWalk.Sides(0, 0, 0);
    }
    double railIn = stock.row(answers.option(RAIL_SIZE)).widthIn();
    return new WindOnWalk.Sides(railIn, answers.number(PICKETS), thumb("picket.breadth"));
  }

  private WindOnWalk.Rules windRules() {
    VineRow vine = vine();
    return new WindOnWalk.Rules(
        answers.number(WIND_PRESSURE),
        new LatticeRule(bands(), wind("wind.gust"), wind("wind.least-pressure")),
        new FoliageCover(vine.sideFillLeafRatio(), vine.dragFactor()),
        new FoliageCover(vine.sideFillBareRatio(), vine.dragFactor()),
        new WindOnWalk.Shelter(thumb("wind.sheltered-share"), thumb("wind.sheltered-depths")));
  }

  private SolidityBands bands() {
    List<SolidityBands.Band> bands =
        tables.wind().rows().stream()
            .filter(row -> row.id().startsWith("wind.lattice.flat."))
            .map(row -> new SolidityBands.Band(row.fromRatio(), row.amount()))
            .toList();
    return new SolidityBands(bands, wind("wind.lattice.solid-from"));
  }

  private FootingWork.Foot foot() {
    SoilRow soil = tables.soil(answers.option(SOIL));
    return new FootingWork.Foot(
        onBrackets() || answers.option(FOOTING_BACKFILL).equals("concrete"),
        onBrackets() ? 0 : stock.row(answers.option(POST_SIZE)).thicknessIn(),
        new PresumptiveSoil(
            soil.verticalBearingPsf(),
            soil.lateralBearingPsfPerFt(),
            soil.frictionRatio().orElse(0),
            soil.cohesionPsf().orElse(0)),
        thumb("footing.isolated-factor"),
        new BallastWeights(thumb("footing.concrete-weight"), thumb("footing.soil-weight"), 0),
        thumb("footing.grip-share"));
  }

  private VineRow vine() {
    return tables.vine(answers.option(VINE));
  }

  Answers answers() {
    return answers;
  }

  Tables tables() {
    return tables;
  }

  Function<String, Source> sources() {
    return id -> tables.check(id).source();
  }

  private double thumb(String id) {
    return tables.thumb(id).amount();
  }

  private double wind(String id) {
    return tables.wind(id).amount();
  }
}
