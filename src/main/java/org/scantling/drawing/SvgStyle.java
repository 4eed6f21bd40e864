package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The look of a sheet: every colour is a token with a value for light and one for dark. */
final class SvgStyle {
  static final String TEXT = text();

  private SvgStyle() {}

  /** A colour by its name, on a light ground and on a dark one. */
  private record Token(String name, String light, String dark) {}

  private static List<Token> all() {
    return List.of(
        new Token("paper", "#fdfcfa", "#171614"),
        new Token("ink", "#1c1b19", "#ece8e1"),
        new Token("muted", "#5f5a52", "#aaa398"),
        new Token("timber", "#f2e2c4", "#4a3f2d"),
        new Token("grown", "#dcb878", "#8a6a34"),
        new Token("metal", "#d5d8da", "#4b5054"),
        new Token("soil", "#ece6da", "#29261f"),
        new Token("gravel", "#d9d2c4", "#3d382f"),
        new Token("concrete", "#e2e1de", "#34353a"),
        new Token("person", "#c9c3b8", "#4b4741"),
        new Token("frost", "#1f5f86", "#8cc4e6"));
  }

  private static String text() {
    List<String> lines = new ArrayList<>();
    lines.add(".scantling{color-scheme:light dark;" + tokens(true) + "}");
    lines.add("@media (prefers-color-scheme:dark){.scantling{" + tokens(false) + "}}");
    lines.add("@media print{.scantling{" + tokens(true) + "}}");
    lines.addAll(
        List.of(
            ".scantling .sheet{fill:var(--paper)}",
            ".scantling path,.scantling circle{fill:none;stroke-linejoin:round}",
            area("paper", "paper"),
            area("timber", "timber"),
            area("grown-timber", "grown"),
            area("metal", "metal"),
            area("soil", "soil"),
            area("gravel", "gravel"),
            area("concrete", "concrete"),
            area("person", "person"),
            area("inked", "ink"),
            edge("cut", "ink", "1.9"),
            edge("grown", "ink", "1.9"),
            edge("visible", "ink", "1.2"),
            edge("thin", "muted", "0.6"),
            edge("tick", "ink", "1.3"),
            edge("hidden", "muted", "0.8") + dashes("hidden", "5 3"),
            edge("centre", "muted", "0.6") + dashes("centre", "12 3 2 3"),
            edge("ground", "ink", "2"),
            edge("frost", "frost", "1.1") + dashes("frost", "9 4 2 4"),
            edge("none", "ink", "0"),
            ".scantling text{font-family:\"DejaVu Sans\",Verdana,sans-serif;fill:var(--ink)}",
            lettering()));
    return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
  }

  /** One rule for each kind of lettering. */
  private static String lettering() {
    List<String> kinds = new ArrayList<>();
    for (Lettering each : Lettering.values()) {
      String weight = each.bold() ? ";font-weight:700" : "";
      String hue = each == Lettering.FROST ? ";fill:var(--frost)" : "";
      kinds.add(
          ".scantling ." + each.word() + "{font-size:" + each.sizePx() + "px" + weight + hue + "}");
    }
    return String.join("", kinds);
  }

  private static String tokens(boolean light) {
    return all().stream()
        .map(each -> "--" + each.name() + ":" + (light ? each.light() : each.dark()))
        .collect(Collectors.joining(";"));
  }

  private static String area(String word, String token) {
    return ".scantling ." + word + "{fill:var(--" + token + ")}";
  }

  private static String edge(String word, String token, String widthPx) {
    String stroke = widthPx.equals("0") ? "none" : "var(--" + token + ");stroke-width:" + widthPx;
    return ".scantling ." + word + "{stroke:" + stroke + "}";
  }

  private static String dashes(String word, String lengths) {
    return ".scantling ." + word + "{stroke-dasharray:" + lengths + "}";
  }
}
