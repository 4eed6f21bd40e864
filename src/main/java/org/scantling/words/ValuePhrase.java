package org.scantling.words;

import java.util.Optional;
import org.scantling.sayings.Template;

/** A phrase with one blank: {@code {value}}, or {@code {value|bay|bays}} for a count. */
public final class ValuePhrase {
  private static final String BLANK = "value";

  private ValuePhrase() {}

  /** The phrase with its blank filled. */
  public static String said(String phrase, String value) {
    return new Template(phrase)
        .filled(name -> name.equals(BLANK) ? Optional.of(value) : Optional.empty());
  }
}
