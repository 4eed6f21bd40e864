package org.scantling.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.scantling.intake.NearMiss;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;
import org.scantling.sayings.Listed;

/** Reads the values of options and keeps what is wrong with them, so that all of it is told. */
final class OptionReader {
  private final List<String> complaints = new ArrayList<>();

  /** A quantity of 0 or more, or 0 after a complaint. */
  double amount(String option, QuantityKind kind, String text) {
    return number(option, text, kind::parse, kind::accepted, 0);
  }

  /** A quantity above 0. */
  double positive(String option, QuantityKind kind, String text) {
    double amount = number(option, text, kind::parse, kind::accepted, 0);
    if (!(amount > 0)) {
      complain(
          option, text, CommandWords.say("accepted.above-nothing", "accepted", kind.accepted()));
    }
    return amount;
  }

  /** A bare number of {@code least} or more. */
  double bare(String option, String text, double least) {
    return number(
        option,
        text,
        Double::parseDouble,
        () -> CommandWords.say("accepted.at-least", "least", plain(least)),
        least);
  }

  /** A whole number of 1 or more. */
  int count(String option, String text) {
    double number = bare(option, text, 1);
    if (number != Math.rint(number)) {
      complain(option, text, CommandWords.say("accepted.whole"));
    }
    return (int) number;
  }

  /** {@code none}, or a number above 1. */
  OptionalDouble divisor(String option, String text) {
    if (text.strip().equals("none")) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        number(option, text, Double::parseDouble, () -> CommandWords.say("accepted.divisor"), 1));
  }

  /** One of the words. */
  String word(String option, String text, Collection<String> known) {
    String plain = text.strip();
    if (!known.contains(plain)) {
      String accepted = Listed.or(known.stream().sorted().toList());
      complain(option, plain, accepted, NearMiss.advice(plain, known));
    }
    return plain;
  }

  void complain(String option, String found, String accepted) {
    complain(option, found, accepted, "");
  }

  /**
   * @param advice a likely remedy as a sentence, or empty
   */
  void complain(String option, String found, String accepted, String advice) {
    complaints.add(
        CommandWords.say(
            "option.wrong",
            "option",
            option,
            "found",
            CommandWords.found(found),
            "accepted",
            accepted,
            "advice",
            advice));
  }

  /** An option that has nothing to do with what was asked. */
  void misplaced(String option, String why) {
    complaints.add(CommandWords.say("option.misplaced", "option", option, "why", why));
  }

  /** True while nothing was wrong. */
  boolean clear() {
    return complaints.isEmpty();
  }

  /**
   * @throws WrongOption when anything was wrong
   */
  void done() {
    if (!complaints.isEmpty()) {
      throw new WrongOption(String.join("\n", complaints));
    }
  }

  private double number(
      String option,
      String text,
      Function<String, Double> read,
      Supplier<String> accepted,
      double least) {
    try {
      double number = read.apply(text.strip());
      if (Double.isFinite(number) && number >= least) {
        return number;
      }
      complain(option, text, accepted.get());
    } catch (QuantityException wrong) {
      misplaced(option, wrong.getMessage());
    } catch (NumberFormatException noNumber) {
      complain(option, text, accepted.get());
    }
    return least > 0 ? least : 1;
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
