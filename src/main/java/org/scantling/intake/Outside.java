package org.scantling.intake;

import java.util.OptionalInt;

/**
 * Something in a file that lies outside the rules, whatever the rest of the file says.
 *
 * @param file the file as the user named it, or the {@code --set} option
 * @param line the line, counted from 1, where there is one
 * @param field the path of the field
 * @param found what stands there
 * @param because why it is outside
 * @param whose whose work it is
 */
public record Outside(
    String file, OptionalInt line, String field, String found, String because, String whose) {

  /** One sentence, with its place before it. */
  public String text() {
    String place = line.isPresent() ? file + ":" + line.getAsInt() : file;
    boolean named = found.startsWith(field.substring(field.lastIndexOf('.') + 1));
    return place + ": " + (named ? "" : field + ": ") + sentence();
  }

  /** What people are told. */
  public String sentence() {
    return ProblemPhrases.say("outside", "found", found, "because", because, "whose", whose);
  }
}
