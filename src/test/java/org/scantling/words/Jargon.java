package org.scantling.words;

import java.util.regex.Pattern;

/** What a client should not have to read. */
public final class Jargon {
  public static final Pattern PATTERN =
      Pattern.compile(
          "\\b(?:psf|psi|plf|kPa|MPa|NDS|ASCE|IBC|IRC|ADA|ASD|C_D|C_M|fb|Fb|F_b|p_g|Kz|R_?\\d+|"
              + "headers?|crossbeams?|bays?|notch(?:ed|es)?|embed(?:ded|ment)?|uplift|tributary|"
              + "deflection|shear|plies|dressed|nominal|backfill|exposure|footings?|preference)\\b"
              + "|[<>=]|\\*|\\d\\.\\d{3}",
          Pattern.CASE_INSENSITIVE);

  private Jargon() {}
}
