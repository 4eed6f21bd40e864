package org.scantling.print;

import java.util.List;
import org.scantling.reasons.Proposal;

/**
 * One column of a comparison.
 *
 * @param file the site file
 * @param settings what was set otherwise than the file has it
 */
public record ComparedSite(String file, List<String> settings, Proposal proposal) {
  public ComparedSite {
    settings = List.copyOf(settings);
  }
}
