package org.scantling.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Writes the manual pages, one of the program and one of each command, out of what {@code --help}
 * says; the build runs it.
 */
final class ManPages {
  private static final String SECTION = ".1";

  private final CommandLine root;

  private ManPages(CommandLine root) {
    this.root = root;
  }

  /**
   * @param args the folder that they are written into
   */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    for (Map.Entry<String, String> page : pages().entrySet()) {
      Files.writeString(folder.resolve(page.getKey()), page.getValue());
    }
  }

  /** Text by the name of its file. */
  static Map<String, String> pages() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    CommandLine root = HelpWords.told(Main.commandLine(nowhere, nowhere));
    ManPages manual = new ManPages(root);
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put(name(root) + SECTION, manual.page(root));
    root.getSubcommands()
        .values()
        .forEach(each -> pages.put(name(each) + SECTION, manual.page(each)));
    return pages;
  }

  /** As manual pages of a program with commands are called: with a hyphen for each blank. */
  private static String name(CommandLine command) {
    return command.getCommandSpec().qualifiedName("-");
  }

  private String page(CommandLine command) {
    Roff page = new Roff().page(name(command), "scantling " + Version.number());
    List<String> told = told(command);
    page.heading(CommandWords.say("man.name"))
        .paragraph(name(command) + " - " + told.get(0))
        .heading(CommandWords.say("man.synopsis"));
    String typed = command.getCommandSpec().qualifiedName();
    page.command(typed, synopsis(command).substring(typed.length()).strip());
    if (told.size() > 1) {
      page.heading(CommandWords.say("man.description"));
      told.subList(1, told.size()).forEach(page::paragraph);
    }
    arguments(page, command);
    commands(page, command);
    String footer = text(command.getCommandSpec().usageMessage().footer());
    if (command != root && !footer.isBlank()) {
      page.heading(CommandWords.say("man.examples")).shown(indented(footer));
    }
    page.heading(CommandWords.say("man.exit-status"))
        .paragraph(
            text(root.getCommandSpec().usageMessage().footer()).replaceFirst("^[^0-9]*(?=0)", ""));
    return page.heading(CommandWords.say("man.see-also")).paragraph(others(command)).toString();
  }

  /** The header or the first sentence, which says what it is for, and each paragraph behind it. */
  private static List<String> told(CommandLine command) {
    List<String> all = new ArrayList<>();
    for (String part : command.getCommandSpec().usageMessage().header()) {
      all.add(text(part));
    }
    for (String part : command.getCommandSpec().usageMessage().description()) {
      all.addAll(all.isEmpty() ? List.of(text(part).split("(?<=[.]) ", 2)) : List.of(text(part)));
    }
    return all;
  }

  /** Each line that can be typed by itself, indented as whole files are. */
  private static String indented(String footer) {
    return footer
        .replaceAll("(?m)^(For example:\\R|Examples?: *)", "")
        .replaceAll("(?m)^ *(?=scantling [a-z]+ )", "  ");
  }

  private static String synopsis(CommandLine command) {
    CommandLine.Help help =
        new CommandLine.Help(
            command.getCommandSpec(), CommandLine.Help.defaultColorScheme(Ansi.OFF));
    return help.synopsis(0).replaceAll("\\s+", " ").strip();
  }

  private static void arguments(Roff page, CommandLine command) {
    page.heading(CommandWords.say("man.options"));
    command
        .getCommandSpec()
        .positionalParameters()
        .forEach(each -> page.item(each.paramLabel(), text(each.description())));
    command
        .getCommandSpec()
        .options()
        .forEach(each -> page.item(called(each), text(each.description())));
  }

  private static String called(OptionSpec option) {
    String names = String.join(", ", option.names());
    return takes(option) ? names + "=" + option.paramLabel() : names;
  }

  private static boolean takes(ArgSpec argument) {
    return argument.arity().max() > 0;
  }

  private static void commands(Roff page, CommandLine command) {
    if (!command.getSubcommands().isEmpty()) {
      page.heading(CommandWords.say("man.commands"));
      command.getSubcommands().forEach((name, below) -> page.item(name, told(below).get(0)));
    }
  }

  private String others(CommandLine command) {
    List<String> names = new ArrayList<>();
    if (command != root) {
      names.add(name(root) + "(1)");
    }
    root.getSubcommands()
        .values()
        .forEach(
            each -> {
              if (each != command) {
                names.add(name(each) + "(1)");
              }
            });
    return String.join(", ", names);
  }

  private static String text(String... parts) {
    return String.format(String.join("\n", parts)).strip();
  }
}
