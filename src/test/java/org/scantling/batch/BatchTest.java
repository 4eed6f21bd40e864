package org.scantling.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scantling.batch.LineAnswer.Kind;
import org.scantling.intake.SiteLine;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** With sites that are all refused, each with its own id: that costs no structure. */
class BatchTest {
  private static final Tables TABLES = Tables.load();
  private static final Words WORDS = Words.load(TABLES);
  private static final SiteReader READER = new SiteReader(Vocabulary.of(TABLES));
  private static final Path HERE = Path.of("").toAbsolutePath();

  @TempDir private Path folder;

  @Test
  void every_line_is_answered_in_its_order_with_its_number_and_its_id() {
    List<LineAnswer> answers = answers("{\"id\": \"a\"}\n\nno site\n{\"id\": 12}\n", 2);

    assertThat(answers)
        .extracting(LineAnswer::json)
        .satisfiesExactly(
            one -> assertThat(one).startsWith("{\"line\":1,\"id\":\"a\",\"status\":\"error\","),
            two -> assertThat(two).startsWith("{\"line\":3,\"status\":\"error\",\"error\":{\"fie"),
            three -> assertThat(three).startsWith("{\"line\":4,\"id\":12,\"status\":\"error\","));
    assertThat(answers).extracting(LineAnswer::kind).containsOnly(Kind.WRONG);
    assertThat(answers.get(1).json())
        .contains("\"found\":\"no site\"", "\"accepted\":\"a site as a JSON object on one line\"")
        .contains("\"problems\":[{");
  }

  @Test
  void many_cores_answer_what_one_does() {
    String sites = sites(600);

    assertThat(answers(sites, 5)).isEqualTo(answers(sites, 1)).hasSize(600);
  }

  @Test
  void no_more_lines_are_held_than_the_window_has_however_many_there_are() {
    int lines = 20_000;
    AtomicInteger answered = new AtomicInteger();
    Endless stream = new Endless(lines, answered);
    Batch batch = Batch.of(SiteSource.of("x", stream, HERE, List.of()), refusing(), 2);

    batch.run(answer -> answered.incrementAndGet());

    assertThat(answered).hasValue(lines);
    // The window, and what one reading of the stream takes in.
    assertThat(stream.mostAhead)
        .isLessThanOrEqualTo(batch.cores().window() + Endless.LINES_A_READING + 1);
  }

  @Test
  void what_is_too_long_or_no_text_is_one_wrong_line_among_the_others() {
    byte[] bytes = ("{}\n" + "x".repeat(RawLines.LONGEST_BYTES + 1) + "\n?\n{}\n").getBytes(UTF);
    bytes[bytes.length - 5] = (byte) 0xff;

    assertThat(answers(new ByteArrayInputStream(bytes), 1))
        .extracting(LineAnswer::json)
        .satisfiesExactly(
            one -> assertThat(one).contains("(missing: "),
            two -> assertThat(two).contains("(over 1 MiB)", "no longer than 1 MiB"),
            three -> assertThat(three).contains("text in UTF-8"),
            four -> assertThat(four).contains("(missing: "));
  }

  @Test
  void a_fault_of_the_program_is_the_answer_to_its_line_alone() {
    List<LineAnswer> answers = new ArrayList<>();
    LineAnswering faulty =
        new LineAnswering(
            WORDS,
            false,
            site -> {
              if (site.id().isPresent()) {
                throw new IllegalStateException("gone");
              }
              return refused(site);
            });

    Batch.of(source(in("{\"id\": 1}\n{}\n")), faulty, 2).run(answers::add);

    assertThat(answers).extracting(LineAnswer::kind).containsExactly(Kind.FAULT, Kind.WRONG);
    assertThat(answers.get(0).json())
        .contains("a fault of the program, not of your file: ", "gone");
  }

  @Test
  void a_run_that_was_cut_anywhere_goes_on_to_the_same_file() throws IOException {
    String sites = sites(4) + "\nno site\n" + sites(2);
    Path file = folder.resolve("answers.ndjson");
    run(sites, file);
    byte[] whole = Files.readAllBytes(file);
    assertThat(new String(whole, UTF).lines()).hasSize(7);

    for (int cut = 0; cut <= whole.length; cut++) {
      Files.write(file, java.util.Arrays.copyOf(whole, cut));
      run(sites, file);
      assertThat(Files.readAllBytes(file)).as("cut at %s", cut).isEqualTo(whole);
    }
  }

