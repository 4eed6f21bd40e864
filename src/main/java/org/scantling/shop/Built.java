package org.scantling.shop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.BaseDesign;
import org.scantling.design.CutHeaders;
import org.scantling.design.FreeStretch;
import org.scantling.design.Geometry;
import org.scantling.design.KneeBraces;
import org.scantling.design.Site;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.JointRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Sold;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** What the lists read of a proposal, its site and the tables. */
final class Built {
  private final Proposal proposal;
  private final Structure structure;
  private final Site site;
  private final Tables tables;
  private final Optional<Yard> yard;

  /**
   * @throws IllegalArgumentException when the proposal holds no structure
   */
  Built(Proposal proposal, Site site, Tables tables, Optional<Yard> yard) {
    if (!(proposal.result() instanceof Proposal.Result.Proposed done)) {
      throw new IllegalArgumentException(
          "'" + proposal.title() + "' needs an engineer, so there is nothing to list");
    }
    this.proposal = proposal;
    this.structure = done.structure();
    this.site = site;
    this.tables = tables;
    this.yard = yard;
  }

  String title() {
    return proposal.title();
  }

  Tables tables() {
    return tables;
  }

  Geometry geometry() {
    return structure.geometry();
  }

  Structure.Footings footings() {
    return structure.footings();
  }

  double slopeRatio() {
    return structure.top().slopeRatio();
  }

  /** Stretches along the walk in which no post may stand. */
  List<FreeStretch> free() {
    return site.walkway().free();
  }

  /** True where the file tells of solid rock under the ground. */
  boolean overRock() {
    return site.ground().rockAtIn().isPresent();
  }

  /** How the tops of the posts and the headers run. */
  TopLine top() {
    return structure.top();
  }

  /** The headers as they are cut. */
  CutHeaders headerPieces() {
    return structure.headers();
  }

  List<Site.Planting> planting() {
    return site.planting();
  }

  Tape tape() {
    return Tape.of(market());
  }

  String market() {
    return sizeRow("post").market();
  }

  /** All members of a role. */
  Structure.Member member(String role) {
    return structure.members().stream()
        .filter(each -> each.role().equals(role))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the structure has no " + role));
  }

  List<Structure.Member> members() {
    return structure.members();
  }

  /** The timber of a role; pickets go with the rails that hold them, all else with the posts. */
  PieceTimber timber(String role) {
    String kin = role.equals("picket") && has("rail") ? "rail" : "post";
    return PieceTimber.of(member(has(role) ? role : kin));
  }

  /** True where not everything is of one species and grade. */
  boolean mixed() {
    return structure.members().stream().map(PieceTimber::of).distinct().count() > 1;
  }

  SizeRow sizeRow(String role) {
    return tables.size(member(role).size());
  }

  boolean has(String role) {
    return structure.members().stream().anyMatch(each -> each.role().equals(role));
  }

  /**
   * True where the posts stand in the ground: a foot may stand a little high or low, so the
   * housings are marked from the level line.
   */
  boolean railsFromLine() {
    return inTheGround() && has("rail");
  }

  /** True where all rails lie at one level, so that every post has its housings as high. */
  boolean railsLevel() {
    return !top().follows() && !top().stepped() && top().acrossIn() == 0;
  }

  boolean inTheGround() {
    return footings().kind().equals(WayOfBuilding.EMBEDDED);
  }

  boolean onBrackets() {
    return footings().kind().equals(WayOfBuilding.BRACKET);
  }

  boolean paired() {
    return geometry().headers().paired();
  }

  /** Where the knee braces lie. */
  KneeBraces braces() {
    return structure.braces().orElseThrow();
  }

  /** Bays of each piece of a header, from the first post on; one number where it is whole. */
  List<Integer> headerBays() {
    return structure.headers().splice().bays();
  }

  String topLine() {
    return structure.top().kind();
  }

  String soil() {
    return word(Question.SOIL).orElse("");
  }

  String vine() {
    return word(Question.VINE).orElse("none");
  }

  JointRow joint(Question question) {
    return tables.joints().row(word(question).orElseThrow());
  }

  /** What holds each end of a block between crossbeams. */
  JointRow blockJoint() {
    return tables.joints().row(tables.defaults().row("blocking.joint").word());
  }

  Optional<JointRow> findJoint(Question question) {
    return word(question).map(tables.joints()::row);
  }

  /** What a joint is fastened with; nothing where it is steel parts. */
  Optional<FastenerRow> fastener(JointRow joint) {
    return joint.fastener().isEmpty()
        ? Optional.empty()
        : Optional.of(tables.fastener(joint.fastener()));
  }

  double number(Question question) {
    return find(question).orElseThrow();
  }

  OptionalDouble find(Question question) {
    return proposal
        .decision(question)
        .map(Decision::proposed)
        .filter(Outcome.Amount.class::isInstance)
        .map(outcome -> OptionalDouble.of(((Outcome.Amount) outcome).measure().amount()))
        .orElse(OptionalDouble.empty());
  }

  /** The tail of the base's crossbeams, and how deep the timber is that it is drawn on. */
  Optional<BaseDesign.EndCut> endCut() {
    return site.base().crossbeams().endCut();
  }

  double provenDepthIn() {
    return tables.size(site.base().crossbeams().size()).widthIn();
  }

  /** What a post's bracket must hold. */
  Rating bracketRating() {
    return new BracketLoads(proposal).rating();
  }

  /** The lengths of a size that can be bought, of any kind. */
  Sold sold(String size) {
    return Sold.of(size, tables, yard);
  }

  /** The lengths that can be bought of what pieces are cut from. */
  Sold sold(TimberPlan.Stock stock) {
    return Sold.of(stock.size(), stock.use(), tables, yard);
  }

  /** True where the yard's list has the size, but nothing of it that serves this use. */
  boolean listedForOthersOnly(TimberPlan.Stock stock) {
    return sold(stock.size()).byTheYard() && !sold(stock).byTheYard();
  }

  /** The lengths that can be bought for the posts. */
  Sold soldForPosts() {
    return Sold.of(member("post").size(), timber("post").use(inTheGround()), tables, yard);
  }

  /** A number of the shop table, its lengths rounded to what is read on the tape here. */
  Measure shopMeasure(String id) {
    Measure measure = tables.shop(id).measure();
    return measure.unit() == Unit.INCH ? Measure.inches(tape().handy(measure.amount())) : measure;
  }

  double shop(String id) {
    return shopMeasure(id).amount();
  }

  Optional<Decision> decision(Question question) {
    return proposal.decision(question);
  }

  private Optional<String> word(Question question) {
    return proposal
        .decision(question)
        .map(Decision::proposed)
        .filter(Outcome.Word.class::isInstance)
        .map(outcome -> ((Outcome.Word) outcome).text());
  }
}
