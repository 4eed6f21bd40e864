/**
 * Writes a sheet as a file of PDF: text that can be selected, fonts within, every part tagged for
 * those who have it read to them, drawings as lines. Alone imports the library of PDF.
 *
 * <p>May depend on: quantity, print, drawing, sheets. Entry point: {@link
 * org.scantling.pdf.PdfWriter}.
 */
@NullMarked
package org.scantling.pdf;

import org.jspecify.annotations.NullMarked;
