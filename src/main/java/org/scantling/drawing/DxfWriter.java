package org.scantling.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.scantling.quantity.Inches;
import org.scantling.sayings.Sayings;

/**
 * Writes what is drawn as a file for exchange with programs for drawing, in real size from the
 * middle of the first post.
 *
 * <p>Source: the published group codes of DXF for AutoCAD Release 12 (AC1009), ASCII.
 */
final class DxfWriter {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double CAPITALS_RATIO = 0.73;
  private static final int CLOSED = 1;
  private static final int VERTICES_FOLLOW = 1;
  private static final int ALIGNMENT_BY_DASHES = 65;
  private static final int LAST_ASCII = 126;

  private final Map<String, String> roles;
  private final double unitPerPx;
  private final boolean metric;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param roles of pieces by their marks
   * @param unitPerPx inches or millimetres of the structure on one px of the sheet
   * @param metric true for millimetres
   */
  DxfWriter(Map<String, String> roles, double unitPerPx, boolean metric) {
    this.roles = Map.copyOf(roles);
    this.unitPerPx = unitPerPx;
    this.metric = metric;
  }

  String write(List<Ink> inks) {
    group(999, SAYINGS.say(metric ? "dxf.metric" : "dxf.imperial"));
    header(inks);
    section("TABLES");
    lines();
    layers();
    end("ENDSEC");
    section("ENTITIES");
    inks.forEach(this::ink);
    end("ENDSEC");
    end("EOF");
    return out.toString();
  }

  private void header(List<Ink> inks) {
    List<PaperPoint> reach = new ArrayList<>();
    inks.forEach(each -> reach.addAll(each.reach()));
    PaperBox box = PaperBox.around(reach);
    section("HEADER");
    group(9, "$ACADVER");
    group(1, "AC1009");
    group(9, "$EXTMIN");
    point(10, new PaperPoint(box.leftPx(), box.bottomPx()));
    group(9, "$EXTMAX");
    point(10, new PaperPoint(box.rightPx(), box.topPx()));
    end("ENDSEC");
  }

  private void section(String name) {
    group(0, "SECTION");
    group(2, name);
  }

  private void end(String word) {
    group(0, word);
  }

  private void table(String name, int count) {
    group(0, "TABLE");
    group(2, name);
    group(70, count);
  }

  private void lines() {
    table("LTYPE", DxfLayer.Pattern.ALL.size());
    for (DxfLayer.Pattern each : DxfLayer.Pattern.ALL) {
      group(0, "LTYPE");
      group(2, each.name());
      group(70, 0);
      group(3, each.says());
      group(72, ALIGNMENT_BY_DASHES);
      group(73, each.strokes().size());
      group(40, each.strokes().stream().mapToDouble(Math::abs).sum() * unitPerInch());
      each.strokes().forEach(stroke -> group(49, stroke * unitPerInch()));
    }
    end("ENDTAB");
  }

  private double unitPerInch() {
    return metric ? Inches.IN_MILLIMETRES : 1;
  }

  private void layers() {
    Map<String, DxfLayer> layers = new LinkedHashMap<>();
    for (DxfLayer each : DxfLayer.values()) {
      layers.put(each.name(), each);
    }
    List<String> pieces = roles.values().stream().map(DxfLayer::of).distinct().sorted().toList();
    table("LAYER", layers.size() + pieces.size());
    layers.forEach((name, layer) -> layer(name, layer.colour(), layer.line()));
    pieces.forEach(name -> layer(name, DxfLayer.PIECE_COLOUR, DxfLayer.WHOLE_LINE));
    end("ENDTAB");
  }

  private void layer(String name, int colour, String line) {
    group(0, "LAYER");
    group(2, name);
    group(70, 0);
    group(62, colour);
    group(6, line);
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Path path) {
      path(path, layer(path));
    } else if (ink instanceof Ink.Disc disc) {
      entity("CIRCLE", DxfLayer.of(disc.tone(), disc.line()).name());
      point(10, disc.middle());
      group(40, disc.radiusPx() * unitPerPx);
    } else if (ink instanceof Ink.Letters letters) {
      letters(letters, DxfLayer.TEXT);
    } else if (ink instanceof Ink.Measure measure) {
      measure.lines().forEach(each -> path(each, DxfLayer.DIMENSIONS.name()));
      letters(measure.letters(), DxfLayer.DIMENSIONS);
    }
  }

  /** That of the role of a piece. */
  private String layer(Ink.Path path) {
    String role = roles.get(path.mark());
    return role == null ? DxfLayer.of(path.tone(), path.line()).name() : DxfLayer.of(role);
  }

  private void entity(String name, String layer) {
    group(0, name);
    group(8, layer);
  }

  /** What has no edge is not seen in lines. */
  private void path(Ink.Path path, String layer) {
    if (path.line() == LineClass.NONE) {
      return;
    }
    if (path.points().size() == 2 && !path.closed()) {
      entity("LINE", layer);
      point(10, path.points().get(0));
      point(11, path.points().get(1));
      return;
    }
    entity("POLYLINE", layer);
    group(66, VERTICES_FOLLOW);
    group(10, 0.0);
    group(20, 0.0);
    group(30, 0.0);
    group(70, path.closed() ? CLOSED : 0);
    for (PaperPoint each : path.points()) {
      entity("VERTEX", layer);
      point(10, each);
    }
    entity("SEQEND", layer);
  }

  private void letters(Ink.Letters letters, DxfLayer layer) {
    entity("TEXT", layer.name());
    point(10, letters.at());
    group(40, letters.lettering().sizePx() * CAPITALS_RATIO * unitPerPx);
    group(1, plain(letters.words()));
    group(50, letters.turned() ? 90.0 : 0.0);
    if (letters.anchor() != Anchor.START) {
      group(72, letters.anchor().ordinal());
      point(11, letters.at());
    }
  }

  /** What is no plain sign is written by its number; a percent sign would begin a code. */
  private static String plain(String words) {
    StringBuilder plain = new StringBuilder();
    words
        .codePoints()
        .forEach(
            sign -> {
              if (sign == '%') {
                plain.append("%%%");
              } else if (sign >= ' ' && sign <= LAST_ASCII) {
                plain.appendCodePoint(sign);
              } else {
                plain.append(
                    Character.isISOControl(sign)
                        ? " "
                        : String.format(Locale.ROOT, "\\U+%04X", sign));
              }
            });
    return plain.toString();
  }

  private void point(int code, PaperPoint point) {
    group(code, point.rightPx() * unitPerPx);
    group(code + 10, -point.downPx() * unitPerPx);
    group(code + 20, 0.0);
  }

  private void group(int code, double number) {
    String text = String.format(Locale.ROOT, "%.6f", number);
    group(code, text.equals("-0.000000") ? "0.000000" : text);
  }

  private void group(int code, int number) {
    group(code, Integer.toString(number));
  }

  private void group(int code, String value) {
    out.append(String.format(Locale.ROOT, "%3d", code)).append("\r\n").append(value).append("\r\n");
  }
}
