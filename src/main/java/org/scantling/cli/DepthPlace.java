package org.scantling.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.Setting;
import picocli.CommandLine.Option;

/** What holds for a whole table of hole depths: the place, the climber and the top. */
final class DepthPlace {
  @Option(names = "--exposure", paramLabel = "B|C|D")
  private @Nullable String exposure;

  @Option(names = "--vine", paramLabel = "KEY")
  private @Nullable String vine;

  @Option(names = "--snow", paramLabel = "LOAD")
  private @Nullable String snow;

  @Option(names = "--isolated-posts", paramLabel = "yes|no")
  private @Nullable String isolated;

  @Option(names = "--row-spacing", paramLabel = "LENGTH")
  private @Nullable String rowSpacing;

  @Option(names = "--header", paramLabel = "SIZE")
  private @Nullable String header;

  @Option(names = "--crossbeam", paramLabel = "SIZE")
  private @Nullable String crossbeam;

  /** What a site file would say of it. */
  List<Setting> ofSite() {
    List<Setting> settings = new ArrayList<>();
    add(settings, "site.climate.exposure", exposure);
    add(settings, "site.climate.ground-snow", snow);
    add(settings, "site.isolated-posts", isolated);
    add(settings, "planting[0].vine", vine);
    return settings;
  }

  /** What a design file would say of it. */
  List<Setting> ofDesign() {
    List<Setting> settings = new ArrayList<>();
    add(settings, "posts.row-spacing", rowSpacing);
    add(settings, "headers.size", header);
    add(settings, "crossbeams.size", crossbeam);
    return settings;
  }

  private static void add(List<Setting> settings, String path, @Nullable String value) {
    if (value != null) {
      settings.add(new Setting(path, value));
    }
  }
}
