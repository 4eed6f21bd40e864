package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Source;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/** A reader who looks a clause up is sent to one edition only. */
class EditionsTest {
  private static final Pattern CLAUSE =
      Pattern.compile("\\b(?:\\d{4}\\.\\d+(?:\\.\\d+)*|R\\d{3}(?:\\.\\d+)*|Appendix H)");
  private static final Pattern EDITION = Pattern.compile("\\b(?:19|20)\\d\\d\\b");

  @Test
  void one_clause_is_cited_from_one_edition_in_rules_and_tables_alike() {
    Map<String, Set<String>> editions = new TreeMap<>();
    citations().forEach(citation -> note(citation, editions));
    assertThat(editions).containsKeys("1807.3.2.1", "1806.2", "R301.2.3", "Appendix H");
    assertThat(editions.entrySet()).allMatch(each -> each.getValue().size() == 1);
  }

  private static void note(String citation, Map<String, Set<String>> editions) {
    Matcher clause = CLAUSE.matcher(citation);
    Matcher edition = EDITION.matcher(citation);
    if (clause.find() && edition.find()) {
      editions.computeIfAbsent(clause.group(), key -> new TreeSet<>()).add(edition.group());
    }
  }

  private static Stream<String> citations() {
    Tables tables = Tables.load();
    Stream<TableRow> rows =
        Stream.of(
                tables.thumbs(),
                tables.checks(),
                tables.live(),
                tables.snow(),
                tables.soils(),
                tables.cautions(),
                tables.users())
            .flatMap(table -> table.rows().stream());
    return Stream.concat(
            rows.map(TableRow::source),
            RuleBase.load().notes().values().stream().map(note -> note.source()))
        .map(Source::citation);
  }
}
