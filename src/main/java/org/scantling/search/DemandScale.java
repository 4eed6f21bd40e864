package org.scantling.search;

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

  /** True where the values are words. */
  boolean words();

  /** So many places as a share of all that can be tried. */
  double shareRatio(int steps);

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

    @Override
    public boolean words() {
      return false;
    }

    /** So many steps as a share of all that the row has. */
    @Override
    public double shareRatio(int steps) {
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

  /**
   * Only what lies one way from today's value.
   *
   * @param up true for what lies after it
   */
  record OneWay(DemandScale whole, boolean up) implements DemandScale {
    @Override
    public int today() {
      return whole.today();
    }

    @Override
    public int least() {
      return up ? today() : whole.least();
    }

    @Override
    public int most() {
      return up ? whole.most() : today();
    }

    @Override
    public Outcome value(int place) {
      return whole.value(place);
    }

    @Override
    public SortedSet<Integer> samples() {
      return new TreeSet<>(whole.samples().subSet(least(), most() + 1));
    }

    @Override
    public boolean words() {
      return whole.words();
    }

    @Override
    public double shareRatio(int steps) {
      return whole.shareRatio(steps);
    }
  }

  /** The words of a table, in its order; all of them are tried. */
  record Words(List<String> all, int today) implements DemandScale {
    @Override
    public int least() {
      return 0;
    }

    @Override
    public int most() {
      return all.size() - 1;
    }

    @Override
    public boolean words() {
      return true;
    }

    @Override
    public double shareRatio(int steps) {
      return (double) steps / most();
    }

    @Override
    public Outcome value(int place) {
      return new Outcome.Word(all.get(place));
    }

    @Override
    public SortedSet<Integer> samples() {
      SortedSet<Integer> places = new TreeSet<>();
      for (int place = 0; place < all.size(); place++) {
        places.add(place);
      }
      return places;
    }
  }
}
