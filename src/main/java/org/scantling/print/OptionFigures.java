package org.scantling.print;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.WholeOption;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** The figures by which whole structures are compared, as people read them. */
final class OptionFigures {
  private static final Sayings SAYINGS = Sayings.of("whole-options");

  private final Voice voice;
  private final UnitSystem units;

  OptionFigures(Voice voice, UnitSystem units) {
    this.voice = voice;
    this.units = units;
  }

  /** In a table whose head names the unit. */
  String cell(OptionMeasure measure, WholeOption option) {
    double amount = option.measure(measure);
    return switch (measure) {
      case COST ->
          Double.isInfinite(amount)
              ? SAYINGS.say("cost.more", "cost", option.cost().map(OptionFigures::money).orElse(""))
              : option.cost().map(OptionFigures::money).orElse("");
      case TIMBER, SOIL -> volume(amount);
      case HOLES -> decimals(amount, 0);
      case HOURS -> decimals(amount, 0);
      case LIFT ->
          decimals(units == UnitSystem.IMPERIAL ? amount : Unit.POUND_WEIGHT.toMetric(amount), 0);
      case LOOK, SPARE -> share(amount);
      case CONCEDED -> decimals(length(amount), 0);
      case OTHER_TIMBER -> "";
    };
  }

  /** In a sentence, how far apart two are; of what is shown in whole numbers, as it is shown. */
  String apart(OptionMeasure measure, double one, double other) {
    double amount =
        measure == OptionMeasure.HOURS
            ? Math.abs(Math.round(one) - Math.round(other))
            : Math.abs(one - other);
    return switch (measure) {
      case COST -> decimals(amount, 0);
      case TIMBER, SOIL -> volume(amount) + " " + unit(measure);
      case HOLES -> decimals(amount, 0);
      case HOURS -> decimals(amount, 0);
      case LIFT -> voice.say(new Measure(amount, Unit.POUND_WEIGHT));
      case LOOK, SPARE -> share(amount);
      case CONCEDED -> voice.say(Measure.inches(amount));
      case OTHER_TIMBER -> "";
    };
  }

  String unit(OptionMeasure measure) {
    return switch (measure) {
      case TIMBER, SOIL -> symbol(Unit.CUBIC_FOOT);
      case LIFT -> symbol(Unit.POUND_WEIGHT);
      case CONCEDED -> symbol(Unit.INCH);
      default -> "";
    };
  }

  private String symbol(Unit unit) {
    return units == UnitSystem.IMPERIAL ? unit.imperialSymbol() : unit.metricSymbol();
  }

  static String money(WholeOption.Cost cost) {
    String amount =
        cost.amount()
            .map(each -> each.setScale(0, RoundingMode.HALF_UP).toPlainString())
            .orElse("-");
    return (amount + " " + cost.currency()).strip();
  }

  /** People whom the heaviest piece takes. */
  static String hands(WholeOption option) {
    return option.hands() > 2 ? SAYINGS.say("hands.more") : Integer.toString(option.hands());
  }

  private String volume(double cuFt) {
    return units == UnitSystem.IMPERIAL
        ? decimals(cuFt, 1)
        : decimals(Unit.CUBIC_FOOT.toMetric(cuFt), 2);
  }

  private double length(double inches) {
    return units == UnitSystem.IMPERIAL ? inches : Unit.INCH.toMetric(inches);
  }

  private static String share(double ratio) {
    return decimals(100 * ratio, 0) + " %";
  }

  static String decimals(double amount, int places) {
    BigDecimal value = BigDecimal.valueOf(amount).setScale(places, RoundingMode.HALF_UP);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
