package org.scantling.shop;

import java.util.HashMap;
import java.util.Map;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;

/**
 * The lists as comma-separated text: inches for programs, with millimetres beside them for a metric
 * job, and the same lengths once more as people read them.
 */
public final class ListCsv {
  private static final Sayings SAYINGS = Sayings.of("set-out");

  private final Lists lists;
  private final Said said;

  private ListCsv(Lists lists, UnitSystem units) {
    this.lists = lists;
    this.said = new Said(units);
  }

  /** One list. */
  public static String of(Lists lists, ListKind kind, UnitSystem units) {
    ListCsv csv = new ListCsv(lists, units);
    return switch (kind) {
      case CUT_LIST -> new CutListCsv(csv.lists, csv.said).text();
      case BUYING -> new BuyingCsv(lists.buying(), lists.priced(), csv.said).text();
      case SET_OUT -> csv.setOut();
      case ORDER -> csv.order();
      case CLIMBERS -> csv.climbers();
      case UPKEEP -> csv.upkeep();
    };
  }

  private String setOut() {
    SetOut setOut = lists.setOut();
    CsvTable table =
        new CsvTable(
            "kind",
            "name",
            "post",
            "along_in",
            "on_ground_in",
            "across_in",
            "dig_in",
            "bottom_below_line_in",
            "foot_below_line_in",
            "top_over_line_in",
            "length_in",
            "length",
            "note");
    setOut.posts().forEach(each -> post(table, each));
    for (SetOut.Diagonal each : setOut.diagonals()) {
      length(table, "diagonal", each.from() + "-" + each.to(), each.lengthIn());
    }
    for (SetOut.Running running : setOut.running()) {
      for (double atIn : running.atIn()) {
        table
            .row()
            .set("kind", "running")
            .set("name", SAYINGS.say("running", "line", running.line(), "what", running.what()))
            .set("along_in", atIn)
            .set("length", said.length(atIn));
      }
    }
    for (SetOut.HeaderLine each : setOut.headers()) {
      table
          .row()
          .set("kind", "header")
          .set("name", each.line())
          .set("note", String.join(", ", each.pieces()));
    }
    for (SetOut.Spot spot : setOut.spots()) {
      for (SetOut.Named each : spot.measures()) {
        length(table, "spot", spot.posts(), each.lengthIn())
            .set("note", SAYINGS.say("spot.note", "what", spot.what(), "name", each.name()));
      }
    }
    setOut.spacers().forEach(each -> length(table, "spacer", each.where(), each.lengthIn()));
    for (SetOut.Tolerance each : setOut.tolerances()) {
      length(table, "tolerance", each.what(), each.withinIn()).set("note", note(each));
    }
    return table.in(said.units()).text();
  }

  private String note(SetOut.Tolerance tolerance) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("source", Said.source(tolerance.source()));
    if (tolerance.overIn() > 0) {
      blanks.put("over", said.length(tolerance.overIn()));
    }
    return SAYINGS.say("tolerance.note", blanks);
  }

  private void post(CsvTable table, SetOut.PostMark post) {
    length(table, "post", post.name(), post.lengthIn())
        .set("post", post.mark())
        .set("along_in", post.alongIn())
        .set("on_ground_in", post.onGroundIn())
        .set("across_in", post.acrossIn())
        .set("dig_in", post.digIn())
        .set("bottom_below_line_in", post.bottomBelowLineIn())
        .set("foot_below_line_in", post.footBelowLineIn())
        .set("top_over_line_in", post.topOverLineIn());
  }

  private CsvTable.Row length(CsvTable table, String kind, String name, double lengthIn) {
    return table
        .row()
        .set("kind", kind)
        .set("name", name)
        .set("length_in", lengthIn)
        .set("length", said.length(lengthIn));
  }

  private String order() {
    CsvTable table = new CsvTable("step", "part", "text", "source");
    for (WorkOrder.Step step : lists.order(said.units()).steps()) {
      table
          .row()
          .set("step", step.number())
          .set("part", step.part())
          .set("text", step.text())
          .set("source", Said.source(step.source()));
    }
    return table.in(said.units()).text();
  }

  private String upkeep() {
    CsvTable table = new CsvTable("season", "text", "source");
    for (Upkeep.Care care : lists.upkeep(said.units()).care()) {
      table
          .row()
          .set("season", care.season())
          .set("text", care.text())
          .set("source", Said.source(care.source()));
    }
    return table.in(said.units()).text();
  }

  private String climbers() {
    CsvTable table =
        new CsvTable(
            "kind",
            "where",
            "climber",
            "off_in",
            "way",
            "wire",
            "eye",
            "wires",
            "length_in",
            "length",
            "eyes",
            "holes",
            "times",
            "places");
    for (Climbers.Plant plant : lists.climbers().plants()) {
      table
          .row()
          .set("kind", "plant")
          .set("where", plant.post())
          .set("climber", plant.vine())
          .set("off_in", plant.offIn());
    }
    for (Climbers.WireRun run : lists.climbers().runs()) {
      table
          .row()
          .set("kind", "wire")
          .set("where", run.where())
          .set("climber", run.vine())
          .set("way", run.way())
          .set("wire", run.parts().wire())
          .set("eye", run.parts().eye())
          .set("wires", run.wires())
          .set("length_in", run.lengthIn())
          .set("length", said.length(run.lengthIn()))
          .set("eyes", run.eyes())
          .set("holes", run.holes())
          .set("times", run.times())
          .set("places", said.lengths(run.heightsIn()));
    }
    return table.in(said.units()).text();
  }
}
