package org.scantling.intake;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.scantling.design.BaseDesign;

/**
 * A design as read.
 *
 * @param design the structure
 * @param defaulted paths that the file leaves out
 * @param originalText what was written, by path, before units were converted
 */
public record DesignIntake(
    BaseDesign design, List<String> defaulted, SortedMap<String, String> originalText) {
  public DesignIntake {
    defaulted = List.copyOf(defaulted);
    originalText = Collections.unmodifiableSortedMap(new TreeMap<>(originalText));
  }
}
