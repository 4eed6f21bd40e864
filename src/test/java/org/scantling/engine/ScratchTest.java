package org.scantling.engine;

import java.nio.file.*;
import java.util.*;
import java.util.stream.*;
import org.junit.jupiter.api.Test;
import org.scantling.intake.*;
import org.scantling.reasons.*;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.*;

class ScratchTest {
  @Test
  void run() throws Exception {
    Tables t = Tables.load();
    RuleBase rb = RuleBase.load();
    Vocabulary v = new Vocabulary(
        t.designValues().rows().stream().map(r -> r.species()).collect(Collectors.toSet()),
        t.designValues().rows().stream().map(r -> r.grade()).collect(Collectors.toSet()),
        t.soils().rows().stream().map(r -> r.id()).collect(Collectors.toSet()),
        t.vines().rows().stream().map(r -> r.id()).collect(Collectors.toSet()),
        t.users().rows().stream().map(r -> r.id()).collect(Collectors.toSet()),
        t.sizes().rows().stream().map(r -> r.id()).collect(Collectors.toSet()));
    for (Path p : Files.list(Path.of("scenarios")).filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
      Intake in = new SiteReader(v).read(p);
      Proposal pr = new Engine(rb, t).propose(in.site(), in.defaulted());
      System.out.println("=== " + p + " " + (pr.proposed() ? "proposed" : pr.result()));
      for (Decision d : pr.decisions()) {
        System.out.println((d.changed() ? "* " : "  ") + d.question().id() + ": " + d.base().map(Object::toString).orElse("-") + " -> " + d.proposed() + "  [" + d.governing().note().id() + "]"
          + (d.changed() ? " rej " + d.rejected().stream().map(r -> ((Finding.Reject) r.finding()).option() + ":" + ((Finding.Reject) r.finding()).check() + ":" + String.format("%.2f", ((Finding.Reject) r.finding()).ratio())).toList() : ""));
      }
      for (Checked c : pr.checks()) System.out.println("     " + c.id() + " " + c.combination() + " " + String.format("%.3f (%.1f/%.1f)", c.check().ratio(), c.check().demand(), c.check().capacity()));
    }
  }
}
