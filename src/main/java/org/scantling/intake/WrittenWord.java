package org.scantling.intake;

import java.util.Locale;
import java.util.regex.Pattern;
import tools.jackson.dataformat.yaml.util.StringQuotingChecker;

/** An answer as it stands behind its key in a YAML file, in quotes only where it must. */
final class WrittenWord {
  private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
  private static final Pattern ZONE = Pattern.compile("\\d{1,4}[abAB]?");

  /** A number with its unit: begins with a digit and has nothing that YAML reads as its own. */
  private static final Pattern AMOUNT =
      Pattern.compile("-?(?:\\d[\\d.,/ '-]*[\"'%]|\\d[\\d.,/ '-]*[A-Za-z][A-Za-z0-9 /'\".²-]*)");

  private static final Pattern EXPONENT = Pattern.compile("-?[\\d.]+[eExXoObB][\\d.+-]*");
  private static final Pattern PATH =
      Pattern.compile("[A-Za-z.][A-Za-z0-9_.-]*(?:/[A-Za-z0-9_.-]+)+");
  private static final StringQuotingChecker PLAIN = new PlainWords();

  private WrittenWord() {}

  static String of(EntryKind kind, String answer) {
    String plain = answer.strip();
    boolean bare =
        switch (kind) {
          case TEXT, PATHS -> !PLAIN.needToQuoteValue(plain) || PATH.matcher(plain).matches();
          case WORD -> !PLAIN.needToQuoteValue(plain) || plain.equals("yes") || plain.equals("no");
          case COUNT, BAYS, YEAR -> WHOLE.matcher(plain).matches();
          case DATE -> true;
          case ZONE -> ZONE.matcher(plain).matches();
          default -> amount(plain) || !PLAIN.needToQuoteValue(plain);
        };
    return bare ? plain : quoted(plain);
  }

  private static boolean amount(String plain) {
    return AMOUNT.matcher(plain).matches() && !EXPONENT.matcher(plain).matches();
  }

  private static String quoted(String plain) {
    StringBuilder text = new StringBuilder("\"");
    plain
        .codePoints()
        .forEach(
            sign -> {
              if (sign == '"' || sign == '\\') {
                text.append('\\').appendCodePoint(sign);
              } else if (sign < ' ' || (sign >= 0x7f && sign < 0xa0)) {
                text.append(String.format(Locale.ROOT, "\\x%02x", sign));
              } else {
                text.appendCodePoint(sign);
              }
            });
    return text.append('"').toString();
  }
}
