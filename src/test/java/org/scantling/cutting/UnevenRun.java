package org.scantling.cutting;
import java.util.*;
public class UnevenRun {
  public static void main(String[] a) {
    int proven=0;
    for (int seed=0; seed<10; seed++) {
      CuttingProblem p = UnevenPrices.job(new Random(seed));
      long t=System.nanoTime();
      CuttingPlan plan = CuttingStock.solve(p);
      double s=(System.nanoTime()-t)/1e9;
      if (plan.proven()) proven++;
      System.out.printf("%d cost %d bound %d gap %.3f%% %.2fs %s%n", seed, plan.cost(), plan.bound(), 100*plan.gapRatio(), s, plan.proven());
    }
    System.out.println(proven);
  }
}
