package org.scantling.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;

/** Whether the lists cut, buy and set out what is proposed. */
final class ListJudge {
  private static final double CLOSE_IN = 0.05;
  private static final double KERF_IN = 0.1;

  private final Design design;
  private final JsonNode cutting;
  private final List<String> faults = new ArrayList<>();

  ListJudge(Design design, JsonNode cutting) {
    this.design = design;
    this.cutting = cutting;
  }

  List<String> faults(JsonNode buying, JsonNode setOut) {
    for (String role : List.of("post", "crossbeam", "rail", "brace")) {
      design.member(role).ifPresent(member -> count(role, member));
    }
    headers();
    for (JsonNode piece : cutting.path("pieces")) {
      places(piece);
      cuts(piece);
    }
    saws(buying);
    for (JsonNode line : buying.path("lines")) {
      covers(line);
    }
    setsOut(setOut);
    return faults;
  }

  private void count(String role, Design.Member member) {
    int count = 0;
    double longestIn =
        design.all(role).stream().mapToDouble(Design.Member::lengthIn).max().orElseThrow();
    for (JsonNode piece : cutting.path("pieces")) {
      if (piece.path("role").asString().equals(role)) {
        count += piece.path("count").asInt();
        boolean tooLong =
            !role.equals("brace")
                && !design.stepped()
                && piece.path("lengthIn").asDouble() > longestIn + 1;
        if (tooLong || !piece.path("size").asString().equals(member.stock().id())) {
          faults.add(mark(piece) + " is not the " + role + " of the proposal");
        }
      }
    }
    if (count != design.count(role)) {
      faults.add(count + " " + role + "s are cut, " + design.count(role) + " are proposed");
    }
  }

  /** All boards of the headers together, and no two in one place. */
  private void headers() {
    double cut = 0;
    Map<String, List<double[]>> lines = new HashMap<>();
    for (JsonNode piece : cutting.path("pieces")) {
      if (!piece.path("role").asString().equals("header")) {
        continue;
      }
      cut += piece.path("count").asInt() * piece.path("lengthIn").asDouble();
      for (JsonNode place : piece.path("places")) {
        JsonNode first = place.path("first");
        String line =
            "%.1f %.1f".formatted(first.path("acrossIn").asDouble(), first.path("upIn").asDouble());
        double from = first.path("alongIn").asDouble();
        double to = place.path("last").path("alongIn").asDouble();
        lines
            .computeIfAbsent(line, key -> new ArrayList<>())
            .add(new double[] {Math.min(from, to), Math.max(from, to)});
      }
    }
    double proposed =
        design.all("header").stream().mapToDouble(line -> line.count() * line.lengthIn()).sum();
    if (!design.stepped() && Math.abs(cut - proposed) > 0.01 * proposed) {
      faults.add("headers are cut to " + cut + " in together, " + proposed + " are proposed");
    }
    for (List<double[]> line : lines.values()) {
      line.sort((a, b) -> Double.compare(a[0], b[0]));
      for (int i = 0; i + 1 < line.size(); i++) {
        if (line.get(i)[1] > line.get(i + 1)[0] + CLOSE_IN) {
          faults.add("two headers lie in one place at " + line.get(i + 1)[0]);
        }
      }
    }
  }

  private void places(JsonNode piece) {
    if (piece.path("places").size() != piece.path("count").asInt()) {
      faults.add(mark(piece) + " has as many places as it has not pieces");
    }
    for (JsonNode place : piece.path("places")) {
      double square = 0;
      for (String way : List.of("alongIn", "acrossIn", "upIn")) {
        double run =
            place.path("last").path(way).asDouble() - place.path("first").path(way).asDouble();
        square += run * run;
      }
      double reach = Math.sqrt(square);
      if (reach > piece.path("lengthIn").asDouble() + CLOSE_IN) {
        faults.add(mark(piece) + " reaches " + reach + " and is cut shorter");
      }
    }
  }

  private void cuts(JsonNode piece) {
    for (JsonNode notch : piece.path("notches")) {
      double deep = notch.path("depthIn").asDouble();
      double from = notch.path("fromIn").asDouble();
      if (deep < 0
          || deep > piece.path("depthIn").asDouble() / 2
          || from < -CLOSE_IN
          || from + notch.path("widthIn").asDouble() > piece.path("lengthIn").asDouble() + 1) {
        faults.add(mark(piece) + " has a notch that it cannot have: " + notch);
      }
    }
  }

  /** Every piece comes out of one stick, and no stick is shorter than what comes out of it. */
  private void saws(JsonNode buying) {
    Map<String, Double> lengths = new HashMap<>();
    Map<String, Integer> wanted = new TreeMap<>();
    for (JsonNode piece : cutting.path("pieces")) {
      String mark = piece.path("mark").asString();
      lengths.put(mark, piece.path("lengthIn").asDouble());
      wanted.merge(mark, piece.path("count").asInt(), Integer::sum);
    }
    for (JsonNode size : buying.path("sawing")) {
      for (JsonNode stick : size.path("sticks")) {
        double used = -KERF_IN;
        for (JsonNode mark : stick.path("pieces")) {
          used += lengths.getOrDefault(mark.asString(), 0.0) + KERF_IN;
          wanted.merge(mark.asString(), -stick.path("count").asInt(), Integer::sum);
        }
        if (used > stick.path("lengthIn").asDouble() + CLOSE_IN) {
          faults.add("a stick of " + stick.path("lengthIn") + " is to give " + used);
        }
      }
      for (JsonNode special : size.path("special")) {
        String mark = special.path("mark").asString();
        wanted.merge(mark, -special.path("count").asInt(), Integer::sum);
        if (special.path("lengthIn").asDouble() < lengths.getOrDefault(mark, 0.0) - CLOSE_IN) {
          faults.add("a special order for " + mark + " is too short: " + special);
        }
      }
    }
    wanted.forEach(
        (mark, left) -> {
          if (left != 0) {
            faults.add(left + " pieces " + mark + " come out of no stick");
          }
        });
  }

  private void covers(JsonNode line) {
    boolean counted = List.of("stick", "piece").contains(line.path("unit").asString());
    if (counted && line.path("buy").asDouble() < line.path("needed").asDouble() - 1e-6) {
      faults.add("too little is bought: " + line);
    }
  }

  private void setsOut(JsonNode setOut) {
    double rows = design.layout("rowSpacingIn");
    for (JsonNode post : setOut.path("posts")) {
      boolean second = post.path("name").asString().startsWith("B");
      if (Math.abs(post.path("acrossIn").asDouble() - (second ? rows : 0)) > CLOSE_IN) {
        faults.add("post " + post.path("name") + " stands off its row");
      }
      double over = post.path("footBelowLineIn").asDouble() + post.path("topOverLineIn").asDouble();
      if (!design.bracket()
          && !design.momentBase()
          && Math.abs(over - post.path("lengthIn").asDouble()) > CLOSE_IN) {
        faults.add(
            "post "
                + post.path("name")
                + " is cut to "
                + post.path("lengthIn")
                + " and reaches "
                + over);
      }
    }
    if (setOut.path("posts").size() != design.layout("postCount")) {
      faults.add("posts set out: " + setOut.path("posts").size());
    }
  }

  private static String mark(JsonNode piece) {
    return piece.path("mark").asString();
  }
}
