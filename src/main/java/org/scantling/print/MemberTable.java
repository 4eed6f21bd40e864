package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Member;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** The pieces, a row for those that read alike. */
final class MemberTable {
  private static final Sayings SAYINGS = Sayings.of("proposal");

  private final Voice voice;

  MemberTable(Voice voice) {
    this.voice = voice;
  }

  Block of(Structure structure) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "",
            SAYINGS.say("column.pieces"),
            SAYINGS.say("column.size"),
            SAYINGS.say("column.length"),
            SAYINGS.say("column.together")));
    Map<List<String>, List<Member>> alike = new LinkedHashMap<>();
    for (Member member : structure.members()) {
      List<String> told = List.of(member.role(), member.size(), inches(member.lengthIn()));
      alike.computeIfAbsent(told, it -> new ArrayList<>()).add(member);
    }
    alike.values().forEach(each -> rows.add(row(each)));
    return new Block.Grid(rows);
  }

  /** Pieces that read alike, whatever is cut into them. */
  private List<String> row(List<Member> alike) {
    Member first = alike.get(0);
    int count = alike.stream().mapToInt(Member::count).sum();
    String length = inches(first.lengthIn());
    // Of the length as told: the reader's own sum must come to the same.
    String together = inches(count * Length.parse(length));
    return List.of(
        Sentence.capital(voice.role(first.role())),
        Integer.toString(count),
        first.size(),
        length,
        together);
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
