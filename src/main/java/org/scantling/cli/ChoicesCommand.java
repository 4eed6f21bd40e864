package org.scantling.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.NearMiss;
import org.scantling.print.ChoicesJson;
import org.scantling.print.ChoicesText;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.HouseTables;
import org.scantling.tables.Tables;
import org.scantling.words.ClosedList;
import org.scantling.words.ClosedLists;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The words that a site file accepts, and how to tell on the spot which is right. */
@Command(name = "choices", mixinStandardHelpOptions = true)
final class ChoicesCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private GeneralOptions general;

  @Parameters(index = "0", arity = "0..1", paramLabel = "LIST", descriptionKey = "list")
  private @Nullable String asked;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Tables tables = general.houseRules().map(HouseTables::load).orElseGet(Tables::load);
    PrintOptions options = general.printing(UnitSystem.IMPERIAL);
    ClosedLists lists = ClosedLists.of(tables, options.units());
    ChoicesText text = new ChoicesText(options, format == Format.MARKDOWN);
    if (asked == null) {
      print(format == Format.JSON ? ChoicesJson.of(lists.all()) : text.all(lists.all()));
    } else {
      ClosedList one = one(lists, asked);
      print(format == Format.JSON ? ChoicesJson.of(List.of(one)) : text.one(one));
    }
    return ExitStatus.ANSWERED;
  }

  private static ClosedList one(ClosedLists lists, String asked) {
    return lists
        .find(asked)
        .orElseThrow(
            () ->
                new WrongOption(
                    CommandWords.say(
                        "choices.unknown",
                        "asked",
                        asked,
                        "maybe",
                        NearMiss.advice(asked, lists.names()))));
  }

  private void print(String text) {
    spec.commandLine().getOut().print(text);
  }
}
