package org.scantling.print;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Checked;
import org.scantling.words.Voice;

/** How checks that all pass are summed up: the tightest, and what passes by the base's record. */
final class PassingChecks {
  private final Voice voice;
  private final CheckLimits checkLimits;
  private final CheckLine line;

  PassingChecks(Voice voice, CheckLimits checkLimits) {
    this.voice = voice;
    this.checkLimits = checkLimits;
    this.line = new CheckLine(voice, checkLimits);
  }

  /**
   * @param every how all of them are called, such as "All 33 checks"
   */
  String sentence(String every, List<Checked> checks) {
    List<Checked> byRecord = checks.stream().filter(checkLimits::byRecord).toList();
    Optional<Checked> tightest =
        checks.stream()
            .filter(each -> !checkLimits.byRecord(each) && !voice.prescribed(each.id()))
            .max(Comparator.comparingDouble(each -> each.check().ratio()));
    String all = every + " pass";
    return byRecord.isEmpty()
        ? all + "; the tightest is at " + tightest.map(this::tight).orElse("nothing") + "."
        : all
            + ", "
            + only(byRecord)
            + " The tightest of the others is at "
            + tightest.map(this::tight).orElse("nothing")
            + ".";
  }

  private String tight(Checked check) {
    return line.used(check) + " of its limit (" + line.name(check) + line.besideBase(check) + ")";
  }

  private String only(List<Checked> byRecord) {
    String count = byRecord.size() == 1 ? "one" : Integer.toString(byRecord.size());
    return count
        + " of them only by the record of the base, which "
        + Standing.of(checkLimits.record().orElseThrow(), voice)
        + ": "
        + String.join("; ", byRecord.stream().map(this::byRecord).toList())
        + ".";
  }

  private String byRecord(Checked check) {
    return line.name(check)
        + ", "
        + line.used(check)
        + " of the published limit (the base itself "
        + line.base(check)
        + ")";
  }
}
