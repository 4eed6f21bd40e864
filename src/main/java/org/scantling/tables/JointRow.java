package org.scantling.tables;

import org.scantling.reasons.Question;
import org.scantling.reasons.Source;

/**
 * What holds one kind of joint.
 *
 * @param question the joint
 * @param style the header style it belongs to, or any
 * @param fasteners in words
 */
public record JointRow(
    String id, Question question, String style, String fasteners, Source source, String note)
    implements TableRow {
  static JointRow read(Row row) {
    return new JointRow(
        row.text("id"),
        Question.of(
            row.oneOf("question", "joint.crossbeam", "joint.header", "joint.rail", "joint.brace")),
        row.oneOf("style", "any", "on-top", "paired"),
        row.text("fasteners"),
        row.source(),
        row.optional("note"));
  }
}
