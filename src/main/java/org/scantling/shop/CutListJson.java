package org.scantling.shop;

import org.scantling.design.Point;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The cut list as JSON, with the place of every piece for drawings. */
final class CutListJson {
  private CutListJson() {}

  static void write(Lists lists, ObjectNode root) {
    ListJson.words(root, "open", lists.pieces().open());
    ArrayNode pieces = root.putArray("pieces");
    lists.pieces().all().forEach(each -> piece(each, pieces.addObject()));
    ArrayNode gangs = root.putArray("gangs");
    for (Gang gang : lists.gangs()) {
      ObjectNode node = gangs.addObject();
      ListJson.words(node, "marks", gang.marks());
      node.put("count", gang.count()).put("from", gang.from());
      ListJson.numbers(node, "linesIn", gang.linesIn());
      ListJson.number(node, "depthIn", gang.depthIn());
    }
  }

  private static void piece(Piece piece, ObjectNode node) {
    Shape shape = piece.shape();
    node.put("mark", piece.mark()).put("role", shape.role()).put("size", shape.size());
    node.put("count", piece.count());
    ListJson.number(node, "thicknessIn", shape.breadthIn());
    ListJson.number(node, "depthIn", shape.depthIn());
    ListJson.number(node, "lengthIn", shape.lengthIn());
    ListJson.number(node, "spareIn", shape.spareIn());
    end(shape.ends().first(), shape.first(), node.putObject("firstEnd"));
    end(shape.ends().last(), shape.last(), node.putObject("lastEnd"));
    ArrayNode notches = node.putArray("notches");
    shape.recesses().forEach(each -> notch(each, notches.addObject()));
    ArrayNode holes = node.putArray("holes");
    shape.bores().forEach(each -> hole(each, holes.addObject()));
    ArrayNode places = node.putArray("places");
    for (Place place : piece.places()) {
      ObjectNode one = places.addObject();
      point(place.first(), one.putObject("first"));
      point(place.last(), one.putObject("last"));
    }
  }

  private static void end(String name, EndCut cut, ObjectNode node) {
    node.put("name", name);
    if (cut instanceof EndCut.Sloping sloping) {
      node.put("cut", "sloping");
      ListJson.number(node, "offSquareDegrees", sloping.offSquareDegrees());
      ListJson.number(node, "setBackIn", sloping.setBackIn());
      node.put("longEdge", sloping.longEdge());
    } else if (cut instanceof EndCut.Shaped shaped) {
      node.put("cut", shaped.kind());
      ArrayNode outline = node.putArray("outline");
      for (EndCut.Corner corner : shaped.outline()) {
        ObjectNode one = outline.addObject();
        ListJson.number(one, "backIn", corner.backIn());
        ListJson.number(one, "downIn", corner.downIn());
      }
    } else {
      node.put("cut", "square");
    }
  }

  private static void notch(Recess recess, ObjectNode node) {
    node.put("face", recess.face());
    ListJson.number(node, "fromIn", recess.fromIn());
    ListJson.number(node, "atIn", recess.atIn());
    ListJson.number(node, "widthIn", recess.widthIn());
    ListJson.number(node, "depthIn", recess.depthIn());
    ListJson.number(node, "acrossIn", recess.acrossIn());
    node.put("seats", recess.seat().role());
    ListJson.number(node, "seatIn", recess.seat().widthIn());
  }

  private static void hole(Bore bore, ObjectNode node) {
    node.put("face", bore.face());
    ListJson.number(node, "atIn", bore.atIn());
    ListJson.number(node, "offIn", bore.offIn());
    ListJson.number(node, "diameterIn", bore.diameterIn());
    node.put("for", bore.what());
  }

  private static void point(Point point, ObjectNode node) {
    ListJson.number(node, "alongIn", point.alongIn());
    ListJson.number(node, "acrossIn", point.acrossIn());
    ListJson.number(node, "upIn", point.upIn());
  }
}
