package gambrel.cli;

/** Prints a script that completes command lines. */
final class CompletionCommand extends Command {
  CompletionCommand() {
    super("generate-completion", "Prints a completion script for bash and zsh.");
  }

  @Override
  int work() {
    out().print(Program.completion());
    return 0;
  }
}
