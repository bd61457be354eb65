package gambrel.files.guess;

import gambrel.files.guess.GuessTable.Column;
import gambrel.files.layout.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Proposes what the words of a status column mean, and which tickets are cancelled by others.
 *
 * @param isSaved whether a saved layout reads the column; then each word is asked about
 */
record ProposedStatus(LayoutDraft draft, boolean isSaved) {
  /** A word and the ticket that it cancels, such as {@code STORNO 0004}. */
  private static final Pattern WITH_TICKET = Pattern.compile("(\\D+?[\\h#:.]*)(\\d+)");

  /** At most one in so many rows has a word for a cancelled weighing. */
  private static final int FEW = 4;

  private static final String OWN = "void=own";

  /** What a void row on a ticket of its own cancels. */
  private static final List<List<String>> WHICH = List.of(List.of("void=before"), List.of(OWN));

  /** What one may cancel that has no weight, and so is equal to no row. */
  private static final List<List<String>> WHICH_OF_NOTHING =
      List.of(List.of("void=last"), List.of(OWN));

  /**
   * Asks of the words for a cancelled weighing that stand in some cells of a field, in place of
   * what the field holds, which weighing they cancel.
   */
  void askWhatWordsCancel(String field, Predicate<String> isKnown) {
    var cells = draft.cells(field);
    var rows =
        IntStream.range(0, cells.size())
            .filter(row -> GuessWords.mentionsVoid(cells.get(row)) && !isKnown.test(cells.get(row)))
            .filter(row -> !draft.has("status") || !isVoid(draft.cell("status", row)))
            .boxed()
            .toList();
    if (rows.isEmpty() || rows.size() * FEW > cells.size()) {
      return;
    }
    var words = rows.stream().map(cells::get).distinct().collect(Collectors.joining("|"));
    String key = "void." + field + '=';
    draft.ask(
        ("\"%s\" stands where other rows have a %s (%d of %d rows). Does such a row cancel the row just"
                + " above it, or only itself, or is it a %s? Until then such a row is set aside.")
            .formatted(words, field, rows.size(), cells.size(), field),
        Stream.concat(
                WHICH_OF_NOTHING.stream().map(which -> List.of(key + words, which.get(0))),
                Stream.of(List.of(key)))
            .toList(),
        rows.get(0));
  }

  void propose() {
    if (!draft.has("status")) {
      return;
    }
    var column = draft.column("status");
    var counts = new TreeMap<String, Integer>();
    column.values().forEach(word -> counts.merge(word, 1, Integer::sum));
    var beginnings = new TreeSet<String>();
    var unknown = new ArrayList<String>();
    for (var count : counts.entrySet()) {
      String word = count.getKey();
      var ofTicket = ofTicket(word);
      if (ofTicket.filter(of -> GuessWords.mentionsVoid(of) || isBelowZero(word)).isPresent()) {
        beginnings.add(ofTicket.get());
      } else if (ofTicket.isPresent()) {
        askWhetherItCancels(word, ofTicket.get());
      } else if (isOwn(word)) {
        Optional.of(word)
            .filter(own -> !isBelowZero(own))
            .flatMap(this::cancelsOther)
            .ifPresent(row -> draft.ask(ofItsOwn(word, row), which(row), row));
      } else {
        propose(column, word, count.getValue(), unknown);
      }
    }
    ask(column, unknown);
    for (String beginning : beginnings) {
      draft.setting(
          "\"%s\" and a number cancels the ticket of that number.".formatted(beginning.strip()),
          "value.status." + LayoutDraft.escaped(beginning) + "*=void:*");
    }
    reference()
        .ifPresent(
            tickets ->
                draft.setting(
                    tickets.name() + " names the ticket that such a row cancels.",
                    tickets.line(Layout.VOIDS)));
  }

