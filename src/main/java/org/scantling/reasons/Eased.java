package org.scantling.reasons;

/**
 * A check that may go past its published limit, as far as the base design itself does.
 *
 * @param check such as footing.embedment
 * @param ratio greatest demand over capacity, above the limit of the check's row
 */
public record Eased(String check, double ratio) implements Fact {
  @Override
  public String reference() {
    return "base:" + check;
  }
}
