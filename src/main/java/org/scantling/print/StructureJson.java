package org.scantling.print;

import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Footings;
import org.scantling.design.Structure.Member;
import org.scantling.design.Structure.Notch;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Where everything stands, what it is made of and what it stands in. */
final class StructureJson {
  private final Structure structure;

  StructureJson(Structure structure) {
    this.structure = structure;
  }

  ObjectNode layout() {
    Geometry geometry = structure.geometry();
    ObjectNode node = JsonText.object();
    put(node, "rowSpacingIn", geometry.plan().rowSpacingIn());
    node.put("bays", geometry.plan().bays());
    put(node, "bayIn", geometry.plan().bayIn());
    if (!geometry.plan().along().even()) {
      ArrayNode each = node.putArray("baysIn");
      geometry.plan().along().lengthsIn().forEach(bayIn -> each.add(JsonText.rounded(bayIn)));
    }
    put(node, "lengthIn", geometry.lengthIn());
    put(node, "bayDiagonalIn", geometry.bayDiagonalIn());
    put(node, "overallDiagonalIn", geometry.overallDiagonalIn());
    put(node, "clearWidthIn", geometry.clearWidthIn());
    put(node, "headroomIn", structure.top().headroomIn());
    if (structure.top().acrossIn() != 0) {
      put(node, "fallAcrossIn", structure.top().acrossIn());
    }
    put(node, "headerOverhangIn", geometry.headers().overhangIn());
    put(node, "crossbeamOverhangIn", geometry.crossbeams().overhangIn());
    put(node, "crossbeamSpacingIn", geometry.crossbeamSpacingIn());
    node.put("crossbeamCount", geometry.crossbeamCount());
    node.put("crossbeamPliesAtPosts", geometry.crossbeams().pliesAtPosts());
    put(node, "headerTopIn", geometry.headerTopIn());
    node.put("postCount", geometry.postCount());
    return node;
  }

  ArrayNode members() {
    ArrayNode nodes = JsonNodeFactory.instance.arrayNode();
    structure.members().forEach(member -> nodes.add(member(member)));
    return nodes;
  }

  ObjectNode footings() {
    Footings footings = structure.footings();
    ObjectNode node = JsonText.object();
    node.put("kind", footings.kind());
    put(node, "depthIn", footings.depthIn());
    put(node, "diameterIn", footings.diameterIn());
    node.put("count", footings.count());
    node.put("backfill", footings.backfill());
    if (footings.onRock()) {
      node.put("onRock", true);
    }
    return node;
  }

  private static ObjectNode member(Member member) {
    ObjectNode node = JsonText.object();
    node.put("role", member.role());
    node.put("size", member.size());
    node.put("plies", member.plies());
    put(node, "widthIn", member.breadthIn());
    put(node, "depthIn", member.depthIn());
    put(node, "lengthIn", member.lengthIn());
    node.put("count", member.count());
    node.put("species", member.species());
    node.put("grade", member.grade());
    ArrayNode notches = node.putArray("notches");
    member.notches().forEach(notch -> notches.add(notch(notch)));
    return node;
  }

  private static ObjectNode notch(Notch notch) {
    ObjectNode node = JsonText.object();
    node.put("face", notch.face());
    put(node, "atIn", notch.atIn());
    put(node, "widthIn", notch.widthIn());
    put(node, "depthIn", notch.depthIn());
    return node;
  }

  private static void put(ObjectNode node, String key, double number) {
    node.put(key, JsonText.rounded(number));
  }
}
