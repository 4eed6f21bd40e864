package org.scantling.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.sayings.Sayings;

/** Notches, housings and holes, those of a piece that are alike told once with all their places. */
final class CutItems {
  private static final Sayings SAYINGS = Sayings.of("cut-list");

  private final Said said;
  private final SeatWords seats;

  /**
   * @param postIn breadth of the posts
   */
  CutItems(Said said, double postIn) {
    this.said = said;
    this.seats = new SeatWords(said, postIn);
  }

  /**
   * What is the same of some cuts of a piece.
   *
   * @param saying what they are
   * @param measures the blanks of it but for the places
   */
  private record Alike(String saying, Map<String, String> measures) {}

  List<Block.Item> of(List<Piece> pieces) {
    List<Block.Item> items = new ArrayList<>();
    for (Piece piece : pieces) {
      Map<Alike, List<String>> recesses = new LinkedHashMap<>();
      for (Recess each : piece.shape().recesses()) {
        recesses.computeIfAbsent(recess(piece, each), key -> new ArrayList<>()).add(edges(each));
      }
      recesses.forEach((alike, edges) -> items.add(item(piece, alike, String.join("; ", edges))));
      Map<Alike, List<String>> bores = new LinkedHashMap<>();
      for (Bore each : piece.shape().bores()) {
        bores.computeIfAbsent(bore(each), key -> new ArrayList<>()).add(place(each));
      }
      bores.forEach((alike, places) -> items.add(item(piece, alike, String.join(", ", places))));
    }
    return items;
  }

  private static Block.Item item(Piece piece, Alike alike, String places) {
    Map<String, String> blanks = new HashMap<>(alike.measures());
    blanks.put("end", piece.shape().ends().first());
    blanks.put("places", places);
    return new Block.Item(piece.mark(), SAYINGS.say(alike.saying(), blanks));
  }

  private Alike recess(Piece piece, Recess recess) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("face", recess.face());
    blanks.put("width", said.length(recess.widthIn()));
    blanks.put("seat", seats.of(recess.seat()));
    blanks.put("depth", said.length(recess.depthIn()));
    if (recess.acrossIn() < piece.shape().breadthIn() - 1e-6) {
      blanks.put("across", said.length(recess.acrossIn()));
    }
    return new Alike(recess.seat().role().equals("rail") ? "housing" : "notch", blanks);
  }

  private String edges(Recess recess) {
    return SAYINGS.say(
        "edges", "from", said.length(recess.fromIn()), "to", said.length(recess.toIn()));
  }

  private Alike bore(Bore bore) {
    return new Alike(
        "holes",
        Map.of("width", said.length(bore.diameterIn()), "face", bore.face(), "bolt", bore.what()));
  }

  private String place(Bore bore) {
    String at = said.length(bore.atIn());
    String off = (bore.offIn() > 0 ? "+" : "") + said.length(bore.offIn());
    return bore.offIn() == 0 ? at : SAYINGS.say("hole.off-center", "at", at, "off", off);
  }
}
