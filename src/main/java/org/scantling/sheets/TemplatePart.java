package org.scantling.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.sayings.Sayings;
import org.scantling.shop.EndCut;
import org.scantling.shop.Piece;
import org.scantling.words.Reader;

/** The tail of the crossbeams at full size, to be traced on the timber. */
final class TemplatePart {
  private static final Sayings SAYINGS = Sayings.of("sheets");
  private static final double PT_PER_IN = 72;
  private static final double CHECK_IN = 4;
  private static final double CHECK_MM = 100;

  private TemplatePart() {}

  /** Empty where the ends are square. */
  static Optional<Part.FullSize> of(SheetSource source) {
    boolean metric = Paper.of(source.how().units()) == Paper.A4;
    String units = metric ? "metric" : "imperial";
    return source
        .drawings()
        .template()
        .map(
            drawing ->
                new Part.FullSize(
                    SAYINGS.say("template"),
                    says(source),
                    drawing,
                    (metric ? CHECK_MM / Inches.IN_MILLIMETRES : CHECK_IN) * PT_PER_IN,
                    SAYINGS.say("template.check." + units)));
  }

  private static List<String> says(SheetSource source) {
    List<String> says = new ArrayList<>();
    says.add(SAYINGS.say("template.print"));
    for (Piece each : source.lists().pieces().of("crossbeam")) {
      if (each.shape().first() instanceof EndCut.Shaped && !each.shape().recesses().isEmpty()) {
        Map<String, String> blanks = new HashMap<>();
        blanks.put("piece", each.mark());
        blanks.put("end", each.shape().ends().first());
        blanks.put(
            "notches",
            each.shape().recesses().stream()
                .map(
                    notch ->
                        SAYINGS.say(
                            "template.notch",
                            "from",
                            length(source, notch.fromIn()),
                            "to",
                            length(source, notch.toIn())))
                .collect(Collectors.joining(", ")));
        says.add(SAYINGS.say("template.notches", blanks));
      }
    }
    return says;
  }

  private static String length(SheetSource source, double lengthIn) {
    return source.voice(Reader.BUILDER).say(Measure.inches(lengthIn));
  }
}
