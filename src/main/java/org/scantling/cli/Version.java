package org.scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that Maven wrote at build time. */
final class Version implements IVersionProvider {
  private static final String FILE = "/org/scantling/version.properties";

  @Override
  public String[] getVersion() throws IOException {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream(FILE)) {
      properties.load(in);
    }
    return new String[] {"scantling " + properties.getProperty("version")};
  }
}
