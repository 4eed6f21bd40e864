package org.scantling.batch;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.scantling.intake.SiteLine;
import org.scantling.intake.SiteLines;
import org.scantling.sayings.Sayings;
import org.scantling.tables.Utf8;

/**
 * A stream of sites, one a line: JSON objects, or a table where its name ends in .csv or its first
 * line is the heading of one.
 */
public final class SiteSource implements Iterator<RawLine> {
  private static final String TABLE = ".csv";

  private final RawLines lines;
  private final SiteLines reader;
  private RawLine first;
  private boolean firstGone;

  private SiteSource(RawLines lines, SiteLines reader, RawLine first, boolean headed) {
    this.lines = lines;
    this.reader = reader;
    this.first = first;
    this.firstGone = headed;
  }

  /**
   * Reads the heading, where there is one.
   *
   * @param name the file as the user named it
   * @param folder from where a relative {@code base:} is looked up
   * @param bases the base designs of a site that names none
   * @throws org.scantling.intake.IntakeException where the heading is none
   */
  public static SiteSource of(String name, InputStream in, Path folder, List<String> bases) {
    RawLines lines = new RawLines(name, in);
    RawLine none = new RawLine(0, new byte[0], false);
    SiteLines json = SiteLines.json(name, folder, bases);
    if (!lines.hasNext()) {
      return new SiteSource(lines, json, none, true);
    }
    RawLine first = lines.next();
    String heading = lenient(first);
    if (name.endsWith(TABLE) || SiteLines.isHeading(heading)) {
      SiteLines table = SiteLines.csv(name, folder, bases, first.number(), heading);
      return new SiteSource(lines, table, none, true);
    }
    return new SiteSource(lines, json, first, false);
  }

  private static String lenient(RawLine line) {
    try {
      return Utf8.text(line.bytes());
    } catch (Utf8.NotUtf8 later) {
      return "";
    }
  }

  @Override
  public boolean hasNext() {
    return !firstGone || lines.hasNext();
  }

  @Override
  public RawLine next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    if (!firstGone) {
      firstGone = true;
      RawLine line = first;
      first = new RawLine(0, new byte[0], false);
      return line;
    }
    return lines.next();
  }

  /** How much of the stream was taken in so far. */
  long bytesRead() {
    return lines.bytesRead();
  }

  /** The site of a line; safe to ask from several threads. */
  SiteLine read(RawLine line) {
    if (line.tooLong()) {
      return reader.unread(line.number(), say("found.long"), say("accepted.long"));
    }
    try {
      return reader.read(line.number(), Utf8.text(line.bytes()));
    } catch (Utf8.NotUtf8 place) {
      String found = "(" + place.getMessage() + ")";
      return reader.unread(line.number(), found, say("accepted.encoding"));
    }
  }

  private static String say(String saying) {
    return Sayings.of("batch").say(saying);
  }
}
