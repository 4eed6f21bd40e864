package org.scantling.print;

import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.SmallChange;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Small changes that would spare something, for programs. */
public final class NearMissJson {
  private NearMissJson() {}

  /** As {@code nearMisses[]} of a proposal. */
  public static void write(
      List<SmallChange> near, Proposal today, Words words, ObjectNode proposal) {
    ArrayNode all = proposal.putArray("nearMisses");
    if (!near.isEmpty()) {
      NearMissWords said =
          new NearMissWords(today, words, words.voice(Reader.BUILDER, UnitSystem.IMPERIAL));
      for (SmallChange each : near) {
        ObjectNode node = all.addObject();
        node.put("id", each.id());
        each.settings().forEach(node.putArray("set")::add);
        node.put("text", said.sentence(each));
        said.changes(each).forEach(node.putArray("changes")::add);
      }
    }
  }
}
