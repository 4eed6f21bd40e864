package org.scantling.engine;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Outcome;
import org.scantling.tables.DemandRow;

/** The values of a demand that can be tried, as numbered places in order. */
sealed interface DemandScale {
  /** The place of today's value. */
  int today();

  int least();

  int most();

  Outcome value(int place);

  /** The places that are tried before the search closes in, with both ends and today's. */
  SortedSet<Integer> samples();

  /**
   * Numbers a step apart, counted from today's value, so that today's is one of them.
   *
   * @param origin today's value
   */
  record Numbers(Measure origin, DemandRow.Scale row) implements DemandScale {
    private static final double SLACK = 1e-9;

    @Override
    public int today() {
      return 0;
    }

    @Override
    public int least() {
      return Math.min(0, (int) Math.ceil((lowest() - origin.amount()) / step() - SLACK));
    }

    @Override
    public int most() {
      return Math.max(0, (int) Math.floor((highest() - origin.amount()) / step() + SLACK));
    }

    private double lowest() {
      return Math.max(row.least().amount(), origin.amount() - reach());
    }

    private double highest() {
      return Math.min(row.most().amount(), origin.amount() + reach());
    }

    private double reach() {
      return row.reach().map(Measure::amount).orElse(Double.POSITIVE_INFINITY);
    }

    private double step() {
      return row.step().amount();
    }

    /** So many steps as a share of all that the row has. */
    double shareRatio(int steps) {
      return steps * step() / (row.most().amount() - row.least().amount());
    }

    @Override
    public Outcome value(int place) {
      return new Outcome.Amount(new Measure(origin.amount() + place * step(), origin.unit()));
    }

    @Override
    public SortedSet<Integer> samples() {
      SortedSet<Integer> samples = new TreeSet<>(List.of(least(), 0, most()));
      int apart = (int) Math.max(1, Math.round(row.sampleStep().amount() / step()));
      for (int place = apart; place < most(); place += apart) {
        samples.add(place);
      }
      for (int place = -apart; place > least(); place -= apart) {
        samples.add(place);
      }
      return samples;
    }
  }

  /** The words of a table, in its order; all of them are tried. */
  record Words(List<String> words, int today) implements DemandScale {
    @Override
    public int least() {
      return 0;
    }

    @Override
    public int most() {
      return words.size() - 1;
    }

    @Override
    public Outcome value(int place) {
      return new Outcome.Word(words.get(place));
    }

    @Override
    public SortedSet<Integer> samples() {
      SortedSet<Integer> all = new TreeSet<>();
      for (int place = 0; place < words.size(); place++) {
        all.add(place);
      }
      return all;
    }
  }
}
