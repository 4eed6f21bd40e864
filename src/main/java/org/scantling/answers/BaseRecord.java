package org.scantling.answers;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.BaseDesign;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;

/**
 * How the base design answers the questions: what is compared against, and where the first pass
 * starts.
 */
public final class BaseRecord {
  private final BaseDesign base;
  private final Stock stock;
  private final double endMarginIn;
  private final List<Proven> proven = new ArrayList<>();

  public BaseRecord(BaseDesign base, Stock stock, double endMarginIn) {
    this.base = base;
    this.stock = stock;
    this.endMarginIn = endMarginIn;
    plan();
    members();
    sides();
    ground();
    place();
    timber();
    clearances();
  }

  public List<Proven> facts() {
    return List.copyOf(proven);
  }

  /** The base as answers, so that every later question finds something to start from. */
  public Answers answers() {
    Answers answers = Answers.of(java.util.Map.of());
    for (Proven each : proven) {
      answers =
          answers.with(
              each.option().isEmpty()
                  ? Answer.number(each.question(), each.number())
                  : Answer.option(each.question(), each.option()));
    }
    return answers;
  }

  public Geometry geometry() {
    return AnswerGeometry.of(answers(), stock, endMarginIn, Optional.of(base.posts().along()));
  }

  private void plan() {
    number(ROW_SPACING, base.posts().rowSpacingIn());
    option(BAYS, Integer.toString(base.posts().bays()));
    number(BAY, base.posts().bayIn());
    number(POST_HEIGHT, base.posts().heightIn());
  }

  private void members() {
    boolean paired = base.headers().style().equals(WayOfBuilding.PAIRED);
    proven.add(Proven.posts(base.posts().size(), stock.row(base.posts().size()).thicknessIn()));
    option(HEADER_STYLE, base.headers().style());
    option(HEADER_SIZE, paired ? Stock.pair(base.headers().size()) : base.headers().size());
    number(HEADER_OVERHANG, base.headers().overhangIn());
    number(HEADER_NOTCH, base.headers().notchIn());
    option(CROSSBEAM_SIZE, base.crossbeams().size());
    option(CROSSBEAM_BLOCKING, WayOfBuilding.NO_BLOCKS);
    option(CROSSBEAMS_AT_POSTS, base.crossbeams().atPosts());
    number(CROSSBEAM_OVERHANG, base.crossbeams().overhangIn());
    number(CROSSBEAM_NOTCH, base.crossbeams().notchIn());
    number(CROSSBEAM_COUNT, base.crossbeams().count());
    int perBay = spacesInABay();
    option(CROSSBEAMS_PER_BAY, Integer.toString(perBay));
    number(CROSSBEAM_SPACING, base.posts().bayIn() / perBay);
  }

  private void sides() {
    base.sidePanels()
        .ifPresent(
            panels -> {
              option(RAIL_SIZE, panels.rail());
              number(RAIL_HEIGHT, panels.railHeightIn());
              number(PICKETS, panels.pickets());
            });
    option(
        BRACING, base.braces().isPresent() ? WayOfBuilding.KNEE_BRACES : WayOfBuilding.NO_BRACES);
    base.braces()
        .ifPresent(
            braces -> {
              option(BRACE_SIZE, braces.size());
              number(BRACE_LEG, braces.legIn());
            });
  }

  private void ground() {
    option(
        FOOTING_KIND,
        base.posts().footing().equals(WayOfBuilding.CONCRETE)
            ? WayOfBuilding.EMBEDDED
            : base.posts().footing());
    if (base.posts().footing().equals(WayOfBuilding.CONCRETE)) {
      option(FOOTING_BACKFILL, WayOfBuilding.CONCRETE);
    } else {
      base.posts().backfill().ifPresent(fill -> option(FOOTING_BACKFILL, fill));
    }
    number(FOOTING_DEPTH, base.posts().embedmentIn());
    base.posts().holeDiameterIn().ifPresent(width -> number(HOLE_DIAMETER, width));
  }

  private void place() {
    base.proven()
        .ifPresent(
            stood -> {
              stood.climate().frostDepthIn().ifPresent(depth -> number(FROST_DEPTH, depth));
              stood.climate().groundSnowPsf().ifPresent(snow -> number(GROUND_SNOW, snow));
              stood.climate().windSpeedMph().ifPresent(speed -> number(WIND_SPEED, speed));
              stood.climate().exposure().ifPresent(exposure -> option(EXPOSURE, exposure));
              stood.soil().ifPresent(soil -> option(SOIL, soil));
              stood.vine().ifPresent(vine -> option(VINE, vine));
            });
  }

  private void timber() {
    base.materials()
        .ifPresent(
            said -> {
              said.species().ifPresent(species -> option(SPECIES, species));
              said.grade().ifPresent(grade -> option(GRADE, grade));
              for (TimberRole role : TimberRole.values()) {
                Optional.ofNullable(said.byRole().get(role.key()))
                    .ifPresent(own -> timber(role, own));
              }
            });
  }

  private void timber(TimberRole role, Site.Timber own) {
    own.species().ifPresent(species -> option(role.species(), species));
    own.grade().ifPresent(grade -> option(role.grade(), grade));
  }

  private void clearances() {
    Geometry geometry = geometry();
    number(CLEAR_WIDTH, geometry.clearWidthIn());
    number(HEADROOM, geometry.headroomIn());
  }

  /**
   * The number of even spaces that, with those that fit on the tails, comes nearest to the base's
   * count.
   */
  private int spacesInABay() {
    double postIn = stock.row(base.posts().size()).thicknessIn();
    double halfIn = stock.row(base.crossbeams().size()).thicknessIn() / 2;
    double reachIn = postIn / 2 + base.headers().overhangIn() - Math.max(endMarginIn, halfIn);
    int best = 1;
    int bestMiss = Integer.MAX_VALUE;
    for (int spaces = 1; spaces <= base.crossbeams().count(); spaces++) {
      double spacingIn = base.posts().bayIn() / spaces;
      int onTails = 2 * (int) Math.max(0, Math.floor(reachIn / spacingIn + 1e-9));
      int inBays = base.posts().along().spaces(spaces);
      int miss = Math.abs(inBays + 1 + onTails - base.crossbeams().count());
      if (miss < bestMiss) {
        best = spaces;
        bestMiss = miss;
      }
    }
    return best;
  }

  private void number(Question question, double number) {
    proven.add(Proven.number(question, number));
  }

  private void option(Question question, String option) {
    proven.add(Proven.option(question, option));
  }
}
