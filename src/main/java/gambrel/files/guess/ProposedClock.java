package gambrel.files.guess;

import gambrel.files.guess.GuessTable.Column;
import gambrel.files.layout.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the clock among columns of bare digits such as {@code 0731}, which may count tickets as
 * well.
 */
final class ProposedClock {
  private final LayoutDraft draft;
  private final ProposedTimes times;

  /** The columns that may be the clock; empty if one of them is for sure, or none may. */
  private final List<Column> open;

  /**
   * Takes the one column that is the clock for sure: another one counts the tickets, and it goes
   * from hour to hour without a minute above 59.
   */
  ProposedClock(LayoutDraft draft, ProposedTimes times) {
    this.draft = draft;
    this.times = times;
    var clocks =
        draft.has("time") || draft.has("clock") || draft.has(Layout.BARCODE) && !draft.has("date")
            ? List.<Column>of()
            : free().filter(c -> !GuessWords.isOther(c.title()) && times.isClock(c)).toList();
    var sure =
        clocks.stream().filter(c -> ticketBeside(c).isPresent() && times.goesByHours(c)).toList();
    this.open = sure.size() == 1 ? List.of() : clocks;
    if (open.isEmpty() && !clocks.isEmpty()) {
      var ticket = ticketBeside(sure.get(0)).orElseThrow();
      draft.choose("clock", sure.get(0), "it rises within each day");
      if (!isTicket(ticket)) {
        draft.choose("ticket", ticket, "it counts up");
      }
    }
  }

  /** Whether a column may be the clock, or count tickets. */
  boolean isOpen(Column column) {
    return open.contains(column);
  }

  /** The columns that are of no field, and one that is taken for the ticket not by its name. */
  private Stream<Column> free() {
    boolean named =
        draft.has("ticket") && GuessWords.score("ticket", draft.column("ticket").title()) > 0;
    return draft.table().columns().stream()
        .filter(c -> draft.unused().contains(c) || isTicket(c) && !named);
  }

  private boolean isTicket(Column column) {
    return draft.has("ticket") && draft.column("ticket").equals(column);
  }

  /** The column that counts the tickets if another one is the clock. */
  private Optional<Column> ticketBeside(Column clock) {
    return draft.has("ticket") && !isTicket(clock)
        ? Optional.of(draft.column("ticket"))
        : free().filter(c -> !c.equals(clock) && GuessFields.isCounting(c.values())).findFirst();
  }

  /** Asks which column is the clock, if any; until then no row has a date. */
  void ask() {
    if (open.isEmpty()) {
      return;
    }
    String date = LayoutProposal.DATE_IN_NAME;
    if (draft.has("date")) {
      date = draft.column("date").line("date");
    } else {
      draft.tell(LayoutProposal.NO_DATE + '.');
    }
    draft.withhold("date");
    times.line("date").ifPresent(draft::add);
    draft.withhold("ticket");
    var answers = new ArrayList<List<String>>();
    for (var clock : open) {
      var answer = new ArrayList<>(List.of(date, clock.line("clock")));
      answer.addAll(times.line("clock", clock));
      answer.add(ticketBeside(clock).map(c -> c.line("ticket")).orElse(LayoutProposal.IDENTITY));
      answers.add(answer);
    }
    var ticket = draft.has("ticket") ? draft.column("ticket") : open.get(0);
    answers.add(List.of(date, ticket.line("ticket")));
    draft.ask(
        open.stream()
            .map(c -> c.values().get(0) + " in " + c.name())
            .collect(Collectors.joining(" or ", "Is ", " a clock time, or does it count tickets?")),
        answers);
  }
}
