package org.scantling.sheets;

import java.util.ArrayList;
import java.util.List;
import org.scantling.drawing.DetailDrawing;
import org.scantling.drawing.View;
import org.scantling.sayings.Sayings;
import org.scantling.shop.ListKind;
import org.scantling.shop.ListPages;

/** The page that leads to all files of a job. */
public final class IndexSheet {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  private IndexSheet() {}

  /**
   * The page of the files that are written.
   *
   * @param files their names
   */
  public static SheetDocument of(SheetSource source, List<String> files) {
    SheetParts parts = new SheetParts();
    parts.add(
        new Part.Prose(
            Part.Manner.ANSWER,
            SAYINGS.say("index.answer." + Paper.of(source.how().units()).word())));
    links(parts, "index.sheets", sheets(), files);
    links(parts, "index.drawings", drawings(), files);
    links(parts, "index.lists", lists(), files);
    return new SheetDocument(
        "index",
        source.proposal().title(),
        SAYINGS.say("kind.index"),
        SAYINGS.say("foot", "version", source.version()),
        Paper.of(source.how().units()),
        parts.parts());
  }

  private static void links(
      SheetParts parts, String heading, List<Part.Link> links, List<String> files) {
    List<Part.Link> there = links.stream().filter(each -> files.contains(each.href())).toList();
    if (!there.isEmpty()) {
      parts.heading(SAYINGS.say(heading)).add(new Part.Links(there));
    }
  }

  private static List<Part.Link> sheets() {
    List<Part.Link> links = new ArrayList<>();
    for (SheetKind kind : SheetKind.values()) {
      for (String ending : List.of(".html", ".pdf")) {
        links.add(
            new Part.Link(
                kind.word() + ending,
                kind.word() + ending,
                SAYINGS.say("index.says." + kind.word())));
      }
    }
    return links;
  }

  private static List<Part.Link> drawings() {
    List<Part.Link> links = new ArrayList<>();
    for (View view : View.values()) {
      String file = "drawings/" + view.word() + ".svg";
      links.add(new Part.Link(file, file, SAYINGS.say("index.drawing." + view.word())));
    }
    for (DetailDrawing detail : DetailDrawing.values()) {
      String file = "drawings/" + detail.word() + ".svg";
      links.add(new Part.Link(file, file, SAYINGS.say("details." + detail.word())));
    }
    for (View view : List.of(View.SET_OUT, View.SIDE, View.END)) {
      String file = "drawings/" + view.word() + ".dxf";
      String says = SAYINGS.say("index.dxf", "view", SAYINGS.say("index.drawing." + view.word()));
      links.add(new Part.Link(file, file, says));
    }
    return links;
  }

  private static List<Part.Link> lists() {
    List<Part.Link> links = new ArrayList<>();
    for (ListKind kind : ListKind.values()) {
      for (String ending : List.of("csv", "json")) {
        String file = kind.word() + "." + ending;
        String says = SAYINGS.say("index." + ending, "list", ListPages.heading(kind));
        links.add(new Part.Link(file, file, says));
      }
    }
    links.add(new Part.Link("estimate.md", "estimate.md", SAYINGS.say("index.estimate")));
    links.add(new Part.Link("estimate.csv", "estimate.csv", SAYINGS.say("index.estimate-table")));
    links.add(new Part.Link("proposal.json", "proposal.json", SAYINGS.say("index.proposal")));
    links.add(new Part.Link("design.yaml", "design.yaml", SAYINGS.say("index.design")));
    return links;
  }
}