  private void askWhetherItCancels(String status, String beginning) {
    draft.ask(
        "Does \"%s\" cancel the weighing with that ticket? Until then such a row is set aside."
            .formatted(status),
        List.of(
            List.of("value.status." + LayoutDraft.escaped(beginning) + "*=void:*"),
            List.of(key(status) + "ok")),
        draft.cells("status").indexOf(status));
  }

  /** Whether a status is one of the program's own words. */
  private static boolean isOwn(String word) {
    return word.toLowerCase(Locale.ROOT).matches("ok|repeat|void(:.+)?");
  }

  /** Proposes what a word means, or adds it to the unknown words. */
  private void propose(Column column, String word, int count, List<String> unknown) {
    String key = key(word);
    var meaning = GuessWords.status(word, column.header());
    if (!isSaved && meaning.isEmpty() && count * 2 > column.cells().size()) {
      draft.setting(taken(word, "ok", "it stands in most rows"), key + "ok");
      return;
    }
    if (isBelowZero(word)) {
      draft.setting(taken(word, "void", "its weights are below zero"), key + "void");
      return;
    }
    var repeated = repeated(word);
    boolean isRepeat = meaning.equals(Optional.of("repeat"));
    boolean isVoid = meaning.equals(Optional.of("void"));
    boolean isSettled = meaning.equals(Optional.of("ok")) || repeated.isPresent() && !isVoid;
    var other = isSettled ? Optional.<Integer>empty() : cancelsOther(word);
    if (other.isPresent()) {
      int row = other.get();
      draft.ask(
          ofItsOwn(word, row) + " Until then such a row is set aside.",
          Stream.concat(
                  which(row).stream()
                      .map(
                          which ->
                              which.get(0).equals(OWN) && areSeveral()
                                  ? List.of(key + "void:own")
                                  : List.of(key + "void", which.get(0))),
                  Stream.of(List.of(key + "ok")))
              .toList(),
          row);
    } else if (isSaved) {
      unknown.add(word);
    } else if (meaning.isEmpty() && isUnweighed(word)) {
      draft.setting(taken(word, "void", "none of its rows has a weight"), key + "void");
    } else if (meaning.isPresent() && !(isRepeat && !draft.has("ticket"))) {
      draft.setting(taken(word, meaning.get(), "common practice"), key + meaning.get());
    } else if (rowsWith(word).allMatch(this::isOfNobody) && draft.cells("body").contains("")) {
      draft.setting(taken(word, "ok", "its rows name no body, as test weights do"), key + "ok");
    } else {
      unknown.add(word);
    }
  }

  /** Asks what words mean; once for two that stand in as many rows of each body and code. */
  private void ask(Column column, List<String> unknown) {
    while (!unknown.isEmpty()) {
      String first = unknown.remove(0);
      var words = new ArrayList<>(List.of(first));
      unknown.stream().filter(other -> arePair(first, other)).findFirst().ifPresent(words::add);
      unknown.removeAll(words);
      var repeated = repeated(first);
      boolean named = GuessWords.score("status", column.header()) > 0 && words.size() == 1;
      draft.ask(
          "What %s %s in %s mean (%s of %d rows): ok, such a weighing counts%s%s?"
                  .formatted(
                      words.size() == 1 ? "does" : "do",
                      words.stream().map(w -> '"' + w + '"').collect(Collectors.joining(" and ")),
                      column.name(),
                      words.stream()
                          .map(word -> "" + rowsWith(word).count())
                          .collect(Collectors.joining(" and ")),
                      column.cells().size(),
                      rowsWith(first).anyMatch(row -> draft.cell("body", row).isEmpty())
                          ? " or is a test weight"
                          : "",
                      repeated.isPresent()
                          ? "; void, neither it nor the row above with its ticket counts; or repeat,"
                              + " that row was printed again"
                          : ", or void, it does not")
              + (named
                  ? ""
                  : " If the column says something else, take out what stands behind column.status=.")
              + " Until then such a row is set aside.",
          Stream.of("ok", "void", "repeat")
              .filter(own -> repeated.isPresent() || !own.equals("repeat"))
              .map(meaning -> words.stream().map(word -> key(word) + meaning).toList())
              .toList(),
          repeated.orElse(column.cells().indexOf(first)));
    }
  }

