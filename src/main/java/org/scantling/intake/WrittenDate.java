package org.scantling.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.regex.Pattern;

/** A day, or as much of it as somebody remembers: 2012-10-29, 2012-10 or 2012. */
final class WrittenDate {
  private static final Pattern FORM = Pattern.compile("(?:1[89]|2[01])\\d\\d(-\\d\\d){0,2}");
  private static final int YEAR_AND_MONTH = 7;

  private WrittenDate() {}

  static boolean is(String text) {
    if (!FORM.matcher(text).matches()) {
      return false;
    }
    try {
      if (text.length() > YEAR_AND_MONTH) {
        LocalDate.parse(text);
      } else if (text.length() == YEAR_AND_MONTH) {
        YearMonth.parse(text);
      }
      return true;
    } catch (DateTimeException noSuchDay) {
      return false;
    }
  }
}
