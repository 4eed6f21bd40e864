package org.scantling.engine;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.BaseDesign;
import org.scantling.design.Geometry;
import org.scantling.design.Misfit;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Length;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** What of a design cannot be put together, or not worked out in the timber of the site. */
final class Misfits {
  private static final double HAIR_IN = 1e-6;

  private final BaseDesign design;
  private final Stock stock;
  private final double picketIn;
  private final List<Misfit> found = new ArrayList<>();

  private Misfits(BaseDesign design, Stock stock, Tables tables) {
    this.design = design;
    this.stock = stock;
    this.picketIn = stock.picketEdgeIn();
  }

  static List<Misfit> of(BaseDesign design, Site site, Tables tables) {
    String market = site.materials().market().orElse(tables.defaults().row("market").word());
    Stock stock = new Stock(tables, market);
    Misfits misfits = new Misfits(design, stock, tables);
    double marginIn = tables.thumb("crossbeam.end-margin").amount();
    misfits.crossbeams(new BaseRecord(design, stock, marginIn).geometry());
    misfits.square();
    misfits.plan();
    misfits.notches();
    misfits.sides();
    misfits.timber(
        site.materials().species().orElse(tables.defaults().row("species").word()),
        site.materials().grade().orElse(tables.defaults().row("grade").word()));
    return misfits.found;
  }

  private void plan() {
    BaseDesign.Posts posts = design.posts();
    double breadthIn = stock.row(posts.size()).thicknessIn();
    over("posts.row-spacing", posts.rowSpacingIn(), breadthIn, "a post is broad");
    over("posts.bay", posts.bayIn(), breadthIn, "a post is broad");
    if (!posts.footing().equals(WayOfBuilding.BRACKET)) {
      over("posts.embedment", posts.embedmentIn(), 0, "nothing, for posts in the ground");
    }
    posts
        .holeDiameterIn()
        .ifPresent(
            width -> over("posts.hole-diameter", width, breadthIn, "the post in it is broad"));
  }

  /** The checks know square posts alone. */
  private void square() {
    SizeRow row = stock.row(design.posts().size());
    if (Math.abs(row.thicknessIn() - row.widthIn()) > HAIR_IN) {
      found.add(new Misfit("posts.size", design.posts().size(), "a square size, such as 4x4"));
    }
  }

  private void crossbeams(Geometry laidOut) {
    if (laidOut.crossbeamSpacingIn() <= laidOut.crossbeams().breadthIn()) {
      found.add(
          new Misfit(
              "crossbeams.count",
              Integer.toString(design.crossbeams().count()),
              "few enough that a gap is left between them"));
    }
  }

  private void notches() {
    under("headers.notch", design.headers().notchIn(), design.headers().size());
    under("crossbeams.notch", design.crossbeams().notchIn(), design.crossbeams().size());
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
                found.add(
                    new Misfit(
                        "side-panels.pickets",
                        Integer.toString(panels.pickets()),
                        "fewer than fill the "
                            + Length.feetAndInches(freeIn)
                            + " between two posts, each "
                            + Length.feetAndInches(picketIn)
                            + " broad")));
  }

  private void rail() {
    design
        .sidePanels()
        .filter(panels -> panels.railHeightIn() >= design.posts().heightIn())
        .ifPresent(
            panels ->
                found.add(
                    new Misfit(
                        "side-panels.rail-height",
                        Length.feetAndInches(panels.railHeightIn()),
                        "less than "
                            + Length.feetAndInches(design.posts().heightIn())
                            + ", the height of the posts")));
  }

  private void timber(String species, String grade) {
    values("posts.size", design.posts().size(), species, grade);
    values("headers.size", design.headers().size(), species, grade);
    values("crossbeams.size", design.crossbeams().size(), species, grade);
    design.braces().ifPresent(braces -> values("braces.size", braces.size(), species, grade));
    design
        .sidePanels()
        .ifPresent(sides -> values("side-panels.rail", sides.rail(), species, grade));
  }

  private void over(String field, double amountIn, double leastIn, String what) {
    if (!(amountIn > leastIn)) {
      found.add(
          new Misfit(
              field,
              Length.feetAndInches(amountIn),
              "more than " + (leastIn > 0 ? Length.feetAndInches(leastIn) + ", as " : "") + what));
    }
  }

  private void under(String field, double notchIn, String size) {
    SizeRow row = stock.row(size);
    if (notchIn >= row.widthIn()) {
      found.add(
          new Misfit(
              field,
              Length.feetAndInches(notchIn),
              "less than " + Length.feetAndInches(row.widthIn()) + ", as a " + size + " is deep"));
    }
  }

  private void values(String field, String size, String species, String grade) {
    if (stock.material(size, species, grade).isEmpty()) {
      found.add(
          new Misfit(
              field,
              size,
              "a size that has design values in "
                  + species
                  + " "
                  + grade
                  + ", the timber of the site"));
    }
  }
}
