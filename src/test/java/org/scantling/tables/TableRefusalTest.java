package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.quantity.Unit;

class TableRefusalTest {
  private static final String HEADING = "id,value,unit,statement,kind,source,where,status,note\n";
  private static final String GOOD = "a.b,12,in,words,standard,doc,Table 1,seen,\n";

  private static CsvFile csv(String name, String text) {
    return CsvFile.read(name, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static Table<NumberRow> thumb(String text) {
    Sources sources =
        Sources.read(
            csv("SOURCES.csv", "key,citation\ndoc,A Document\npractice,common practice\n"));
    return TypedRows.table(
        TableFile.THUMB,
        NumberRow.class,
        TableReader.own(csv("thumb.csv", text), TableFile.THUMB, sources).values());
  }

  @Test
  void a_good_row_is_read() {
    NumberRow row = thumb(HEADING + GOOD).row("a.b");
    assertThat(row.amount()).isEqualTo(12);
    assertThat(row.source().text()).isEqualTo("A Document, Table 1");
  }

  /** Written as a decimal, a third of 60 is a hair short of 20, and rounded down it is 19 15/16. */
  @Test
  void a_share_is_written_as_the_fraction_it_is() {
    assertThat(thumb(HEADING + GOOD.replace(",12,in", ",1/3,ratio")).row("a.b").amount() * 60)
        .isEqualTo(20);
    assertThat(thumb(HEADING + GOOD.replace(",12,in", ",2/7,ratio")).row("a.b").amount() * 3.5)
        .isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      value = {
        "a.b,,in,words,standard,doc,T,seen,|value: found nothing, accepted is a value: this column"
            + " has no holes",
        "a.b,twelve,in,words,standard,doc,T,seen,|value: found 'twelve', accepted is a number, such as"
            + " 0.25 or 1/3",
        "a.b,1/,in,words,standard,doc,T,seen,|value: found '1/', accepted is a number, such as 0.25"
            + " or 1/3",
        "a.b,1/0,in,words,standard,doc,T,seen,|value: found '1/0', accepted is a fraction of"
            + " something, such as 1/3",
        "a.b,1/2/3,in,words,standard,doc,T,seen,|value: found '1/2/3', accepted is a number, such"
            + " as 0.25 or 1/3",
        "a.b,NaN,in,words,standard,doc,T,seen,|value: found 'NaN', accepted is a finite number",
        "a.b,Infinity,in,words,standard,doc,T,seen,|value: found 'Infinity', accepted is a finite"
            + " number",
        "a.b,12d,in,words,standard,doc,T,seen,|value: found '12d', accepted is a finite number",
        "a.b,12,inch,words,standard,doc,T,seen,|unit: found 'inch', accepted is in, ft, lb, in-lb, psf,"
            + " psi, pcf, mph, deg, percent, count, ratio",
        "a.b,12,in,words,hearsay,doc,T,seen,|kind: found 'hearsay', accepted is standard, handbook,"
            + " common-practice, house-rule, calculation",
        "a.b,12,in,words,standard,dac,T,seen,|source: found 'dac', accepted is a key of"
            + " SOURCES.csv: doc, practice",
        "a.b,12,in,words,standard,doc,,seen,|where: found nothing, accepted is a value: this column"
            + " has no holes",
        "a.b,12,in,words,standard,doc,T,heard,|status: found 'heard', accepted is seen, second-hand, memory,"
            + " none",
        "a.b,12,in,words,standard,doc,T,none,|status: found 'none', accepted is seen, second-hand, memory",
        "a.b,12,in,words,common-practice,practice,,seen,|status: found 'seen', accepted is none,"
            + " for common practice",
        "a.b,12,in,words,common-practice,doc,,none,|source: found 'doc', accepted is practice",
        "a.b,12,in,words,calculation,doc,,none,|source: found 'doc', accepted is statics",
        "a.b,12,in,words,calculation,doc,,seen,|status: found 'seen', accepted is none, for a"
            + " calculation",
        "a.b,12,in,words,standard,practice,T,seen,|source: found 'practice', accepted is a document",
        "a.b,12,in,,standard,doc,T,seen,|statement: found nothing, accepted is a value: this column"
            + " has no holes",
        "a.b,12,in,standard,doc,T,seen,|found '8 cells', accepted is 9 cells, as the heading has",
      })
  void a_bad_cell_is_refused_with_line_and_column(String line, String message) {
    assertThatThrownBy(() -> thumb(HEADING + "\n" + GOOD.replace("a.b", "x.y") + line + "\n"))
        .isInstanceOf(TableException.class)
        .hasMessage("thumb.csv:4: " + message);
  }

  @Test
  void an_id_may_stand_only_once() {
    TableException refusal =
        catchThrowableOfType(TableException.class, () -> thumb(HEADING + GOOD + GOOD));
    assertThat(refusal.file()).isEqualTo("thumb.csv");
    assertThat(refusal.line()).isEqualTo(3);
    assertThat(refusal.column()).isEqualTo("id");
    assertThat(refusal.found()).isEqualTo("a.b");
    assertThat(refusal.accepted()).isEqualTo("each id once");
  }

  @Test
  void columns_may_not_be_missing_extra_or_doubled() {
    assertThatThrownBy(() -> thumb(HEADING.replace("unit,", "") + GOOD))
        .hasMessage(
            "thumb.csv:1: unit: found 'id, value, statement, kind, source, where, status, note',"
                + " accepted is a column of that name");
    assertThatThrownBy(() -> thumb(HEADING.replace("unit,", "unit,colour,") + GOOD))
        .hasMessageStartingWith(
            "thumb.csv:1: found 'colour', accepted is each of these columns once: id, value, unit");
    assertThatThrownBy(() -> thumb(HEADING.replace("unit,", "unit,unit,") + GOOD))
        .hasMessageStartingWith(
            "thumb.csv:1: found 'unit', accepted is each of these columns once");
    assertThatThrownBy(() -> thumb(""))
        .hasMessage("thumb.csv:1: found nothing, accepted is a heading line");
  }

  @Test
  void a_broken_quotation_is_refused() {
    assertThatThrownBy(() -> thumb(HEADING + "a.b,12,in,\"words,standard"))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith("thumb.csv:")
        .hasMessageEndingWith(
            "found 'a quote that is not closed, or signs after a closing quote', accepted is"
                + " comma-separated text, a cell with a comma or a quote in double quotes");
  }

  @Test
  void a_source_key_may_stand_only_once_and_needs_a_citation() {
    assertThatThrownBy(() -> Sources.read(csv("SOURCES.csv", "key,citation\na,A\na,B\n")))
        .hasMessage("SOURCES.csv:3: key: found 'a', accepted is each key once");
    assertThatThrownBy(() -> Sources.read(csv("SOURCES.csv", "key,citation\na,\n")))
        .hasMessage("SOURCES.csv:2: citation: found nothing, accepted is a value");
  }

  @Test
  void words_of_a_closed_list_and_ranges_are_checked() {
    String heading =
        "id,market,member_class,thickness_in,width_in,nominal_thickness_in,nominal_width_in,roles,"
            + "rank,stock_family,kind,source,where,status,note\n";
    String good = "2x4,metric,dimension,1.5,3.5,2,4,rail;brace,10,2x,standard,doc,T,seen,\n";
    assertThat(sizes(heading + good).row("2x4").roles()).containsExactly("rail", "brace");
    assertThatThrownBy(() -> sizes(heading + good.replace("brace", "swing")))
        .hasMessage(
            "sizes.csv:2: roles: found 'rail;swing', accepted is any of post, header, board,"
                + " crossbeam, rail, brace with ; between them");
    assertThatThrownBy(() -> sizes(heading + good.replace("rail;", "rail;;")))
        .hasMessageContaining("accepted is words with one ; between them");
    assertThatThrownBy(() -> sizes(heading + good.replace("1.5", "-1.5")))
        .hasMessage("sizes.csv:2: thickness_in: found '-1.5', accepted is a number above zero");
    assertThatThrownBy(() -> sizes(heading + good.replace("dimension", "plank")))
        .hasMessageContaining("accepted is dimension, post-timber, beam-timber");
    assertThatThrownBy(() -> sizes(heading + good.replace("dimension", "post-timber")))
        .hasMessage(
            "sizes.csv:2: member_class: found 'post-timber', accepted is dimension, by the nominal"
                + " size");
  }

  private static Table<SizeRow> sizes(String text) {
    Sources sources = Sources.read(csv("SOURCES.csv", "key,citation\ndoc,A Document\n"));
    return TypedRows.table(
        TableFile.SIZES,
        SizeRow.class,
        TableReader.own(csv("sizes.csv", text), TableFile.SIZES, sources).values());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      value = {
        "walkway.headroom,in,1,144,78,8,,words|most: found '78', accepted is a number above 144",
        "walkway.headroom,in,0,78,144,8,,words|step: found '0', accepted is a number above zero",
        "walkway.headroom,in,2,78,144,1,,words|sample_step: found '1', accepted is at least one"
            + " step, 2",
        "walkway.headroom,yard,1,78,144,8,,words|unit: found 'yard', accepted is in, ft, lb, in-lb, psf,"
            + " psi, pcf, mph, deg, percent, count, ratio"
      })
  void a_search_that_cannot_be_is_refused(String cells, String complaint) {
    String heading =
        "id,unit,step,least,most,sample_step,reach,words,limits,choice,ordered,eased_by,weight,"
            + "kind,source,where,status,note\n";
    String row = cells + ",yes,yes,,less,1,common-practice,practice,,none,\n";
    Sources sources = Sources.read(csv("SOURCES.csv", "key,citation\npractice,common practice\n"));

    assertThatThrownBy(
            () ->
                TypedRows.table(
                    TableFile.DEMANDS,
                    DemandRow.class,
                    TableReader.own(csv("demands.csv", heading + row), TableFile.DEMANDS, sources)
                        .values()))
        .hasMessageContaining(complaint);
  }

  private static Table<SymbolRow> symbols(String row) {
    Sources sources = Sources.read(csv("SOURCES.csv", "key,citation\nstatics,statics\n"));
    String heading = "id,symbol,scope,part,means,unit,kind,source,where,status,note\n";
    return TypedRows.table(
        TableFile.SYMBOLS,
        SymbolRow.class,
        TableReader.own(csv("symbols.csv", heading + row), TableFile.SYMBOLS, sources).values());
  }

  @Test
  void a_symbol_is_read_with_its_scope_and_with_every_unit_that_it_is_printed_in() {
    SymbolRow row =
        symbols("h.foot,h,footing;post.drift,foot,height,ft;in,calculation,statics,,none,\n")
            .row("h.foot");
    assertThat(row.units()).containsExactly(Unit.FOOT, Unit.INCH);
    assertThat(row.names("post.drift.push")).isTrue();
    assertThat(row.names("post.drifting")).isFalse();
    assertThat(row.everywhere()).isFalse();
  }

  @Test
  void a_symbol_with_a_scope_says_in_words_where_it_holds_and_no_other_does() {
    assertThatThrownBy(() -> symbols("h,h,footing,,height,ft,calculation,statics,,none,\n"))
        .hasMessageContaining("part: found nothing, accepted is words where scope has some");
    assertThatThrownBy(() -> symbols("h,h,,foot,height,ft,calculation,statics,,none,\n"))
        .hasMessageContaining("part: found 'foot', accepted is words where scope has some");
    assertThatThrownBy(() -> symbols("h,h,,,height,feet,calculation,statics,,none,\n"))
        .hasMessageContaining("unit: found 'feet', accepted is Btu/cu ft, ");
  }
}
