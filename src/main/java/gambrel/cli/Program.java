package gambrel.cli;

import gambrel.night.Documents;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * The program, which finds the command that is asked for.
 *
 * @param maker makes a shop's documents
 * @param isTerminal whether {@code err} is a terminal
 */
record Program(
    Documents.Maker maker, BooleanSupplier isTerminal, PrintWriter out, PrintWriter err) {
  private static final String EXIT_CODES =
      """

      Exit codes:
        0  nothing for a person to do
        1  done, and something waits for a person
        2  bad usage, or a shop folder that cannot be read; nothing published
        3  another run holds the output folder
        4  failed half-way; the last published state stands, or the next run completes the new one
      """;

  private static List<Command> commands() {
    return List.of(
        new StartCommand(),
        new CheckCommand(),
        new RunCommand(),
        new ExplainCommand(),
        new CutsCommand(),
        new SendCommand(),
        new CompletionCommand());
  }

  /** Does what a command line asks for; returns the exit code. */
  int run(List<String> words) {
    var first = words.stream().findFirst().orElse("");
    var command = commands().stream().filter(one -> one.name().equals(first)).findFirst();
    try {
      return command.isPresent()
          ? command.get().run(this, words.subList(1, words.size()))
          : withoutCommand(first);
    } catch (Command.BadUsage e) {
      err.println(e.getMessage());
      command.ifPresentOrElse(known -> known.printHelp(err), () -> printHelp(err));
      return 2;
    }
  }

  private int withoutCommand(String word) {
    switch (word) {
      case "-h", "--help" -> printHelp(out);
      case "-V", "--version" -> out.println("gambrel " + version().orElse("(not packaged)"));
      case "" ->
          throw new Command.BadUsage("Say what to do: start, check, run, explain, cuts or send.");
      default -> throw new Command.BadUsage("There is no command " + word + '.');
    }
    return 0;
  }

  /** The version in the jar's manifest. */
  private static Optional<String> version() {
    return Optional.ofNullable(Program.class.getPackage().getImplementationVersion());
  }

  private static void printHelp(PrintWriter to) {
    to.println("usage: gambrel COMMAND, gambrel COMMAND --help or gambrel --version");
    to.println("Take-home statements and shrink summaries from a boning room's scale exports.");
    to.println();
    commands().forEach(command -> to.println(command.line()));
    to.print(EXIT_CODES);
  }

  /** A script for bash and zsh that completes the commands, their options and paths. */
  static String completion() {
    var options =
        commands().stream()
            .map(
                one -> "    " + one.name() + ") words='" + String.join(" ", one.options()) + "' ;;")
            .collect(Collectors.joining("\n"));
    var names = commands().stream().map(Command::name).collect(Collectors.joining(" "));
    return """
        [ -n "$ZSH_VERSION" ] && autoload -U bashcompinit && bashcompinit
        _gambrel() {
          local words
          case $COMP_CWORD,${COMP_WORDS[1]} in
            1,*) words='%s' ;;
          esac
          [ "$COMP_CWORD" -gt 1 ] && case ${COMP_WORDS[1]} in
        %s
          esac
          COMPREPLY=($(compgen -W "$words" -- "${COMP_WORDS[COMP_CWORD]}"))
        }
        complete -o default -F _gambrel gambrel
        """
        .formatted(names, options);
  }
}
