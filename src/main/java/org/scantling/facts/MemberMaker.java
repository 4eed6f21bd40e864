package org.scantling.facts;

import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.answers.Stock;
import org.scantling.candidates.Grading;
import org.scantling.design.Structure.Member;
import org.scantling.design.Structure.Notch;
import org.scantling.reasons.Question;
import org.scantling.tables.SizeRow;

/** Members of the finished answers: what each is made of, by the question that its size answers. */
final class MemberMaker {
  private static final double LAST_BITS = 1e-6;

  private final Stock stock;
  private final Answers answers;

  MemberMaker(Stock stock, Answers answers) {
    this.stock = stock;
    this.answers = answers;
  }

  /** The last bits would make two lengths of one. */
  static double told(double inches) {
    return Math.rint(inches / LAST_BITS) * LAST_BITS;
  }

  Member member(String role, Question size, double lengthIn, int count, List<Notch> notches) {
    SizeRow row = stock.row(answers.option(size));
    Grading grading = new Grading(stock, answers);
    return new Member(
        role,
        row.id(),
        Stock.plies(answers.option(size)),
        row.thicknessIn(),
        row.widthIn(),
        lengthIn,
        count,
        grading.species(size),
        grading.grade(size, answers.option(size)),
        notches);
  }
}
