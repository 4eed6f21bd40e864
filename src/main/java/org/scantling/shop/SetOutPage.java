package org.scantling.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** The set-out as a page. */
final class SetOutPage {
  private static final Sayings SAYINGS = Sayings.of("set-out");

  private final SetOut setOut;
  private final Said said;
  private final Page page;

  private SetOutPage(SetOut setOut, Said said, Page page) {
    this.setOut = setOut;
    this.said = said;
    this.page = page;
  }

  static void write(SetOut setOut, Said said, Page page) {
    SetOutPage list = new SetOutPage(setOut, said, page);
    list.opening();
    list.posts();
    list.squaring();
    list.headers();
    list.running();
    list.spots();
    list.tolerances();
  }

  private boolean falls() {
    return setOut.ground().fallIn() != 0;
  }

  private boolean across() {
    return setOut.ground().acrossIn() != 0;
  }

  private void opening() {
    SetOut.Ground ground = setOut.ground();
    page.paragraph(
        SAYINGS.say(
            "datum",
            "batter-boards",
            said.length(ground.batterIn()),
            "line",
            said.length(ground.lineOverDatumIn())));
    Map<String, String> blanks = new HashMap<>();
    blanks.put("width", said.length(ground.holeIn()));
    blanks.put(
        ground.bedIn() > 0 ? "gravel" : "rock", said.length(ground.bedIn() - ground.padIn()));
    if (ground.padIn() > 0) {
      blanks.put("pad", said.length(ground.padIn()));
    }
    if (falls()) {
      blanks.put("fall", said.length(ground.fallIn()));
    }
    if (across()) {
      int low = ground.acrossIn() < 0 ? 0 : 1;
      blanks.put("drop", said.length(Math.abs(ground.acrossIn())));
      blanks.put("low-row", Stakes.row(low));
      blanks.put("high-row", Stakes.row(1 - low));
    }
    page.paragraph(SAYINGS.say("holes", blanks));
  }

