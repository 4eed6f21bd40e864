package org.scantling.judge;

/**
 * A loaded timber whose lift is greater near the edge of the top.
 *
 * @param mean the same under the mean lift
 * @param more how much more lifts at each node, over the mean
 */
record EdgeLoaded(Loaded mean, double[] more) {
  double least(double[] line, Combination load) {
    double lift = 0;
    for (double[] bay : mean.topUnits()) {
      for (int i = 0; i < line.length; i++) {
        lift += line[i] * bay[i] * more[i] * mean.top().liftLb();
      }
    }
    return mean.least(line, load) - (load.up() ? load.wind() * lift : 0);
  }
}
