package org.scantling.judge;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a site file asks for that the proposal does not print as a number.
 *
 * @param gathered risk category II
 * @param fullSnow the whole snow of a closed top
 * @param acrossPercent fall from the first row to the second, of their distance
 * @param acrossIn the same where it is told as so many inches
 * @param rockIn how deep solid rock lies; endless where none is told of
 * @param byExperience holes as shallow as builders dig them, whatever the frost
 */
record Asked(
    boolean gathered,
    boolean fullSnow,
    double acrossPercent,
    double acrossIn,
    double rockIn,
    boolean byExperience) {
  private static final Pattern ROCK = Pattern.compile("rock-at: ([\\d.]+) in");
  private static final Pattern ACROSS = Pattern.compile("cross-slope: (-?[\\d.]+) (%|in)");

  static Asked of(String siteFile) {
    Matcher rock = ROCK.matcher(siteFile);
    Matcher across = ACROSS.matcher(siteFile);
    boolean falls = across.find();
    double amount = falls ? Double.parseDouble(across.group(1)) : 0;
    boolean share = falls && across.group(2).equals("%");
    return new Asked(
        siteFile.contains("risk-category: II"),
        siteFile.contains("snow-share: full"),
        share ? amount : 0,
        share ? 0 : amount,
        rock.find() ? Double.parseDouble(rock.group(1)) : Double.POSITIVE_INFINITY,
        siteFile.contains("embedment-basis: experience"));
  }

  /** Neither is asked. */
  static Asked nothingMore() {
    return new Asked(false, false, 0, 0, Double.POSITIVE_INFINITY, false);
  }

  /** How much lower the second row has to be proposed. */
  double fallIn(double rowSpacingIn) {
    return acrossPercent / 100 * rowSpacingIn + acrossIn;
  }
}
