package org.scantling.property;

import org.junit.jupiter.api.Test;
import org.scantling.reasons.*;

class ProbeTest {
  @Test
  void probe() {
    for (var base : java.util.List.of(House.herbGarden(), House.smallArbour())) {
      for (double len : new double[] {42, 120, 480}) {
        Proposal p = House.propose(Wish.plain().length(len), base);
        System.out.println("=====" + base.title() + " " + len + " " + p.proposed());
        if (p.result() instanceof Proposal.Result.NeedsEngineer n)
          System.out.println(n.demand() + " " + n.broken() + " " + n.reason().finding());
        for (Decision d : p.decisions())
          System.out.println(
              d.question().id()
                  + " = "
                  + d.proposed()
                  + (d.changed() ? " CHANGED from " + d.base() : "")
                  + " by "
                  + d.governing().note().id()
                  + " rej "
                  + d.rejected().stream()
                      .map(
                          r ->
                              ((Finding.Reject) r.finding()).option()
                                  + ":"
                                  + ((Finding.Reject) r.finding()).check()
                                  + ":"
                                  + String.format("%.2f", ((Finding.Reject) r.finding()).ratio()))
                      .toList());
        for (Checked c : p.checks())
          System.out.printf(
              "   %-36s %-22s %10.2f / %10.2f = %.3f%n",
              c.id(), c.combination(), c.check().demand(), c.check().capacity(), c.check().ratio());
      }
    }
    long t = System.nanoTime();
    for (int i = 0; i < 200; i++)
      House.propose(Wish.plain().length(48 + 3 * i), House.herbGarden());
    System.out.println("ms each " + (System.nanoTime() - t) / 200e6);
  }
}
