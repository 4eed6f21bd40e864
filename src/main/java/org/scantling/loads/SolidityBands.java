package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Require;

/**
 * Force coefficients of open frames by how solid they are.
 *
 * @param bands rising, the first from 0; a band holds from its own solidity up to the next
 * @param openUpToRatio the most solid panel that still counts as open (0.7 in the figure)
 *     <p>Source: ASCE 7, 2016, figure 29.4-2
 */
public record SolidityBands(List<Band> bands, double openUpToRatio) {

  /**
   * One column of the figure.
   *
   * @param fromRatio solidity at which the band begins, 0 to 1
   * @param cfFactor force coefficient C_f, above zero
   */
  public record Band(double fromRatio, double cfFactor) {
    public Band {
      Require.share("solidity band start", fromRatio);
      Require.positive("force coefficient C_f", cfFactor, "");
    }
  }

  public SolidityBands {
    Require.share("most solid open panel", openUpToRatio);
    if (bands.isEmpty() || bands.get(0).fromRatio() > 0) {
      throw new IllegalArgumentException("solidity bands " + bands + " must begin at 0");
    }
    for (int i = 1; i < bands.size(); i++) {
      if (bands.get(i).fromRatio() <= bands.get(i - 1).fromRatio()) {
        throw new IllegalArgumentException("solidity bands " + bands + " must rise");
      }
    }
    bands = List.copyOf(bands);
  }

  /**
   * Finds the force coefficient of an open frame.
   *
   * @param solidityRatio ε, 0 to the open limit
   * @return C_f of the band that holds this solidity
   * @throws IllegalArgumentException if the panel is too solid to count as open
   *     <p>Source: ASCE 7, 2016, figure 29.4-2
   *     <p>Worked number: solidity 0.153 falls in the band from 0.1, C_f 1.8.
   */
  public double cfFactor(double solidityRatio) {
    Require.zeroOrMore("solidity", solidityRatio, "");
    if (solidityRatio > openUpToRatio) {
      throw new IllegalArgumentException(
          "solidity "
              + solidityRatio
              + " must be at most "
              + openUpToRatio
              + " for an open frame; a more solid panel is a freestanding wall");
    }
    double cfFactor = bands.get(0).cfFactor();
    for (Band band : bands) {
      if (solidityRatio >= band.fromRatio()) {
        cfFactor = band.cfFactor();
      }
    }
    return cfFactor;
  }
}
