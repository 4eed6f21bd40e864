package org.scantling.print;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Checked;
import org.scantling.reasons.TrackRecord;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/**
 * Which checks are worked harder here than in the base at its own place; a prescribed distance is
 * not worked at all.
 */
final class BesideBase {
  private static final Sayings SAYINGS = Sayings.of("comparison");
  private static final int MOST_SHOWN = 4;

  /** Half of the last figure that is shown. */
  private static final double SEEN_RATIO = 0.005;

  private final Voice voice;
  private final CheckLimits checkLimits;
  private final CheckLine line;

  BesideBase(Voice voice, CheckLimits checkLimits) {
    this.voice = voice;
    this.checkLimits = checkLimits;
    this.line = new CheckLine(voice, checkLimits);
  }

  void write(Page page, String base, List<Checked> checks) {
    checkLimits.record().ifPresent(record -> write(page, base, record, checks));
  }

  private void write(Page page, String base, TrackRecord record, List<Checked> checks) {
    List<Checked> harder =
        checks.stream()
            .filter(each -> !voice.prescribed(each.id()))
            .filter(each -> more(each) > SEEN_RATIO)
            .sorted(Comparator.comparingDouble(this::more).reversed())
            .toList();
    Map<String, String> standing = new HashMap<>(Standing.blanks(record, voice));
    standing.put("design", base);
    page.heading(SAYINGS.say("beside", standing));
    RecordWords.sentences(record.events()).ifPresent(page::paragraph);
    if (harder.isEmpty()) {
      page.paragraph(SAYINGS.say("beside.none"));
      return;
    }
    page.paragraph(
        SAYINGS.say(
            harder.size() == 1 ? "beside.one" : "beside.some",
            "count",
            Integer.toString(harder.size()),
            "checks",
            Integer.toString(checks.size())));
    page.items(harder.stream().limit(MOST_SHOWN).map(this::item).toList());
  }

  private Block.Item item(Checked check) {
    return new Block.Item(
        "",
        SAYINGS.say(
            "beside.check",
            "check",
            Sentence.capital(line.name(check)),
            "used",
            line.used(check),
            "base",
            line.base(check)));
  }

  /** How much more of what there is it uses here; none where the base has no such check. */
  private double more(Checked check) {
    return check.check().ratio() - checkLimits.baseRatio(check).orElse(Double.POSITIVE_INFINITY);
  }
}
