package org.scantling.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * A file of answers, one a line, each written at once. Where a run has ended early, however it
 * ended, the next one takes off the line that was half written and goes on.
 */
public final class ResultFile implements Closeable {
  private static final JsonFactory JSON = new JsonFactory();

  /** Of an answer, the whole proposal for the longest walk among them. */
  private static final int LONGEST_BYTES = 1 << 26;

  private static final int PIECE_BYTES = 1 << 13;
  private static final String START = "{\"line\":";

  private final Path file;
  private final FileChannel channel;
  private final Answered before;

  private ResultFile(Path file, FileChannel channel, Answered before) {
    this.file = file;
    this.channel = channel;
    this.before = before;
  }

  /**
   * Opens a file that is not there yet, or holds answers.
   *
   * @throws BatchException where it holds something else, another run writes it, or it cannot be
   *     written
   */
  public static ResultFile open(Path file) {
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      try {
        return opened(file, channel);
      } catch (IOException | RuntimeException refused) {
        channel.close();
        throw refused;
      }
    } catch (IOException unwritable) {
      throw BatchException.trouble("unwritten", file, unwritable);
    }
  }

  private static ResultFile opened(Path file, FileChannel channel) throws IOException {
    lock(file, channel);
    long whole = wholeBytes(file);
    Answered before = read(file, whole);
    halfWritten(file, whole, before);
    if (whole < channel.size()) {
      channel.truncate(whole);
    }
    channel.position(whole);
    return new ResultFile(file, channel, before);
  }

  private static void lock(Path file, FileChannel channel) throws IOException {
    try {
      if (channel.tryLock() == null) {
        throw BatchException.of("locked", "file", file.toString());
      }
    } catch (OverlappingFileLockException ours) {
      throw BatchException.of("locked", "file", file.toString());
    }
  }

  private static Answered read(Path file, long whole) throws IOException {
    Answered answered = Answered.none(file);
    try (InputStream in = Files.newInputStream(file)) {
      RawLines lines = new RawLines(file.toString(), in, LONGEST_BYTES, whole);
      while (lines.hasNext()) {
        answered = next(answered, lines.next());
      }
    }
    return answered;
  }

  /** Only the beginning of an answer is taken off: what else a file may hold is not ours. */
  private static void halfWritten(Path file, long whole, Answered before) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      in.skipNBytes(whole);
      String text = new String(in.readNBytes(START.length()), StandardCharsets.UTF_8);
      if (!START.startsWith(text)) {
        throw foreign(file, before.lines() + 1);
      }
    }
  }

  private static Answered next(Answered before, RawLine line) {
    int answers = 0;
    String status = "";
    try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), line.bytes())) {
      parser.nextToken();
      while (status.isEmpty() && parser.nextToken() == JsonToken.PROPERTY_NAME) {
        String key = parser.currentName();
        JsonToken value = parser.nextToken();
        if (key.equals("line") && value == JsonToken.VALUE_NUMBER_INT) {
          answers = parser.getIntValue();
        } else if (key.equals("status")) {
          status = parser.getString();
        }
      }
    } catch (JacksonException other) {
      throw foreign(before.file(), line.number());
    }
    if (answers <= before.last() || status.isEmpty()) {
      throw foreign(before.file(), line.number());
    }
    long wrong = before.wrong() + (status.equals("error") ? 1 : 0);
    return new Answered(before.file(), answers, line.bytes(), before.lines() + 1, wrong);
  }

  private static BatchException foreign(Path file, long line) {
    return BatchException.of("foreign", "file", file.toString(), "line", String.valueOf(line));
  }

  /** As far as its lines are whole. */
  private static long wholeBytes(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      ByteBuffer one = ByteBuffer.allocate(PIECE_BYTES);
      for (long end = channel.size(); end > 0; ) {
        long start = Math.max(0, end - one.capacity());
        one.clear().limit((int) (end - start));
        while (one.hasRemaining() && channel.read(one, start + one.position()) > 0) {
          // until the piece is there
        }
        for (int at = one.position() - 1; at >= 0; at--) {
          if (one.get(at) == '\n') {
            return start + at + 1;
          }
        }
        end = start;
      }
      return 0;
    }
  }

  /** What earlier runs have answered. */
  public Answered before() {
    return before;
  }

  /** Adds one answer. */
  public void add(LineAnswer answer) {
    ByteBuffer line = ByteBuffer.wrap((answer.json() + "\n").getBytes(StandardCharsets.UTF_8));
    try {
      while (line.hasRemaining()) {
        channel.write(line);
      }
    } catch (IOException unwritable) {
      throw BatchException.trouble("stopped", file, unwritable);
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException unwritable) {
      throw BatchException.trouble("stopped", file, unwritable);
    }
  }
}
