package org.scantling.tables;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.zip.GZIPInputStream;

/**
 * Measured ground snow of North America, read when a site says where it lies.
 *
 * <p>Source: data of the package snowload, see stations/NOTICE.txt.
 */
public final class SnowStations {
  private static final String FILE = "/org/scantling/stations/ground-snow.csv.gz";

  private final List<SnowStation> all;

  private SnowStations(List<SnowStation> all) {
    this.all = all;
  }

  /** Read once. */
  private static final class Holder {
    static final SnowStations STATIONS = new SnowStations(read());
  }

  /** Those that ship with the program. */
  public static SnowStations measured() {
    return Holder.STATIONS;
  }

  /** All of them. */
  public List<SnowStation> all() {
    return all;
  }

  /**
   * The nearest ones, the nearest first.
   *
   * @param most how many
   * @param withinFt how far off they may be
   */
  public List<SnowStation> near(double latitude, double longitude, int most, double withinFt) {
    return all.stream()
        .filter(each -> each.distanceFt(latitude, longitude) <= withinFt)
        .sorted(Comparator.comparingDouble(each -> each.distanceFt(latitude, longitude)))
        .limit(most)
        .toList();
  }

  private static List<SnowStation> read() {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(SnowStations.class.getResourceAsStream(FILE)),
                StandardCharsets.UTF_8))) {
      return lines.lines().skip(1).map(SnowStations::station).toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(FILE + " must be readable", unreadable);
    }
  }

  private static SnowStation station(String line) {
    String[] cells = line.split(",", -1);
    return new SnowStation(
        cells[0],
        cells[1],
        Double.parseDouble(cells[2]),
        Double.parseDouble(cells[3]),
        Double.parseDouble(cells[6]));
  }
}