  @Test
  void what_was_answered_before_is_counted() throws IOException {
    Path file = folder.resolve("answers.ndjson");
    run(sites(3), file);
    Files.writeString(file, "{\"line\":4,\"id", java.nio.file.StandardOpenOption.APPEND);

    try (ResultFile results = ResultFile.open(file)) {
      assertThat(results.before().last()).isEqualTo(3);
      assertThat(results.before().lines()).isEqualTo(3);
      assertThat(results.before().wrong()).isEqualTo(3);
    }
  }

  @Test
  void answers_to_other_sites_are_not_added_to() throws IOException {
    Path file = folder.resolve("answers.ndjson");
    run(sites(3), file);
    byte[] before = Files.readAllBytes(file);

    assertThatThrownBy(() -> run("{}\n{}\n{\"id\": \"other\"}\n{}\n", file))
        .isInstanceOf(BatchException.class)
        .hasMessageContaining("its answer to line 3 is not what these sites")
        .hasMessageContaining("Name another file.");
    assertThatThrownBy(() -> run("{}\n", file)).hasMessageContaining("its answer to line 3");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void a_file_of_something_else_is_left_as_it_is() throws IOException {
    for (String other : List.of("My notes", "My notes\n", "{\"line\": 1}\n", "[]\n{\"li")) {
      Path file = Files.writeString(folder.resolve("notes"), other);

      assertThatThrownBy(() -> run(sites(2), file))
          .isInstanceOf(BatchException.class)
          .hasMessageEndingWith(
              "notes:1: no answer of a batch stands here, so the file is left as it is."
                  + " Name another one.");
      assertThat(file).hasContent(other);
    }
  }

  @Test
  void two_runs_do_not_write_one_file() throws IOException {
    Path file = folder.resolve("answers.ndjson");
    try (ResultFile first = ResultFile.open(file)) {
      assertThat(first.before().last()).isZero();

      assertThatThrownBy(() -> ResultFile.open(file)).hasMessageContaining("another run");
    }
  }

  @Test
  void a_file_that_cannot_be_written_is_refused_in_words() {
    assertThatThrownBy(() -> ResultFile.open(folder.resolve("no").resolve("answers")))
        .isInstanceOf(BatchException.class)
        .hasMessageContaining("cannot be written: ");
  }

  private static final java.nio.charset.Charset UTF = StandardCharsets.UTF_8;

  private static String sites(int count) {
    StringBuilder sites = new StringBuilder();
    for (int i = 0; i < count; i++) {
      sites.append("{\"id\": \"site ").append(i).append("\"}\n");
    }
    return sites.toString();
  }

  private static void run(String sites, Path file) {
    try (ResultFile results = ResultFile.open(file)) {
      Batch.of(source(in(sites)), refusing(), 1).goOn(results.before(), results::add);
    }
  }

  private static List<LineAnswer> answers(String sites, int cores) {
    return answers(in(sites), cores);
  }

  private static List<LineAnswer> answers(InputStream sites, int cores) {
    List<LineAnswer> answers = new ArrayList<>();
    Batch.of(source(sites), refusing(), cores).run(answers::add);
    return answers;
  }

  private static SiteSource source(InputStream sites) {
    return SiteSource.of("sites.ndjson", sites, HERE, List.of());
  }

  private static LineAnswering refusing() {
    return new LineAnswering(WORDS, false, BatchTest::refused);
  }

  private static Proposal refused(SiteLine site) {
    READER.readEach(site, List.of());
    throw new IllegalStateException("none of these is a site");
  }

  private static InputStream in(String text) {
    return new ByteArrayInputStream(text.getBytes(UTF));
  }

  /** As many lines as one likes, a few at a time, that stand nowhere. */
  private static final class Endless extends InputStream {
    private static final int LINES_A_READING = 10;

    private final AtomicInteger answered;
    private int left;
    private int given;
    private int mostAhead;

    Endless(int lines, AtomicInteger answered) {
      this.left = lines;
      this.answered = answered;
    }

    @Override
    public int read() {
      throw new IllegalStateException("read one by one");
    }

    @Override
    public int read(byte[] into, int from, int most) {
      int lines = Math.min(LINES_A_READING, left);
      left -= lines;
      given += lines;
      mostAhead = Math.max(mostAhead, given - answered.get());
      byte[] text = "{}\n".repeat(lines).getBytes(UTF);
      System.arraycopy(text, 0, into, from, text.length);
      return lines == 0 ? -1 : text.length;
    }
  }
}
