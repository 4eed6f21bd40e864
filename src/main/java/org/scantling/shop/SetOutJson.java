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
      ListJson.number(node, "lengthIn", each.lengthIn());
    }
    ArrayNode running = root.putArray("running");
    for (SetOut.Running each : setOut.running()) {
      ObjectNode node = running.addObject().put("line", each.line()).put("what", each.what());
      ListJson.number(node, "fromIn", each.fromIn());
      ListJson.numbers(node, "atIn", each.atIn());
    }
    ArrayNode spacers = root.putArray("spacers");
    for (SetOut.Spacer each : setOut.spacers()) {
      ObjectNode node = spacers.addObject().put("where", each.where());
      ListJson.number(node, "lengthIn", each.lengthIn());
      node.put("count", each.count());
    }
    ArrayNode headers = root.putArray("headers");
    for (SetOut.HeaderLine each : setOut.headers()) {
      ListJson.words(headers.addObject().put("line", each.line()), "pieces", each.pieces());
    }
    ArrayNode spots = root.putArray("spots");
    for (SetOut.Spot each : setOut.spots()) {
      ObjectNode node = spots.addObject().put("posts", each.posts()).put("what", each.what());
      ArrayNode measures = node.putArray("measures");
      for (SetOut.Named named : each.measures()) {
        ListJson.number(
            measures.addObject().put("name", named.name()), "lengthIn", named.lengthIn());
      }
    }
    ArrayNode tolerances = root.putArray("tolerances");
    for (SetOut.Tolerance each : setOut.tolerances()) {
      ObjectNode node = tolerances.addObject().put("what", each.what());
      ListJson.number(node, "withinIn", each.withinIn());
      ListJson.number(node, "overIn", each.overIn());
      node.put("source", Said.source(each.source()));
    }
  }

  private static void ground(SetOut.Ground ground, ObjectNode node) {
    ListJson.number(node, "levelLineOverDatumIn", ground.lineOverDatumIn());
    ListJson.number(node, "fallIn", ground.fallIn());
    ListJson.number(node, "holeDiameterIn", ground.holeIn());
    ListJson.number(node, "bedIn", ground.bedIn());
    ListJson.number(node, "padIn", ground.padIn());
    ListJson.number(node, "batterBoardsIn", ground.batterIn());
  }

  private static void post(SetOut.PostMark post, ObjectNode node) {
    node.put("name", post.name()).put("post", post.mark());
    ListJson.number(node, "alongIn", post.alongIn());
    ListJson.number(node, "onGroundIn", post.onGroundIn());
    ListJson.number(node, "acrossIn", post.acrossIn());
    ListJson.number(node, "digIn", post.digIn());
    ListJson.number(node, "bottomBelowLineIn", post.bottomBelowLineIn());
    ListJson.number(node, "footBelowLineIn", post.footBelowLineIn());
    ListJson.number(node, "topOverLineIn", post.topOverLineIn());
    ListJson.number(node, "lengthIn", post.lengthIn());
  }
}
