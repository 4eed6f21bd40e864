package org.scantling.engine;

import java.util.List;
import org.scantling.design.Site;

/**
 * One of several bases that a site file names.
 *
 * @param file its path, as the site file has it
 * @param site the site over this base
 * @param assumptions paths of the site file and of this base that were left out
 */
public record NamedBase(String file, Site site, List<String> assumptions) {
  public NamedBase {
    assumptions = List.copyOf(assumptions);
  }
}
