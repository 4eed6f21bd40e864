package org.scantling.sheets;

import java.util.List;

/**
 * A sheet as it is published.
 *
 * @param name of its file, without the ending
 * @param title the job
 * @param kind what sheet of the job it is
 * @param foot what stands at its end and, short, at the foot of each page
 * @param paper what it is printed on
 * @param parts from top to bottom
 */
public record SheetDocument(
    String name, String title, String kind, String foot, Paper paper, List<Part> parts) {
  public SheetDocument {
    parts = List.copyOf(parts);
  }
}
