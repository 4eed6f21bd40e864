package org.scantling.intake;

import java.util.regex.Pattern;
import tools.jackson.dataformat.yaml.util.StringQuotingChecker;

/**
 * Which texts a YAML file shows without quotes: plain words, amounts and nominal sizes. Everything
 * that any YAML reader might take for something else, such as 1e3 or no, is quoted.
 */
final class PlainWords extends StringQuotingChecker.Default {
  private static final long serialVersionUID = 1L;
  private static final Pattern WORDS = Pattern.compile("[A-Za-z](?:[A-Za-z0-9 .-]*[A-Za-z0-9])?");
  private static final Pattern AMOUNT =
      Pattern.compile(
          "-?\\d+(?:\\.\\d+)? (?:in|mm|psf|kPa|mph|m/s|F-days|C-days|F|C)|[1-9]\\d*x[1-9]\\d*");

  @Override
  public boolean needToQuoteValue(String value) {
    boolean words = WORDS.matcher(value).matches() && !super.needToQuoteValue(value);
    return !words && !AMOUNT.matcher(value).matches();
  }
}
