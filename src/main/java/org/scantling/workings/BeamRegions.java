package org.scantling.workings;

import java.util.List;

/** What the overhangs and spans of a beam are called. */
final class BeamRegions {
  private final BeamTask task;
  private final BeamBurden burden;

  BeamRegions(BeamTask task, BeamBurden burden) {
    this.task = task;
    this.burden = burden;
  }

  /** Where regions that carry the same lie. */
  String names(List<Integer> group) {
    return group.size() == burden.regions()
        ? WorkingLabels.say("region.all")
        : String.join(", ", group.stream().map(this::name).toList());
  }

  /** The spans that carry the same as one of them. */
  String spansLike(int span) {
    List<Integer> group =
        burden.alike().stream()
            .filter(each -> each.contains(burden.region(span)))
            .findFirst()
            .orElseThrow();
    return String.join(", ", group.stream().filter(this::isSpan).map(this::name).toList());
  }

  private String name(int region) {
    int span = span(region);
    if (span < 0) {
      return WorkingLabels.say("region.first-tail");
    }
    if (span == spanCount()) {
      return WorkingLabels.say("region.last-tail");
    }
    return task.onPosts()
        ? WorkingLabels.say("region.bay", "number", Integer.toString(span + 1))
        : WorkingLabels.say("region.span");
  }

  private boolean isSpan(int region) {
    return span(region) >= 0 && span(region) < spanCount();
  }

  /** The span of a region; outside the row for a tail. */
  private int span(int region) {
    return region - burden.region(0);
  }

  private int spanCount() {
    return burden.scene().beam().spanCount();
  }
}
