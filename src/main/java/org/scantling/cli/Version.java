package org.scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that Maven wrote at build time. */
final class Version implements IVersionProvider {
  private static final String FILE = "/org/scantling/version.properties";

  @Override
  public String[] getVersion() throws IOException {
    return new String[] {"scantling " + number()};
  }

  /** Such as {@code 0.1.0}. */
  static String number() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream(FILE)) {
      properties.load(in);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
    return properties.getProperty("version", "");
  }
}
