package org.scantling.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Where answers come from, and on which day: a person at a terminal, or lines that somebody wrote
 * before.
 */
final class AnswerInput {
  private final Supplier<? extends Reader> source;
  private final BooleanSupplier terminal;
  private final Clock clock;
  private @Nullable BufferedReader lines;
  private int read;

  AnswerInput(Supplier<? extends Reader> source, BooleanSupplier terminal, Clock clock) {
    this.source = source;
    this.terminal = terminal;
    this.clock = clock;
  }

  static AnswerInput standard() {
    return new AnswerInput(
        () -> new InputStreamReader(System.in, StandardCharsets.UTF_8),
        GeneralOptions::terminal,
        Clock.system(ZoneId.systemDefault()));
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** True where somebody sits in front of it and can answer again. */
  boolean isTerminal() {
    return terminal.getAsBoolean();
  }

  /** The next line; empty at the end. */
  Optional<String> line() {
    try {
      Optional<String> line = Optional.ofNullable(opened().readLine());
      read += line.isPresent() ? 1 : 0;
      return line;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private BufferedReader opened() {
    BufferedReader open = lines;
    if (open == null) {
      open = new BufferedReader(source.get());
      lines = open;
    }
    return open;
  }

  /** The number of the line that was read last, from 1. */
  int place() {
    return read;
  }
}
