package org.scantling.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/** The lines of a stream that hold something, one at a time; no more of it is held in memory. */
final class RawLines implements Iterator<RawLine> {
  /** Of a site: as long as the file of one may be. */
  static final int LONGEST_BYTES = 1 << 20;

  private static final int CHUNK_BYTES = 1 << 16;

  private final InputStream in;
  private final String name;
  private final int longestBytes;
  private final long allBytes;
  private final byte[] chunk = new byte[CHUNK_BYTES];
  private int at;
  private int filled;
  private int number;
  private long bytesRead;
  private @Nullable RawLine next;

  RawLines(String name, InputStream in) {
    this(name, in, LONGEST_BYTES, Long.MAX_VALUE);
  }

  /**
   * The lines of the beginning of a stream.
   *
   * @param longestBytes of a line, of which no more is kept
   * @param allBytes how much of the stream is read
   */
  RawLines(String name, InputStream in, int longestBytes, long allBytes) {
    this.name = name;
    this.in = in;
    this.longestBytes = longestBytes;
    this.allBytes = allBytes;
  }

  /** How much of the stream was taken in so far. */
  long bytesRead() {
    return bytesRead;
  }

  /**
   * @throws BatchException where the stream cannot be read
   */
  @Override
  public boolean hasNext() {
    while (next == null) {
      RawLine line = read();
      if (line == null) {
        return false;
      }
      next = line.isBlank() && !line.tooLong() ? null : line;
    }
    return true;
  }

  @Override
  public RawLine next() {
    if (!hasNext() || next == null) {
      throw new NoSuchElementException();
    }
    RawLine line = next;
    next = null;
    return line;
  }

  private @Nullable RawLine read() {
    if (!more()) {
      return null;
    }
    number++;
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    boolean tooLong = false;
    boolean ended = false;
    while (!ended && more()) {
      int from = at;
      while (at < filled && chunk[at] != '\n') {
        at++;
      }
      int fits = Math.min(at - from, longestBytes - line.size());
      line.write(chunk, from, fits);
      tooLong |= fits < at - from;
      if (at < filled) {
        ended = true;
        at++;
      }
    }
    return new RawLine(number, withoutReturn(line.toByteArray()), tooLong);
  }

  private static byte[] withoutReturn(byte[] line) {
    boolean returns = line.length > 0 && line[line.length - 1] == '\r';
    return returns ? Arrays.copyOf(line, line.length - 1) : line;
  }

  /** Whether something stands in the chunk, which is filled again where it was used up. */
  private boolean more() {
    if (at < filled) {
      return true;
    }
    try {
      filled = in.read(chunk, 0, (int) Math.min(chunk.length, allBytes - bytesRead));
      at = 0;
      bytesRead += Math.max(filled, 0);
      return filled > 0;
    } catch (IOException unreadable) {
      throw BatchException.trouble("unreadable", Path.of(name), unreadable);
    }
  }
}
