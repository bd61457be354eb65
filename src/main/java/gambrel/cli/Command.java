package gambrel.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.help.HelpFormatter;
import org.apache.commons.cli.help.TextHelpAppendable;

/** A command of the program: its name, what stands after it, and its work. */
abstract class Command {
  private static final String HELP = "help";
  private static final int WIDTH = 80;

  private final String name;
  private final String does;
  private final Map<String, String> parameters = new LinkedHashMap<>();
  private final Options options = new Options();
  private CommandLine given;
  private Program program;

  /** A command line with something unknown, or without something that is needed. */
  static final class BadUsage extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadUsage(String message) {
      super(message);
    }
  }

  /**
   * A command without parameters and with the option {@code --help}.
   *
   * @param does a sentence
   */
  Command(String name, String does) {
    this.name = name;
    this.does = does;
    options.addOption("h", HELP, false, "prints this text");
  }

  /** Adds a parameter; one whose name stands in square brackets may be left out. */
  final void takes(String parameter, String description) {
    parameters.put(parameter, description);
  }

  /** Adds an option {@code --option}; it has a value unless {@code value} is empty. */
  final void option(String option, String value, String description) {
    var made = Option.builder().longOpt(option).desc(description);
    options.addOption((value.isEmpty() ? made : made.hasArg().argName(value)).get());
  }

  final String name() {
    return name;
  }

  /** Its name and what it does, as a line of the program's help. */
  final String line() {
    return "  %-20s %s".formatted(name, does);
  }

  /** The options as they are written. */
  final List<String> options() {
    return options.getOptions().stream().map(option -> "--" + option.getLongOpt()).toList();
  }

  /**
   * Does what a command line asks for; returns the exit code.
   *
   * @throws BadUsage if it cannot be understood
   */
  final int run(Program of, List<String> words) {
    program = of;
    try {
      var parser = DefaultParser.builder().setAllowPartialMatching(false).get();
      given = parser.parse(options, words.toArray(String[]::new));
    } catch (ParseException e) {
      throw new BadUsage(e.getMessage() + '.');
    }
    if (has(HELP)) {
      printHelp(out());
      return 0;
    }
    var found = given.getArgList();
    var missing = parameters.keySet().stream().skip(found.size()).filter(p -> !p.startsWith("["));
    missing.findFirst().ifPresent(parameter -> fail(parameter + " is missing."));
    found.stream()
        .skip(parameters.size())
        .findFirst()
        .ifPresent(more -> fail("Not known: " + more));
    return work();
  }

  private static void fail(String message) {
    throw new BadUsage(message);
  }

  /** Does the work of the command; returns the exit code. */
  abstract int work();

  final void printHelp(PrintWriter to) {
    var usage = "gambrel " + name + " [options] " + String.join(" ", parameters.keySet());
    var said =
        parameters.entrySet().stream()
            .map(one -> one.getKey() + ": " + one.getValue() + '.')
            .collect(Collectors.joining(" "));
    var page = new TextHelpAppendable(to);
    page.setMaxWidth(WIDTH);
    var formatter = HelpFormatter.builder().setHelpAppendable(page).setShowSince(false).get();
    try {
      formatter.printHelp(usage, does + ' ' + said, options, "", false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  final Program program() {
    return program;
  }

  final PrintWriter out() {
    return program.out();
  }

  final PrintWriter err() {
    return program.err();
  }

  /** The text of a parameter, from 0; empty if it was left out. */
  final Optional<String> parameter(int index) {
    return given.getArgList().stream().skip(index).findFirst();
  }

  /** The shop folder or other folder that is the first parameter. */
  final Path folder() {
    return path(parameter(0).orElseThrow());
  }

  /** Whether an option is there. */
  final boolean has(String option) {
    return given.hasOption(option);
  }

  /**
   * The value of an option; empty without it.
   *
   * @throws BadUsage if there is more than one
   */
  final Optional<String> value(String option) {
    if (values(option).size() > 1) {
      throw new BadUsage("--" + option + " is there twice.");
    }
    return values(option).stream().findFirst();
  }

  /** All values of an option. */
  final List<String> values(String option) {
    return has(option) ? List.of(given.getOptionValues(option)) : List.of();
  }

  /** The value of an option as a path; empty without it. */
  final Optional<Path> pathOf(String option) {
    return value(option).map(Command::path);
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new BadUsage('"' + text + "\" is no path.");
    }
  }
}
