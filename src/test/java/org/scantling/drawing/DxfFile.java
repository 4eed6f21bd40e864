package org.scantling.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A strict reader of DXF as Release 12 has it: pairs of lines, a number and a value of the kind
 * that the number stands for; sections in their order; every layer and kind of line that is named
 * is defined; every vertex within its polyline.
 *
 * <p>Source: the published group codes of AutoCAD Release 12, chapter on drawing interchange files.
 */
record DxfFile(Map<String, String> header, Set<String> layers, List<Entity> entities) {
  private static final int COMMENT = 999;

  /** A group: a code and what stands under it. */
  record Group(int code, String value) {
    double number() {
      return Double.parseDouble(value);
    }
  }

  /** Something drawn, its own groups, and of a polyline the vertices. */
  record Entity(String kind, List<Group> groups, List<double[]> vertices) {
    String text(int code) {
      return groups.stream()
          .filter(each -> each.code() == code)
          .map(Group::value)
          .findFirst()
          .orElseThrow(() -> new AssertionError(kind + " has no group " + code));
    }

    double number(int code) {
      return Double.parseDouble(text(code));
    }

    boolean has(int code) {
      return groups.stream().anyMatch(each -> each.code() == code);
    }

    String layer() {
      return text(8);
    }

    boolean closed() {
      return has(70) && (int) number(70) == 1;
    }

    double least(int axis) {
      return vertices.stream().mapToDouble(each -> each[axis]).min().orElseThrow();
    }

    double most(int axis) {
      return vertices.stream().mapToDouble(each -> each[axis]).max().orElseThrow();
    }
  }

  static DxfFile read(String text) {
    return new Reading(groups(text)).file();
  }

  private static List<Group> groups(String text) {
    List<String> lines = text.lines().toList();
    if (lines.size() % 2 != 0) {
      throw new AssertionError("an odd number of lines: " + lines.size());
    }
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < lines.size(); i += 2) {
      if (!lines.get(i).matches(" {0,2}\\d{1,3}")) {
        throw new AssertionError("line " + (i + 1) + " is no group code: " + lines.get(i));
      }
      Group group = new Group(Integer.parseInt(lines.get(i).strip()), lines.get(i + 1));
      check(group, i + 2);
      if (group.code() != COMMENT) {
        groups.add(group);
      }
    }
    return groups;
  }

  /** Codes 0 to 9 are text, 10 to 59 numbers, 60 to 79 whole numbers. */
  private static void check(Group group, int line) {
    boolean good = group.value().matches(kind(group.code()));
    boolean ascii = group.value().codePoints().allMatch(sign -> sign >= ' ' && sign < 127);
    if (!good || !ascii) {
      throw new AssertionError("line " + line + " is no value of " + group.code() + ": " + group);
    }
  }

  private static String kind(int code) {
    if (code < 10 || code == COMMENT) {
      return ".{0,255}";
    }
    return code < 60 ? "-?\\d+\\.\\d+" : code < 80 ? "-?\\d+" : "nothing of Release 12";
  }

  /** Goes through the groups once. */
  private static final class Reading {
    private final List<Group> groups;
    private int at;
    private final Map<String, String> header = new LinkedHashMap<>();
    private final Map<String, List<Group>> lines = new LinkedHashMap<>();
    private final Map<String, List<Group>> layers = new LinkedHashMap<>();
    private final List<Entity> entities = new ArrayList<>();

    Reading(List<Group> groups) {
      this.groups = groups;
    }

    DxfFile file() {
      for (String section : List.of("HEADER", "TABLES", "ENTITIES")) {
        take(0, "SECTION");
        take(2, section);
        switch (section) {
          case "HEADER" -> header();
          case "TABLES" -> tables();
          default -> entities();
        }
        take(0, "ENDSEC");
      }
      take(0, "EOF");
      if (at != groups.size()) {
        throw new AssertionError("something stands after the end");
      }
      return new DxfFile(header, layers.keySet(), entities);
    }

    private Group next() {
      return groups.get(at);
    }

    private boolean starts(String word) {
      return next().code() == 0 && next().value().equals(word);
    }

    private String take(int code) {
      if (next().code() != code) {
        throw new AssertionError("a group " + code + " must stand here: " + next());
      }
      return groups.get(at++).value();
    }

    private void take(int code, String value) {
      if (!take(code).equals(value)) {
        throw new AssertionError(value + " must stand before " + next());
      }
    }

    private List<Group> own() {
      List<Group> own = new ArrayList<>();
      while (next().code() != 0) {
        own.add(groups.get(at++));
      }
      return own;
    }

    private void header() {
      while (next().code() == 9) {
        String name = take(9);
        StringBuilder value = new StringBuilder();
        while (next().code() != 9 && next().code() != 0) {
          value.append(groups.get(at++).value()).append(' ');
        }
        header.put(name, value.toString().strip());
      }
    }

    private void tables() {
      while (starts("TABLE")) {
        at++;
        String name = take(2);
        int count = Integer.parseInt(take(70));
        Map<String, List<Group>> into = name.equals("LTYPE") ? lines : layers;
        while (starts(name)) {
          at++;
          String entry = take(2);
          into.put(entry, own());
        }
        if (into.size() != count) {
          throw new AssertionError(name + " says " + count + " and holds " + into.size());
        }
        take(0, "ENDTAB");
      }
      layers.forEach(
          (name, own) -> {
            if (!name.matches("[A-Z0-9$_-]{1,31}")) {
              throw new AssertionError("no name of a layer: " + name);
            }
            own.stream()
                .filter(each -> each.code() == 6 && !lines.containsKey(each.value()))
                .forEach(
                    each -> {
                      throw new AssertionError(each.value() + " is not defined");
                    });
          });
    }

    private void entities() {
      while (!starts("ENDSEC")) {
        String kind = take(0);
        if (!Set.of("LINE", "CIRCLE", "TEXT", "POLYLINE").contains(kind)) {
          throw new AssertionError("Release 12 has other words for a " + kind);
        }
        Entity entity = new Entity(kind, own(), new ArrayList<>());
        if (!layers.containsKey(entity.layer())) {
          throw new AssertionError("layer " + entity.layer() + " is not defined");
        }
        if (kind.equals("POLYLINE")) {
          vertices(entity);
        }
        entities.add(entity);
      }
    }

    private void vertices(Entity polyline) {
      if ((int) polyline.number(66) != 1) {
        throw new AssertionError("a polyline must say that vertices follow");
      }
      while (starts("VERTEX")) {
        at++;
        Entity vertex = new Entity("VERTEX", own(), List.of());
        polyline.vertices().add(new double[] {vertex.number(10), vertex.number(20)});
      }
      take(0, "SEQEND");
      own();
    }
  }
}
