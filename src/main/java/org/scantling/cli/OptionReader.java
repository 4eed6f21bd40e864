package org.scantling.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scantling.intake.NearMiss;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;

/** Reads the values of options and keeps what is wrong with them, so that all of it is told. */
final class OptionReader {
  private final List<String> complaints = new ArrayList<>();

  /** A quantity of 0 or more, or 0 after a complaint. */
  double amount(String option, QuantityKind kind, String text) {
    return number(option, text, kind::parse, kind.accepted(), 0);
  }

  /** A quantity above 0. */
  double positive(String option, QuantityKind kind, String text) {
    double amount = number(option, text, kind::parse, kind.accepted(), 0);
    if (!(amount > 0)) {
      complain(option, text, kind.accepted() + ", above 0");
    }
    return amount;
  }

  /** A bare number of {@code least} or more. */
  double bare(String option, String text, double least) {
    return number(
        option, text, Double::parseDouble, "a number of " + plain(least) + " or more", least);
  }

  /** A whole number of 1 or more. */
  int count(String option, String text) {
    double number = bare(option, text, 1);
    if (number != Math.rint(number)) {
      complain(option, text, "a whole number of 1 or more");
    }
    return (int) number;
  }

  /** {@code none}, or a number above 1. */
  OptionalDouble divisor(String option, String text) {
    if (text.strip().equals("none")) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        number(option, text, Double::parseDouble, "none, or a number such as 240", 1));
  }

  /** One of the words. */
  String word(String option, String text, Collection<String> known) {
    String plain = text.strip();
    if (!known.contains(plain)) {
      String maybe = NearMiss.advice(plain, known);
      complaints.add(
          option
              + ": "
              + shown(plain)
              + " must be "
              + either(known)
              + (maybe.isEmpty() ? "" : ". " + maybe));
    }
    return plain;
  }

  void complain(String option, String found, String accepted) {
    complaints.add(option + ": " + shown(found) + " must be " + accepted);
  }

  /** An option that has nothing to do with what was asked. */
  void misplaced(String option, String why) {
    complaints.add(option + ": " + why);
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
      String option, String text, Function<String, Double> read, String accepted, double least) {
    try {
      double number = read.apply(text.strip());
      if (Double.isFinite(number) && number >= least) {
        return number;
      }
      complain(option, text, accepted);
    } catch (QuantityException wrong) {
      complaints.add(option + ": " + wrong.getMessage());
    } catch (NumberFormatException noNumber) {
      complain(option, text, accepted);
    }
    return least > 0 ? least : 1;
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  private static String either(Collection<String> words) {
    List<String> all = Stream.concat(words.stream(), Stream.empty()).sorted().toList();
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : String.join(", ", all.subList(0, last)) + " or " + all.get(last);
  }

  private static String shown(String text) {
    return text.isBlank() ? "nothing" : text.strip();
  }
}
