package org.scantling.rulecases;

import java.util.Locale;
import java.util.regex.Pattern;
import org.scantling.reasons.Finding;
import org.scantling.rulebase.Fired;

/** What a case says of a finding, as one line that can be compared and read. */
record Found(String rule, String says) implements Comparable<Found> {
  private static final Pattern NUMBER = Pattern.compile("-?\\d\\.\\d{5}e[+-]\\d+");

  static Found of(Fired fired) {
    return new Found(fired.rule(), says(fired.rule(), fired.finding()));
  }

  static Found atLeast(String rule, String question, double number) {
    return new Found(rule, question + " at least " + text(number));
  }

  static Found atMost(String rule, String question, double number) {
    return new Found(rule, question + " at most " + text(number));
  }

  static Found prefer(String rule, String priority, String question, String what) {
    return new Found(rule, question + " " + priority + " " + what);
  }

  static Found reject(String rule, String question, String option, String check, double ratio) {
    return new Found(rule, question + " not " + option + ", " + check + " at ratio " + text(ratio));
  }

  static Found caution(String rule, String severity, String row) {
    return new Found(rule, "caution " + severity + " " + row);
  }

  static Found refuse(String rule, String demand, double ratio) {
    return new Found(rule, "refuse " + demand + " at ratio " + text(ratio));
  }

  static Found ease(String rule, String check, double ratio) {
    return new Found(rule, "ease " + check + " to ratio " + text(ratio));
  }

  /** Six significant figures: more than any table has, less than the last bits of arithmetic. */
  static String text(double number) {
    return String.format(Locale.ROOT, "%.5e", number + 0.0);
  }

  String withoutNumbers() {
    return NUMBER.matcher(toString()).replaceAll("#");
  }

  private static String says(String rule, Finding finding) {
    if (finding instanceof Finding.AtLeast f) {
      return atLeast(rule, f.question().id(), f.number()).says;
    } else if (finding instanceof Finding.AtMost f) {
      return atMost(rule, f.question().id(), f.number()).says;
    } else if (finding instanceof Finding.PreferNumber f) {
      return prefer(rule, word(f.priority()), f.question().id(), text(f.number())).says;
    } else if (finding instanceof Finding.PreferOption f) {
      return prefer(rule, word(f.priority()), f.question().id(), f.option()).says;
    } else if (finding instanceof Finding.Reject f) {
      return reject(rule, f.question().id(), f.option(), f.check(), f.ratio()).says;
    } else if (finding instanceof Finding.Caution f) {
      String row = f.evidence().rows().get(0).id();
      return caution(rule, f.severity().word(), row).says;
    } else if (finding instanceof Finding.Ease f) {
      return ease(rule, f.check(), f.ratio()).says;
    }
    Finding.Refuse f = (Finding.Refuse) finding;
    return refuse(rule, f.demand(), f.ratio()).says;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public int compareTo(Found other) {
    return toString().compareTo(other.toString());
  }

  @Override
  public String toString() {
    return rule + ": " + says;
  }
}
