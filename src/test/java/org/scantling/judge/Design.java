package org.scantling.judge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** A proposal as it was printed. */
final class Design {
  private final JsonNode json;
  private final Map<String, String> decided = new HashMap<>();

  Design(JsonNode json) {
    this.json = json;
    for (JsonNode each : json.path("decisions")) {
      decided.put(
          each.path("subject").asString() + "." + each.path("attribute").asString(),
          each.path("proposed").asString());
    }
  }

  JsonNode json() {
    return json;
  }

  String decided(String question) {
    return decided.getOrDefault(question, "");
  }

  double layout(String key) {
    return json.path("layout").path(key).asDouble();
  }

  double criterion(String key) {
    return json.path("criteria").path(key).asDouble();
  }

  String criterionText(String key) {
    return json.path("criteria").path(key).asString();
  }

  double footing(String key) {
    return json.path("footings").path(key).asDouble();
  }

  String footingText(String key) {
    return json.path("footings").path(key).asString();
  }

  Optional<Member> member(String role) {
    for (JsonNode each : json.path("members")) {
      if (each.path("role").asString().equals(role)) {
        return Optional.of(new Member(each));
      }
    }
    return Optional.empty();
  }

  /** All lines of one role: pieces of other lengths have lines of their own. */
  List<Member> all(String role) {
    List<Member> all = new ArrayList<>();
    for (JsonNode each : json.path("members")) {
      if (each.path("role").asString().equals(role)) {
        all.add(new Member(each));
      }
    }
    return all;
  }

  /** Weight of a block between two crossbeams; nothing where there are none. */
  double blockLb() {
    return member("blocking").map(Member::shapedLb).orElse(0.0);
  }

  int count(String role) {
    return all(role).stream().mapToInt(Member::count).sum();
  }

  Member need(String role) {
    return member(role).orElseThrow(() -> new IllegalStateException("no " + role));
  }

  /** True where the holes stop on solid rock. */
  boolean onRock() {
    return json.path("footings").path("onRock").asBoolean(false);
  }

  /** Fall of the ground from the first row to the second. */
  double fallAcrossIn() {
    return layout("fallAcrossIn");
  }

  /** How much lower one row stands than the other. */
  double dropIn() {
    return Math.abs(fallAcrossIn());
  }

  boolean paired() {
    return decided("header.style").equals("paired");
  }

  boolean bracket() {
    return footingText("kind").equals("bracket");
  }

  /** Posts upright on metal bases over piers. */
  boolean momentBase() {
    return footingText("kind").equals("moment-base");
  }

  /** Crossbeams side by side at each row of posts. */
  int pliesAtPosts() {
    return decided("crossbeam.at-posts").equals("doubled") ? 2 : 1;
  }

  /** What a crossbeam is broad on the average of a bay, in which one place may have two of them. */
  double crossbeamBreadthIn() {
    double one = need("crossbeam").stock().thicknessIn();
    int fewest = baysIn().stream().mapToInt(this::spaces).min().orElseThrow();
    return one * (1 + (pliesAtPosts() - 1.0) / fewest);
  }

  boolean concrete() {
    return footingText("backfill").equals("concrete");
  }

  boolean metric() {
    return need("post").stock().id().length() > 4;
  }

  boolean stepped() {
    return decided("layout.top-line").contains("step");
  }

  int bays() {
    return (int) layout("bays");
  }

  /** Bays from the first on; uneven ones are printed one by one. */
  List<Double> baysIn() {
    List<Double> bays = new ArrayList<>();
    for (JsonNode each : json.path("layout").path("baysIn")) {
      bays.add(each.asDouble());
    }
    return bays.size() == bays() ? bays : Collections.nCopies(bays(), layout("bayIn"));
  }

  /** Even spaces in a bay: as few as leave none wider than the printed spacing. */
  int spaces(double bayIn) {
    return (int) Math.max(1, Math.ceil(bayIn / layout("crossbeamSpacingIn") - 1e-3));
  }

  /** Where the crossbeams lie from the first post; past the end posts as far apart as printed. */
  List<Double> crossbeamsIn() {
    List<Double> places = new ArrayList<>(List.of(0.0));
    double at = 0;
    for (double bay : baysIn()) {
      for (int i = 1; i <= spaces(bay); i++) {
        places.add(at + bay * i / spaces(bay));
      }
      at += bay;
    }
    int more = (int) layout("crossbeamCount") - places.size();
    for (int i = 1; i <= more / 2; i++) {
      places.add(0, -i * layout("crossbeamSpacingIn"));
      places.add(at + i * layout("crossbeamSpacingIn"));
    }
    return places;
  }

  /** The closest that two neighbors of them are, middle to middle. */
  double closestIn() {
    return baysIn().stream().mapToDouble(bay -> bay / spaces(bay)).min().orElseThrow();
  }

  /** Bays of each piece of a header from the first post on. */
  List<Integer> pieces() {
    String splice = decided("joint.splice");
    return splice.isEmpty()
        ? List.of(bays())
        : Arrays.stream(splice.split("\\+")).map(String::trim).map(Integer::valueOf).toList();
  }

  /** Height of the post over the ground or its bracket. */
  double postHeightIn() {
    double length = dropIn() > 0 ? longestPostIn() : need("post").lengthIn();
    if (momentBase()) {
      return length + Tables.value("thumb", "footing.bracket-clearance");
    }
    return bracket() ? length : length - footing("depthIn");
  }

  /** A post of the lower row, where one row stands lower. */
  private double longestPostIn() {
    return all("post").stream().mapToDouble(Member::lengthIn).max().orElseThrow();
  }

  double crossbeamTopIn() {
    Member crossbeam = need("crossbeam");
    return layout("headerTopIn") + crossbeam.stock().depthIn() - crossbeam.notchIn();
  }

  /** Whether the proposal itself says that the lateral soil value was doubled. */
  boolean doubled() {
    for (JsonNode each : json.path("workings")) {
      if (each.path("id").asString().equals("footing.soil")) {
        for (JsonNode input : each.path("inputs")) {
          if (input.path("name").asString().equals("increase")) {
            return input.path("value").asDouble() > 1;
          }
        }
      }
    }
    return false;
  }

  /** One kind of timber of it. */
  record Member(JsonNode json) {
    Stock stock() {
      return Stock.of(json.path("size").asString());
    }

    Wood wood() {
      return Wood.of(json.path("species").asString(), json.path("grade").asString(), stock());
    }

    String species() {
      return json.path("species").asString();
    }

    double lengthIn() {
      return json.path("lengthIn").asDouble();
    }

    int count() {
      return json.path("count").asInt();
    }

    double ownLbPerIn() {
      return wood().ownLbPerIn(stock());
    }

    /** Weight of one that is ripped to a depth of its own. */
    double shapedLb() {
      double share = json.path("depthIn").asDouble() / stock().depthIn();
      return ownLbPerIn() * share * lengthIn();
    }

    double notchIn() {
      double deepest = 0;
      for (JsonNode each : json.path("notches")) {
        deepest = Math.max(deepest, each.path("depthIn").asDouble());
      }
      return deepest;
    }

    double notchWidthIn() {
      double narrowest = Double.MAX_VALUE;
      for (JsonNode each : json.path("notches")) {
        narrowest = Math.min(narrowest, each.path("widthIn").asDouble());
      }
      return narrowest;
    }
  }
}
