package org.scantling.shop;

import org.scantling.design.Point;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The cut list as JSON, with the place of every piece for drawings. */
final class CutListJson {
  private CutListJson() {}

  static void write(Lists lists, ObjectNode root) {
    ListNodes.words(root, "open", lists.pieces().open());
    ArrayNode pieces = root.putArray("pieces");
    lists.pieces().all().forEach(each -> piece(lists, each, pieces.addObject()));
    ArrayNode gangs = root.putArray("gangs");
    for (Gang gang : lists.gangs()) {
      ObjectNode node = gangs.addObject();
      ListNodes.words(node, "marks", gang.marks());
      node.put("count", gang.count()).put("from", gang.from());
      ListNodes.numbers(node, "linesIn", gang.linesIn());
      ListNodes.number(node, "depthIn", gang.depthIn());
    }
  }

  private static void piece(Lists lists, Piece piece, ObjectNode node) {
    Shape shape = piece.shape();
    PieceTimber timber = lists.timber(shape.role());
    node.put("mark", piece.mark()).put("role", shape.role()).put("size", shape.size());
    node.put("species", timber.species()).put("grade", timber.grade());
    node.put("count", piece.count());
    ListNodes.number(node, "thicknessIn", shape.breadthIn());
    ListNodes.number(node, "depthIn", shape.depthIn());
    ListNodes.number(node, "lengthIn", shape.lengthIn());
    ListNodes.number(node, "spareIn", shape.spareIn());
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
      ListNodes.number(node, "offSquareDegrees", sloping.offSquareDegrees());
      ListNodes.number(node, "setBackIn", sloping.setBackIn());
      node.put("longEdge", sloping.longEdge());
    } else if (cut instanceof EndCut.Shaped shaped) {
      node.put("cut", shaped.kind());
      ArrayNode outline = node.putArray("outline");
      for (EndCut.Corner corner : shaped.outline()) {
        ObjectNode one = outline.addObject();
        ListNodes.number(one, "backIn", corner.backIn());
        ListNodes.number(one, "downIn", corner.downIn());
      }
    } else {
      node.put("cut", "square");
    }
  }

  private static void notch(Recess recess, ObjectNode node) {
    node.put("face", recess.face());
    ListNodes.number(node, "fromIn", recess.fromIn());
    ListNodes.number(node, "atIn", recess.atIn());
    ListNodes.number(node, "widthIn", recess.widthIn());
    ListNodes.number(node, "depthIn", recess.depthIn());
    ListNodes.number(node, "acrossIn", recess.acrossIn());
    node.put("seats", recess.seat().role());
    ListNodes.number(node, "seatIn", recess.seat().widthIn());
  }

  private static void hole(Bore bore, ObjectNode node) {
    node.put("face", bore.face());
    ListNodes.number(node, "atIn", bore.atIn());
    ListNodes.number(node, "offIn", bore.offIn());
    ListNodes.number(node, "diameterIn", bore.diameterIn());
    node.put("for", bore.what());
  }

  private static void point(Point point, ObjectNode node) {
    ListNodes.number(node, "alongIn", point.alongIn());
    ListNodes.number(node, "acrossIn", point.acrossIn());
    ListNodes.number(node, "upIn", point.upIn());
  }
}
