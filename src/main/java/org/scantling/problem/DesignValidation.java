package org.scantling.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Stock;
import org.scantling.candidates.Grading;
import org.scantling.design.BaseDesign;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.design.ValidationError;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Length;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** What of a design cannot be put together, or not worked out in the timber of the site. */
public final class DesignValidation {
  private static final double HAIR_IN = 1e-6;

  private final BaseDesign design;
  private final Stock stock;
  private final double picketIn;
  private final List<ValidationError> found = new ArrayList<>();

  private DesignValidation(BaseDesign design, Stock stock) {
    this.design = design;
    this.stock = stock;
    this.picketIn = stock.picketEdgeIn();
  }

  public static List<ValidationError> of(BaseDesign design, Site site, Tables tables) {
    Stock stock = new Stock(tables, tables.market(site.materials().market()));
    DesignValidation validation = new DesignValidation(design, stock);
    validation.room(tables);
    validation.sinks(tables);
    validation.sides();
    validation.timber(StatedTimber.of(design, site, tables));
    return validation.found;
  }

  /** What of a base cannot be put together, whatever timber the site has. */
  static List<ValidationError> ofBase(BaseDesign base, Tables tables) {
    Stock stock = new Stock(tables, tables.market(Optional.empty()));
    DesignValidation validation = new DesignValidation(base, stock);
    validation.room(tables);
    validation.sides();
    return validation.found;
  }

  /** Whether posts and beams find room beside and in each other, whatever they are made of. */
  private void room(Tables tables) {
    double marginIn = tables.thumb("crossbeam.end-margin").amount();
    crossbeams(new BaseRecord(design, stock, marginIn).geometry());
    atPosts();
    square();
    plan();
    notches();
  }

  private void plan() {
    BaseDesign.Posts posts = design.posts();
    double breadthIn = stock.row(posts.size()).thicknessIn();
    over("posts.row-spacing", posts.rowSpacingIn(), breadthIn, "than.post");
    over("posts.bay", posts.bayIn(), breadthIn, "than.post");
    if (!posts.footing().equals(WayOfBuilding.BRACKET)) {
      over("posts.embedment", posts.embedmentIn(), 0, "than.nothing");
    }
    posts
        .holeDiameterIn()
        .ifPresent(width -> over("posts.hole-diameter", width, breadthIn, "than.post-in-hole"));
  }

  /** The checks know square posts alone. */
  private void square() {
    SizeRow row = stock.row(design.posts().size());
    if (Math.abs(row.thicknessIn() - row.widthIn()) > HAIR_IN) {
      must("posts.size", design.posts().size(), "square");
    }
  }

  private void crossbeams(Geometry laidOut) {
    if (laidOut.narrowestGapIn() <= 0) {
      must("crossbeams.count", Integer.toString(design.crossbeams().count()), "gap.crossbeams");
    }
  }

  /** Two at each row of posts take the bolts of the braces across the walk; there are no others. */
  private void atPosts() {
    boolean doubled = design.crossbeams().atPosts().equals(WayOfBuilding.DOUBLED_AT_POSTS);
    boolean braced =
        design.posts().footing().equals(WayOfBuilding.BRACKET) && design.braces().isPresent();
    if (doubled && !braced) {
      must("crossbeams.at-posts", WayOfBuilding.DOUBLED_AT_POSTS, "at-posts.braced");
    }
    double pairIn = 2 * stock.row(design.crossbeams().size()).thicknessIn();
    double postIn = stock.row(design.posts().size()).thicknessIn();
    if (doubled && pairIn > postIn + HAIR_IN) {
      must(
          "crossbeams.at-posts",
          WayOfBuilding.DOUBLED_AT_POSTS,
          "at-posts.broader",
          "size",
          design.crossbeams().size());
    }
  }

  private void notches() {
    under("headers.notch", design.headers().notchIn(), design.headers().size());
    under("crossbeams.notch", design.crossbeams().notchIn(), design.crossbeams().size());
  }

  /** The heads of lag screws are sunk into the top of a header right over its seat. */
  private void sinks(Tables tables) {
    if (!design.headers().style().equals(WayOfBuilding.ON_TOP)) {
      return;
    }
    double share = tables.shop("lag.head-sunk-share").amount();
    double sunkIn =
        tables.joints().rows().stream()
            .filter(joint -> joint.way().equals("lagged"))
            .mapToDouble(joint -> share * tables.fastener(joint.fastener()).diameterIn())
            .max()
            .orElse(0);
    double depthIn = stock.row(design.headers().size()).widthIn();
    double notchIn = design.headers().notchIn();
    if (notchIn < depthIn && notchIn + sunkIn >= depthIn) {
      must(
          "headers.notch",
          Length.feetAndInches(notchIn),
          "notch.heads",
          "most",
          Length.feetAndInches(depthIn - sunkIn));
    }
  }

  private void sides() {
    pickets();
    rail();
  }

  private void pickets() {
    double freeIn = design.posts().bayIn() - stock.row(design.posts().size()).thicknessIn();
    design
        .sidePanels()
        .filter(panels -> panels.pickets() * picketIn >= freeIn)
        .ifPresent(
            panels ->
                must(
                    "side-panels.pickets",
                    Integer.toString(panels.pickets()),
                    "gap.pickets",
                    "free",
                    Length.feetAndInches(freeIn),
                    "picket",
                    Length.feetAndInches(picketIn)));
  }

  private void rail() {
    design
        .sidePanels()
        .filter(panels -> panels.railHeightIn() >= design.posts().heightIn())
        .ifPresent(
            panels ->
                must(
                    "side-panels.rail-height",
                    Length.feetAndInches(panels.railHeightIn()),
                    "rail.height",
                    "most",
                    Length.feetAndInches(design.posts().heightIn())));
  }

  private void timber(Answers timber) {
    Grading grading = new Grading(stock, timber);
    values(grading, Question.POST_SIZE, "posts.size", design.posts().size());
    values(grading, Question.HEADER_SIZE, "headers.size", design.headers().size());
    values(grading, Question.CROSSBEAM_SIZE, "crossbeams.size", design.crossbeams().size());
    design
        .braces()
        .ifPresent(braces -> values(grading, Question.BRACE_SIZE, "braces.size", braces.size()));
    design
        .sidePanels()
        .ifPresent(sides -> values(grading, Question.RAIL_SIZE, "side-panels.rail", sides.rail()));
  }

  private void over(String field, double amountIn, double leastIn, String saying) {
    if (!(amountIn > leastIn)) {
      must(field, Length.feetAndInches(amountIn), saying, "least", Length.feetAndInches(leastIn));
    }
  }

  private void under(String field, double notchIn, String size) {
    double deepIn = stock.row(size).widthIn();
    if (notchIn >= deepIn) {
      must(
          field,
          Length.feetAndInches(notchIn),
          "notch.deep",
          "most",
          Length.feetAndInches(deepIn),
          "size",
          size);
    }
  }

  private void values(Grading grading, Question question, String field, String size) {
    if (grading.material(question, size).isEmpty()) {
      must(
          field,
          size,
          "ungraded",
          "species",
          grading.species(question),
          "grade",
          grading.grade(question, size));
    }
  }

  /**
   * @param blanks of the sentence that says what would be accepted, name and filling in turn
   */
  private void must(String field, String stands, String saying, String... blanks) {
    String accepted = Sayings.of("design-problems").say(saying, blanks);
    found.add(new ValidationError(field, stands, accepted));
  }
}
