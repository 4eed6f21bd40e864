package org.scantling.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;

class RawLinesTest {
  @Test
  void lines_are_numbered_as_they_stand_and_those_that_hold_nothing_are_left_out() {
    assertThat(told("a\r\n\n  \t\nb\n\nc")).containsExactly("1:a", "4:b", "6:c");
    assertThat(told("")).isEmpty();
    assertThat(told("\n\n")).isEmpty();
    assertThat(told("a")).containsExactly("1:a");
  }

  @Test
  void a_line_longer_than_may_be_is_cut_and_the_next_one_is_whole() {
    RawLines lines = new RawLines("x", in("abcdef\ngh\n"), 4, Long.MAX_VALUE);

    RawLine first = lines.next();
    assertThat(first.tooLong()).isTrue();
    assertThat(text(first)).isEqualTo("1:abcd");
    assertThat(text(lines.next())).isEqualTo("2:gh");
    assertThat(lines.hasNext()).isFalse();
    assertThatThrownBy(lines::next).isInstanceOf(NoSuchElementException.class);
  }

  @Test
  void a_line_may_be_as_long_as_may_be() {
    assertThat(new RawLines("x", in("abcd\n"), 4, Long.MAX_VALUE).next().tooLong()).isFalse();
  }

  @Test
  void of_a_stream_that_is_read_in_part_no_more_is_read() {
    RawLines lines = new RawLines("x", in("ab\ncd\nef\n"), 9, 6);

    assertThat(text(lines.next())).isEqualTo("1:ab");
    assertThat(text(lines.next())).isEqualTo("2:cd");
    assertThat(lines.hasNext()).isFalse();
    assertThat(lines.bytesRead()).isEqualTo(6);
  }

  @Test
  void lines_longer_than_what_is_read_at_a_time_are_whole() {
    String longLine = "z".repeat(200_000);

    assertThat(told(longLine + "\n" + longLine)).containsExactly("1:" + longLine, "2:" + longLine);
  }

  @Test
  void a_stream_that_breaks_is_refused_in_words() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("the stick was pulled");
          }

          @Override
          public int read(byte[] into, int from, int most) throws IOException {
            throw new IOException("the stick was pulled");
          }
        };

    assertThatThrownBy(() -> new RawLines("sites.ndjson", broken).hasNext())
        .isInstanceOf(BatchException.class)
        .hasMessage("sites.ndjson: cannot be read: the stick was pulled");
  }

  private static List<String> told(String text) {
    List<String> told = new ArrayList<>();
    new RawLines("x", in(text)).forEachRemaining(line -> told.add(text(line)));
    return told;
  }

  private static String text(RawLine line) {
    return line.number() + ":" + new String(line.bytes(), StandardCharsets.UTF_8);
  }

  private static InputStream in(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }
}
