package org.scantling.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Explains one decision. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    description = "Explains one decision to a client, a builder or an engineer.")
final class WhyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SiteOptions options;

  @Override
  public Integer call() {
    return ExitStatus.ANSWERED;
  }
}
