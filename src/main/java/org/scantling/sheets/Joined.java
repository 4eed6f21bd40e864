package org.scantling.sheets;

import java.util.regex.Pattern;

/** Keeps a number and its unit, or a number and its fraction, on one line. */
public final class Joined {
  private static final Pattern APART =
      Pattern.compile(
          "(?<=\\d|\\d[\"'])[ ](?=(?:ft|in|mm|m|lb|psi|psf|mph|kN|kPa|MPa|km/h|sq|%)\\b"
              + "|%|\\d+/\\d)");
  private static final String TOGETHER = "\u00a0";

  private Joined() {}

  public static String of(String text) {
    return APART.matcher(text).replaceAll(TOGETHER);
  }
}