  /** Whether two words come as a pair, as those of a left and a right side do. */
  private boolean arePair(String one, String other) {
    return draft.has("body")
        && Stream.of(one, other).noneMatch(GuessWords::isDoubtful)
        && bodiesAndCodes(one).equals(bodiesAndCodes(other));
  }

  private List<String> bodiesAndCodes(String word) {
    return rowsWith(word)
        .mapToObj(row -> draft.cell("body", row) + '\n' + draft.cell("code", row))
        .sorted()
        .toList();
  }

  private static String key(String word) {
    return "value.status." + LayoutDraft.escaped(word) + '=';
  }

  private String ofItsOwn(String word, int row) {
    int above =
        IntStream.range(0, row)
            .filter(i -> cancelsWithoutWeight(row) || isSame(row, i))
            .max()
            .orElseThrow();
    return ("Status \"%s\" stands on ticket %s, which has a number of its own. Does it cancel the %s,"
            + " ticket %s, or only itself?")
        .formatted(
            word,
            draft.cells("ticket").get(row),
            cancelsWithoutWeight(row) ? "row just above it" : "equal row before it",
            draft.cells("ticket").get(above));
  }

  /** Whether it is to be asked of several words what they cancel, which one line cannot say. */
  private boolean areSeveral() {
    return draft.column("status").values().stream()
            .distinct()
            .filter(word -> cancelsOther(word).isPresent())
            .count()
        > 1;
  }

  private List<List<String>> which(int row) {
    return cancelsWithoutWeight(row) ? WHICH_OF_NOTHING : WHICH;
  }

  /**
   * Whether a row of a cancelled weighing has no weight, or zero, so that no row is equal to it.
   */
  private boolean cancelsWithoutWeight(int row) {
    return GuessWords.mentionsVoid(draft.cell("status", row)) && hasNoWeight(row);
  }

  private boolean hasNoWeight(int row) {
    return !draft.cell(draft.has("net") ? "net" : "gross", row).matches(".*[1-9].*");
  }

  private static String taken(String word, String meaning, String why) {
    return "Status \"%s\" is taken for %s: %s.".formatted(word, meaning, why);
  }

  /** The beginning of a status that names the ticket of another row which it cancels. */
  private Optional<String> ofTicket(String status) {
    return ticket(status)
        .filter(ticket -> rowsWith(status).allMatch(row -> isOfTicket(row, ticket)))
        .flatMap(ticket -> beginning(status));
  }

  /** The ticket that may follow a word. */
  static Optional<String> ticket(String status) {
    return Optional.of(WITH_TICKET.matcher(status)).filter(Matcher::matches).map(m -> m.group(2));
  }

  /** What stands before a ticket that follows. */
  private static Optional<String> beginning(String status) {
    return ticket(status).map(ticket -> status.substring(0, status.length() - ticket.length()));
  }

  /** The word of a status, without the ticket that may follow it. */
  static String word(String status) {
    return beginning(status)
        .filter(before -> GuessWords.mentionsVoid(before) || !before.matches(".*\\p{L}"))
        .map(before -> before.replaceFirst("[\\h#:.]+$", ""))
        .orElse(status);
  }

  /** Whether a whole row names neither body nor batch: it can be a test weight, and no pack. */
  private boolean isOfNobody(int row) {
    return draft.cell("body", row).isEmpty()
        && draft.cell("batch", row).isEmpty()
        && !draft.cell("code", row).isEmpty()
        && !(draft.cell("time", row) + draft.cell("clock", row)).isEmpty();
  }

