package org.scantling.print;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Checked;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** How checks that all pass are summed up: the tightest, and what passes by the base's record. */
final class PassingChecks {
  private static final Sayings SAYINGS = Sayings.of("check-lines");

  private final Voice voice;
  private final CheckLimits checkLimits;
  private final CheckLine line;

  PassingChecks(Voice voice, CheckLimits checkLimits) {
    this.voice = voice;
    this.checkLimits = checkLimits;
    this.line = new CheckLine(voice, checkLimits);
  }

  /** Where every check was worked. */
  String sentence(List<Checked> checks) {
    return sentence("pass", "pass.by-record", checks);
  }

  /** Where some could not be. */
  String sentenceOfWorked(List<Checked> checks) {
    return sentence("pass.worked", "pass.worked.by-record", checks);
  }

  private String sentence(String all, String some, List<Checked> checks) {
    List<Checked> byRecord = checks.stream().filter(checkLimits::byRecord).toList();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("checks", Integer.toString(checks.size()));
    tightest(checks).ifPresent(each -> blanks.put("tightest", each));
    if (byRecord.isEmpty()) {
      return SAYINGS.say(all, blanks);
    }
    blanks.putAll(Standing.blanks(checkLimits.record().orElseThrow(), voice));
    blanks.put("count", Integer.toString(byRecord.size()));
    blanks.put("which", String.join("; ", byRecord.stream().map(this::byRecord).toList()));
    return SAYINGS.say(some, blanks);
  }

  private Optional<String> tightest(List<Checked> checks) {
    return checks.stream()
        .filter(each -> !checkLimits.byRecord(each) && !voice.prescribed(each.id()))
        .max(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(this::tightest);
  }

  private String tightest(Checked check) {
    Map<String, String> blanks = new HashMap<>(line.beside(check));
    blanks.put("used", line.used(check));
    blanks.put("check", line.name(check));
    return SAYINGS.say("tightest", blanks);
  }

  private String byRecord(Checked check) {
    return SAYINGS.say(
        "by-record", "check", line.name(check), "used", line.used(check), "base", line.base(check));
  }
}