  private void posts() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        falls()
            ? ColumnHeads.of(SAYINGS, "at", "post", "along", "on-ground", "across", "dig")
            : ColumnHeads.of(SAYINGS, "at", "post", "along", "across", "dig", "length"));
    for (SetOut.PostMark post : setOut.posts()) {
      rows.add(
          falls()
              ? List.of(
                  post.name(),
                  post.mark(),
                  said.length(post.alongIn()),
                  said.length(post.onGroundIn()),
                  said.length(post.acrossIn()),
                  said.length(post.digIn()))
              : List.of(
                  post.name(),
                  post.mark(),
                  said.length(post.alongIn()),
                  said.length(post.acrossIn()),
                  said.length(post.digIn()),
                  said.length(post.lengthIn())));
    }
    page.heading(SAYINGS.say("stakes.heading")).add(new Block.Grid(rows));
    page.heading(SAYINGS.say("levels.heading")).add(new Block.Grid(levels()));
    if (setOut.ground().topsSlope()) {
      page.paragraph(SAYINGS.say("tops-slope"));
    }
  }

  private List<List<String>> levels() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "at", "bottom", "foot", "top", "length"));
    int perRow = setOut.posts().size() / 2;
    String last = "";
    for (int i = 0; i < setOut.posts().size(); i++) {
      SetOut.PostMark post = setOut.posts().get(i);
      if (i >= perRow && !across()) {
        break;
      }
      List<String> numbers =
          List.of(
              said.length(post.bottomBelowLineIn()),
              said.length(post.footBelowLineIn()),
              said.length(post.topOverLineIn()),
              said.length(post.lengthIn()));
      if (numbers.toString().equals(last)) {
        continue;
      }
      last = numbers.toString();
      List<String> row = new ArrayList<>();
      row.add(at(i, perRow));
      row.addAll(numbers);
      rows.add(row);
    }
    return rows;
  }

  /** Of which posts a line of the levels tells. */
  private String at(int place, int perRow) {
    String name = setOut.posts().get(place).name();
    if (across()) {
      return falls() ? name : SAYINGS.say("levels.row", "row", Stakes.row(place < perRow ? 0 : 1));
    }
    return falls()
        ? name + ", " + setOut.posts().get(place + perRow).name()
        : SAYINGS.say("levels.all");
  }

  private void squaring() {
    List<Block.Item> items = new ArrayList<>();
    List<SetOut.Diagonal> bays = setOut.bayDiagonals();
    if (bays.stream().map(SetOut.Diagonal::lengthIn).distinct().count() == 1) {
      items.add(diagonal("diagonal.bay", bays.get(0)));
    } else {
      bays.forEach(bay -> items.add(diagonal("diagonal.one-bay", bay)));
    }
    setOut.overallDiagonal().ifPresent(each -> items.add(diagonal("diagonal.overall", each)));
    for (SetOut.Spacer spacer : setOut.spacers()) {
      items.add(
          new Block.Item(
              SAYINGS.say("spacer.clear", "where", spacer.where()),
              SAYINGS.say(
                  "spacer",
                  "length",
                  said.length(spacer.lengthIn()),
                  "gaps",
                  Said.count(spacer.count()))));
    }
    page.heading(SAYINGS.say("squaring.heading")).items(items);
  }

  private Block.Item diagonal(String which, SetOut.Diagonal each) {
    String length = said.length(each.lengthIn());
    return new Block.Item(
        SAYINGS.say(which),
        SAYINGS.say("diagonal", "from", each.from(), "to", each.to(), "length", length));
  }

  private void headers() {
    List<Block.Item> items = new ArrayList<>();
    for (SetOut.HeaderLine line : setOut.headers()) {
      items.add(new Block.Item(Said.capital(line.line()), String.join(", ", line.pieces())));
    }
    page.heading(SAYINGS.say("headers.heading")).items(items);
    if (setOut.headers().stream().anyMatch(SetOut.HeaderLine::turned)) {
      page.paragraph(SAYINGS.say("turned"));
    }
  }

  private void running() {
    List<Block.Item> items = new ArrayList<>();
    for (SetOut.Running running : setOut.running()) {
      items.add(
          new Block.Item(
              Said.capital(SAYINGS.say("running", "line", running.line(), "what", running.what())),
              said.lengths(running.atIn())));
    }
    page.heading(SAYINGS.say("running.heading")).items(items);
    page.paragraph(SAYINGS.say("running.minus"));
  }

  private void spots() {
    if (setOut.spots().isEmpty()) {
      return;
    }
    List<Block.Item> items =
        setOut.spots().stream().map(each -> new Block.Item(each.posts(), spot(each))).toList();
    page.heading(SAYINGS.say("spots.heading")).items(items);
  }

  private String spot(SetOut.Spot spot) {
    Map<String, String> blanks = new HashMap<>(Map.of("what", spot.what()));
    if (!spot.measures().isEmpty()) {
      blanks.put(
          "measures",
          spot.measures().stream().map(this::measure).collect(Collectors.joining(", ")));
    }
    return SAYINGS.say("spot", blanks);
  }

  private String measure(SetOut.Named named) {
    return SAYINGS.say(
        "spot.measure", "name", named.name(), "length", said.length(named.lengthIn()));
  }

  private void tolerances() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "near-enough", "within", "by"));
    for (SetOut.Tolerance each : setOut.tolerances()) {
      rows.add(List.of(each.what(), within(each), Said.source(each.source())));
    }
    page.heading(SAYINGS.say("tolerances.heading")).add(new Block.Grid(rows));
  }

  private String within(SetOut.Tolerance tolerance) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("within", said.length(tolerance.withinIn()));
    if (tolerance.overIn() > 0) {
      blanks.put("over", said.length(tolerance.overIn()));
    }
    return SAYINGS.say("tolerance", blanks);
  }
}
