package org.scantling.words;

import java.util.List;
import java.util.Set;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;
import org.scantling.sayings.WordRow;

/**
 * What a question is called and where it shows.
 *
 * @param section the part of a report it belongs to
 * @param line the line of the then-and-now table that it shares, or empty
 * @param cell how its value stands in that line
 * @param builder its name for builder and engineer
 * @param client what it means to the client, as the subject of a sentence
 * @param phrase its value as a noun phrase for the client
 * @param driver true where a change of it is named as the cause of other changes
 * @param remark what explains it as a cause, or empty
 * @param remarkFrom the base's value from which that is so, or empty for any
 * @param names further words by which people ask for it, singular
 * @param path where the site file may state it, or empty
 * @param follows true where it only follows by measure from other answers
 * @param safety true where it must be spoken of even when nothing changed
 * @param lead true where the headline names it when it is not as in the base
 * @param usual true where the trade has a usual way of it, beside which another is a stronger one
 */
public record SubjectRow(
    Question question,
    String section,
    String line,
    Cell cell,
    String builder,
    String client,
    Cell phrase,
    boolean driver,
    String remark,
    String remarkFrom,
    List<String> names,
    String path,
    boolean follows,
    boolean safety,
    boolean lead,
    boolean usual) {

  private static final String SITE = "site";
  private static final String LOADS = "loads";
  private static final String WAY = "way";
  private static final String JOINTS = "joints";
  private static final Set<String> GIVEN = Set.of(SITE, "timber", LOADS, WAY);

  /**
   * How a value stands in its line, such as {@code of {value}}.
   *
   * @param text with {value} for the value
   */
  public record Cell(String text) {
    public String of(String value) {
      return ValuePhrase.said(text, value);
    }
  }

  /** True for what a site file may state about the place, the timber or the way through. */
  public boolean given() {
    return GIVEN.contains(section);
  }

  /** True for what a site file may state and nobody can measure off the structure. */
  public boolean place() {
    return given() && !section.equals(WAY);
  }

  /**
   * True for what a base design has no record of: what holds timbers together, and what a single
   * part is made of.
   */
  public boolean joint() {
    boolean timber = TimberRole.of(question).filter(role -> role.size() != question).isPresent();
    return section.equals(JOINTS) || timber;
  }

  /** True for the climate, the soil and what grows there. */
  public boolean site() {
    return section.equals(SITE);
  }

  /** True for what weighs or presses on it. */
  public boolean load() {
    return section.equals(LOADS);
  }

  static SubjectRow read(WordRow row) {
    return new SubjectRow(
        Question.of(row.cell("question")),
        row.cell("section"),
        row.cell("line"),
        new Cell(row.cell("cell")),
        row.cell("builder"),
        row.cell("client"),
        new Cell(row.cell("phrase")),
        row.isYes("driver"),
        row.cell("remark"),
        row.cell("remark-from"),
        row.list("names", ";"),
        row.cell("path"),
        row.isYes("follows"),
        row.isYes("safety"),
        row.isYes("lead"),
        row.isYes("usual"));
  }

  /** Its name for a reader. */
  public String label(Reader reader) {
    return reader == Reader.CLIENT ? client : builder;
  }
}
