package org.scantling.cli;

import java.io.Console;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.UnitSystem;
import picocli.CommandLine.Option;

/** The options of every command. */
final class GeneralOptions {
  private static final int WIDTH = 80;

  /** When headings are set off by colour. */
  enum Colour {
    AUTO,
    ALWAYS,
    NEVER
  }

  @Option(names = "--units", paramLabel = "imperial|metric")
  private @Nullable UnitSystem units;

  @Option(names = "--house-rules", paramLabel = "DIR")
  private @Nullable Path houseRules;

  @Option(names = "--color", paramLabel = "auto|always|never")
  private Colour colour = Colour.AUTO;

  @Option(names = {"-v", "--verbose"})
  @SuppressWarnings("UnusedVariable") // whoever catches a fault asks the command line for it
  private boolean verbose;

  Optional<Path> houseRules() {
    return Optional.ofNullable(houseRules);
  }

  UnitSystem units(UnitSystem otherwise) {
    return units == null ? otherwise : units;
  }

  PrintOptions printing(UnitSystem otherwise) {
    return new PrintOptions(units(otherwise), coloured(), WIDTH);
  }

  private boolean coloured() {
    return switch (colour) {
      case ALWAYS -> true;
      case NEVER -> false;
      case AUTO -> terminal() && System.getenv("NO_COLOR") == null;
    };
  }

  /**
   * Whether somebody watches the error stream: Java cannot tell, so the start script says it; where
   * nobody does, a terminal at both other ends is taken for one.
   */
  boolean progress() {
    String told = System.getProperty("scantling.watched", "");
    return told.isEmpty() ? terminal() : Boolean.parseBoolean(told);
  }

  /** From Java 22 on there is a console where there is no terminal, and it can be asked. */
  @SuppressWarnings("SystemConsoleNull")
  static boolean terminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
