package org.scantling.shop;

import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The set-out as JSON. */
final class SetOutJson {
  private SetOutJson() {}

  static void write(SetOut setOut, ObjectNode root) {
    root.put("datum", "A1");
    ground(setOut.ground(), root.putObject("ground"));
    ArrayNode posts = root.putArray("posts");
    setOut.posts().forEach(each -> post(each, posts.addObject()));
    ArrayNode diagonals = root.putArray("diagonals");
    for (SetOut.Diagonal each : setOut.diagonals()) {
      ObjectNode node = diagonals.addObject().put("from", each.from()).put("to", each.to());
      ListNodes.number(node, "lengthIn", each.lengthIn());
    }
    ArrayNode running = root.putArray("running");
    for (SetOut.Running each : setOut.running()) {
      ObjectNode node = running.addObject().put("line", each.line()).put("what", each.what());
      ListNodes.number(node, "fromIn", each.fromIn());
      ListNodes.numbers(node, "atIn", each.atIn());
    }
    ArrayNode spacers = root.putArray("spacers");
    for (SetOut.Spacer each : setOut.spacers()) {
      ObjectNode node = spacers.addObject().put("where", each.where());
      ListNodes.number(node, "lengthIn", each.lengthIn());
      node.put("count", each.count());
    }
    ArrayNode headers = root.putArray("headers");
    for (SetOut.HeaderLine each : setOut.headers()) {
      ListNodes.words(headers.addObject().put("line", each.line()), "pieces", each.pieces());
    }
    ArrayNode spots = root.putArray("spots");
    for (SetOut.Spot each : setOut.spots()) {
      ObjectNode node = spots.addObject().put("posts", each.posts()).put("what", each.what());
      ArrayNode measures = node.putArray("measures");
      for (SetOut.Named named : each.measures()) {
        ListNodes.number(
            measures.addObject().put("name", named.name()), "lengthIn", named.lengthIn());
      }
    }
    ArrayNode tolerances = root.putArray("tolerances");
    for (SetOut.Tolerance each : setOut.tolerances()) {
      ObjectNode node = tolerances.addObject().put("what", each.what());
      ListNodes.number(node, "withinIn", each.withinIn());
      ListNodes.number(node, "overIn", each.overIn());
      node.put("source", Said.source(each.source()));
    }
  }

  private static void ground(SetOut.Ground ground, ObjectNode node) {
    ListNodes.number(node, "levelLineOverDatumIn", ground.lineOverDatumIn());
    ListNodes.number(node, "fallIn", ground.fallIn());
    if (ground.acrossIn() != 0) {
      ListNodes.number(node, "fallAcrossIn", ground.acrossIn());
    }
    ListNodes.number(node, "holeDiameterIn", ground.holeIn());
    ListNodes.number(node, "bedIn", ground.bedIn());
    ListNodes.number(node, "padIn", ground.padIn());
    ListNodes.number(node, "batterBoardsIn", ground.batterIn());
  }

  private static void post(SetOut.PostMark post, ObjectNode node) {
    node.put("name", post.name()).put("post", post.mark());
    ListNodes.number(node, "alongIn", post.alongIn());
    ListNodes.number(node, "onGroundIn", post.onGroundIn());
    ListNodes.number(node, "acrossIn", post.acrossIn());
    ListNodes.number(node, "digIn", post.digIn());
    ListNodes.number(node, "bottomBelowLineIn", post.bottomBelowLineIn());
    ListNodes.number(node, "footBelowLineIn", post.footBelowLineIn());
    ListNodes.number(node, "topOverLineIn", post.topOverLineIn());
    ListNodes.number(node, "lengthIn", post.lengthIn());
  }
}
