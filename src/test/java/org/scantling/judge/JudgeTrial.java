package org.scantling.judge;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.*;
import org.scantling.cli.Run;
import tools.jackson.databind.json.JsonMapper;
/** scratch. */
final class JudgeTrial {
  record Row(long seed, String check, double mine, double theirs, Set<String> tags, String combo) {}
  public static void main(String[] a) throws Exception {
    int from = Integer.parseInt(a[0]), to = Integer.parseInt(a[1]);
    Path dir = Files.createTempDirectory("judge");
    Map<Integer,Integer> status = new TreeMap<>();
    List<Row> rows = new ArrayList<>();
    Map<String,Integer> tagc = new TreeMap<>();
    long t0 = System.nanoTime(), mine = 0;
    Set<String> ids = new TreeSet<>();
    for (int s = from; s < to; s++) {
      RandomSite site = RandomSite.of(s);
      Run run = Run.of("propose", site.writtenTo(dir).toString(), "--format", "json");
      status.merge(run.status(), 1, Integer::sum);
      if (run.status() == 1 || run.status() == 2) System.out.println("seed " + s + " exit " + run.status() + " " + run.err().lines().limit(4).toList());
      if (run.status() != 0) continue;
      long t1 = System.nanoTime();
      Judged j;
      try { j = Judged.of(JsonMapper.shared().readTree(run.out()), site.gathered()); }
      catch (Exception e) { System.out.println("seed " + s + " JUDGE " + e); e.printStackTrace(System.out); continue; }
      mine += System.nanoTime() - t1;
      j.tags().forEach(t -> tagc.merge(t, 1, Integer::sum));
      for (var c : j.design().json().path("checks")) ids.add(c.path("id").asString());
      for (var e : j.findings().entrySet()) {
        double p = e.getKey().startsWith("criteria") ? 1 : j.printed(e.getKey());
        rows.add(new Row(s, e.getKey(), e.getValue().ratio(), p, j.tags(), e.getValue().combination()));
      }
    }
    System.out.printf("%s sites %d s, judge %.1f s%n%s%n", status, (System.nanoTime()-t0)/1000000000L, mine/1e9, tagc);
    Map<String,List<Row>> by = new TreeMap<>();
    rows.forEach(r -> { by.computeIfAbsent(r.check(), k -> new ArrayList<>()).add(r); ids.remove(r.check()); });
    System.out.println("not judged: " + ids);
    for (var e : by.entrySet()) {
      var l = e.getValue();
      long nan = l.stream().filter(r -> Double.isNaN(r.theirs())).count();
      var bad = l.stream().filter(r -> !Double.isNaN(r.theirs()) && Math.abs(r.theirs() - r.mine()) > Math.max(.003, .03 * r.mine())).toList();
      double lo = l.stream().mapToDouble(r -> r.theirs()/r.mine()).min().orElse(0), hi = l.stream().mapToDouble(r -> r.theirs()/r.mine()).max().orElse(0);
      long low = bad.stream().filter(r -> r.theirs() < r.mine()).count();
      double top = l.stream().mapToDouble(Row::mine).max().orElse(0);
      System.out.printf("%-32s n %4d none %3d off %4d (low %4d) theirs/mine %.3f..%.3f  max mine %.3f over1: %s%n", e.getKey(), l.size(), nan, bad.size(), low, lo, hi, top, l.stream().filter(r -> r.mine() > 1.005).map(r -> r.seed()).limit(8).toList());
      bad.stream().sorted(Comparator.comparingDouble((Row r) -> r.theirs()/r.mine())).limit(3).forEach(r -> System.out.printf("      LOW seed %d mine %.4f theirs %.4f %s %s%n", r.seed(), r.mine(), r.theirs(), r.combo(), r.tags()));
      bad.stream().sorted(Comparator.comparingDouble((Row r) -> -r.theirs()/r.mine())).limit(2).forEach(r -> System.out.printf("      HIGH seed %d mine %.4f theirs %.4f %s %s%n", r.seed(), r.mine(), r.theirs(), r.combo(), r.tags()));
    }
  }
}
