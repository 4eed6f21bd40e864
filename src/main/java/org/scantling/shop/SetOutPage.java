package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scantling.print.Block;
import org.scantling.print.Page;

/** The set-out as a page. */
final class SetOutPage {
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

  private void opening() {
    SetOut.Ground ground = setOut.ground();
    page.paragraph(
        "Everything is measured from A1, the center of the first post of the near row: along the walk"
            + " from it, and across to row B, which is on your left as you stand at A1 and look along"
            + " the walk. Hold the tape level. Batter boards stand "
            + said.length(ground.batterIn())
            + " outside the corners. The level line runs "
            + said.length(ground.lineOverDatumIn())
            + " above the ground at A1.");
    page.paragraph(
        "Holes are "
            + said.length(ground.holeIn())
            + " wide; the dig column says how deep, from the ground at the post. In the bottom go "
            + said.length(ground.bedIn() - ground.padIn())
            + " of gravel"
            + (ground.padIn() > 0 ? " and a pad " + said.length(ground.padIn()) + " thick" : "")
            + "."
            + (falls()
                ? " The ground falls "
                    + said.length(ground.fallIn())
                    + " from the first post to the last; with the tape lying on it, take the column on"
                    + " the ground."
                : ""));
  }

  private void posts() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        falls()
            ? List.of("at", "post", "along", "on the ground", "across", "dig")
            : List.of("at", "post", "along", "across", "dig", "post length"));
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
    page.heading("Stakes and holes").add(new Block.Grid(rows));
    page.heading("From the level line").add(new Block.Grid(levels()));
    if (setOut.ground().topsSlope()) {
      page.paragraph(
          "Tops slope: heights and lengths are to the middle of the post, the cut list's to its long"
              + " edge.");
    }
  }

  private List<List<String>> levels() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("at", "hole bottom below", "post foot below", "post top above", "post length"));
    int perRow = setOut.posts().size() / 2;
    String last = "";
    for (int i = 0; i < perRow; i++) {
      SetOut.PostMark post = setOut.posts().get(i);
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
      row.add(falls() ? post.name() + ", " + setOut.posts().get(i + perRow).name() : "all");
      row.addAll(numbers);
      rows.add(row);
    }
    return rows;
  }

  private void squaring() {
    List<Block.Item> items = new ArrayList<>();
    String last = "";
    for (SetOut.Diagonal each : setOut.diagonals()) {
      boolean overall = each == setOut.diagonals().get(setOut.diagonals().size() - 1);
      String length = said.length(each.lengthIn());
      if (!length.equals(last)) {
        boolean bay = !overall || setOut.diagonals().size() == 2;
        items.add(
            new Block.Item(
                bay && last.isEmpty() ? "Every bay" : "Overall",
                each.from() + " to " + each.to() + " and the other way, " + length));
        last = length;
      }
    }
    for (SetOut.Spacer spacer : setOut.spacers()) {
      items.add(
          new Block.Item(
              "Clear " + spacer.where(),
              said.length(spacer.lengthIn())
                  + " from face to face, "
                  + Said.counted(spacer.count(), "gap", "gaps")
                  + ": cut a spacer to it"));
    }
    page.heading("Diagonals and spacers").items(items);
  }

  private void headers() {
    List<Block.Item> items = new ArrayList<>();
    boolean turned = false;
    for (SetOut.HeaderLine line : setOut.headers()) {
      items.add(new Block.Item(Said.capital(line.line()), String.join(", ", line.pieces())));
      turned |= line.pieces().stream().anyMatch(each -> each.endsWith("turned"));
    }
    page.heading("Headers, from the first post on").items(items);
    if (turned) {
      page.paragraph("Turned: its first end toward the last post.");
    }
  }

  private void running() {
    List<Block.Item> items = new ArrayList<>();
    for (SetOut.Running running : setOut.running()) {
      items.add(
          new Block.Item(
              Said.capital(running.line()) + ", " + running.what(), said.lengths(running.atIn())));
    }
    page.heading("Running marks, the tape held at one end").items(items);
    page.paragraph("A mark with a minus is short of the center of the first post.");
  }

  private void spots() {
    if (setOut.spots().isEmpty()) {
      return;
    }
    List<Block.Item> items = new ArrayList<>();
    for (SetOut.Spot each : setOut.spots()) {
      String measures =
          each.measures().stream()
              .map(named -> named.name() + " " + said.length(named.lengthIn()))
              .collect(Collectors.joining(", "));
      items.add(
          new Block.Item(each.posts(), each.what() + (measures.isEmpty() ? "" : ": " + measures)));
    }
    page.heading("At the posts").items(items);
  }

  private void tolerances() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("near enough", "within", "by"));
    for (SetOut.Tolerance each : setOut.tolerances()) {
      String over = each.overIn() > 0 ? " in " + said.length(each.overIn()) : "";
      rows.add(
          List.of(each.what(), said.length(each.withinIn()) + over, Said.source(each.source())));
    }
    page.heading("Tolerances").add(new Block.Grid(rows));
  }
}