  /** Whether a word stands in rows below zero alone, which cancel others by their weight. */
  private boolean isBelowZero(String word) {
    return !word.isEmpty()
        && draft.lines().contains(ProposedWeights.NEGATIVE)
        && rowsWith(word)
            .allMatch(row -> draft.cell(draft.has("net") ? "net" : "gross", row).startsWith("-"));
  }

  private IntStream rowsWith(String word) {
    return IntStream.range(0, draft.cells("status").size())
        .filter(row -> draft.cells("status").get(row).equals(word));
  }

  /** Whether no row with a status has a weight, nor a ticket that another row has. */
  private boolean isUnweighed(String word) {
    var weights = draft.cells(draft.has("net") ? "net" : "gross");
    return !weights.isEmpty()
        && rowsWith(word)
            .allMatch(row -> !weights.get(row).matches(".*\\d.*") && hasOwnTicket(row));
  }

  private boolean hasOwnTicket(int row) {
    var tickets = draft.cells("ticket");
    return IntStream.range(0, tickets.size())
            .filter(other -> tickets.get(other).equals(tickets.get(row)))
            .filter(other -> draft.day(other).equals(draft.day(row)))
            .count()
        == 1;
  }

  /**
   * The first row with a status whose ticket no other row has, though a row above it has the same
   * body, code and weight, or it cancels and has no weight. None where a column names the ticket.
   */
  private Optional<Integer> cancelsOther(String word) {
    boolean isNamed =
        draft.has(Layout.VOIDS)
            && rowsWith(word).noneMatch(row -> draft.cell(Layout.VOIDS, row).isEmpty());
    return isNamed || reference().isPresent()
        ? Optional.empty()
        : rowsWith(word)
            .filter(this::hasOwnTicket)
            .filter(
                row ->
                    IntStream.range(0, row)
                        .anyMatch(i -> cancelsWithoutWeight(row) || isSame(row, i)))
            .boxed()
            .findFirst();
  }

  /** The first row with a status whose ticket a row above it has, with the same content. */
  private Optional<Integer> repeated(String word) {
    return rowsWith(word)
        .filter(row -> draft.has("ticket") && !draft.cell("ticket", row).isEmpty())
        .filter(row -> isOfTicket(row, draft.cell("ticket", row)))
        .boxed()
        .findFirst();
  }

  /** Whether a row has the body, code and weight of another one, or leaves them blank. */
  private boolean isSame(int row, int other) {
    return !draft.cells("status").get(row).equals(draft.cells("status").get(other))
        && List.of("body", "code", "net", "gross").stream()
            .map(draft::cells)
            .allMatch(
                cells ->
                    cells.isEmpty()
                        || cells.get(row).isEmpty()
                        || cells.get(row).equals(cells.get(other))
                        || cells.get(row).equals('-' + cells.get(other)));
  }

  /** The column that only cancelling rows fill, with the tickets of other rows. */
  private Optional<Column> reference() {
    var status = draft.cells("status");
    return Stream.concat(
            Stream.of(Layout.VOIDS).filter(draft::has).map(draft::column), draft.unused().stream())
        .filter(column -> !column.values().isEmpty())
        .filter(
            column ->
                IntStream.range(0, status.size())
                    .filter(row -> !column.cells().get(row).isEmpty())
                    .allMatch(
                        row ->
                            (isVoid(status.get(row))
                                    || isBelowZero(status.get(row))
                                    || hasNoWeight(row))
                                && isOfTicket(row, column.cells().get(row))))
        .findFirst();
  }

  /** Whether a row above another one has a ticket, and the same body, code and weight. */
  private boolean isOfTicket(int row, String ticket) {
    var above = draft.cells("ticket").subList(0, draft.has("ticket") ? row : 0);
    return above.contains(ticket) && isSame(row, above.lastIndexOf(ticket));
  }

  private boolean isVoid(String word) {
    return GuessWords.status(word, draft.column("status").header()).equals(Optional.of("void"));
  }
}
