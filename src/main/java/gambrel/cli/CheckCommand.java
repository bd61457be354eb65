package gambrel.cli;

import gambrel.files.csv.OrderedParallel;
import gambrel.files.guess.ExportAssistant;
import gambrel.files.guess.WrongUnit;
import gambrel.night.NightOutcome;
import gambrel.night.RefusedException;
import gambrel.pages.owner.morning.NoticeGroups;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Severity;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.PastedRow;
import java.io.IOException;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads and computes as a run does, and prints the notices. */
final class CheckCommand extends ShopCommand {
  private static final String SEVERITIES =
      "(stop: no statement goes out. hold: those of the bodies named wait. mark, note: look at it.)";
  private static final String NOTHING_WAITS = "(A mark or note holds nothing back: look at it.)";

  private static final String SETTLED =
      "No question is open. Compare the rows above with the scale's print. A weighing that is"
          + " wrong goes into corrections.csv. Then run.";
  private static final String WAITS =
      "The exports leave no question open. What stands first with stop or hold still waits:"
          + " settle it and check again.";

  /** The most lines of advice about notices of one kind. */
  private static final int MOST_ADVICE = 20;

  private static final String SAVE = "save";
  private static final String PREVIEW = "preview";
  private static final String BODY = "body";

  CheckCommand() {
    super("check", "Reads and computes like run, prints the notices, publishes nothing.");
    option(SAVE, "", "first saves in the shop folder the layouts and rows that are proposed");
    option(PREVIEW, "FILE", "writes a statement to look at, of the body that was cut last");
    option(BODY, "BODY", "whose statement the preview is instead");
  }

  @Override
  int workOnShop() throws RefusedException {
    var preview = pathOf(PREVIEW);
    if (preview.isPresent()) {
      refuseExports(preview.get());
    } else if (has(BODY)) {
      throw new BadUsage("--body goes with --preview.");
    }
    if (has(SAVE)) {
      try {
        save();
      } catch (IOException e) {
        err().println("gambrel: " + folder() + " cannot be written: " + e + ".");
        return 4;
      }
    }
    Reading reading;
    NightOutcome outcome;
    Future<ExportAssistant.Told> exports;
    try (var progress = progress()) {
      reading = read(progress);
      var shop = reading.inputs().shop();
      var today = reading.asOf().toLocalDate();
      exports = OrderedParallel.begin(() -> ExportAssistant.of(folder(), shop, today));
      outcome = reading.run().check(reports(), reading.asOf());
    }
    if (outcome instanceof NightOutcome.Done done) {
      try {
        WrongUnit.hint(
                done.report().night().bodies().values().stream().map(BodyAccount::balance).toList())
            .ifPresent(out()::println);
        var told = OrderedParallel.result(exports);
        print(done.report().notices(), told);
        if (told.isSettled()) {
          out().println(done.exitCode() == 0 ? SETTLED : WAITS);
        }
        if (preview.isPresent()) {
          reading.run().preview(preview.get(), done.report().night(), value(BODY));
        }
      } catch (IOException e) {
        return finish(NightOutcome.Stopped.failed(e, reports()));
      }
    }
    return finish(outcome);
  }

  /** Saves what can be saved as it is proposed, and prints it. */
  private void save() throws RefusedException, IOException {
    Reading reading;
    try (var progress = progress()) {
      reading = read(progress);
    }
    var shop = reading.inputs().shop();
    var told = ExportAssistant.of(folder(), shop, reading.asOf().toLocalDate());
    for (var addition : told.additions()) {
      if (addition.saveIn(folder())) {
        var rows = addition.lines();
        out().print("Saved in " + addition.file());
        if (!addition.isOfTable()) {
          out().println('.');
        } else if (addition.finish().isEmpty()) {
          out().println("; look at each row:");
          rows.forEach(row -> out().println("    " + row));
        } else {
          out().println("; rows at its end to be finished: %d.".formatted(rows.size()));
        }
      }
    }
    out().println();
  }

  /**
   * Prints the notices that how the exports are read does not settle, how they are read, and in one
   * line how many other notices of each code there are.
   */
  private void print(List<Notice> notices, ExportAssistant.Told exports) {
    // What a check writes is no register.
    var told = notices.stream().filter(n -> n.code() != NoticeCode.REGISTER_NEW).toList();
    var isAsked = told.stream().collect(Collectors.partitioningBy(n -> isAsked(n, exports)));
    var first = isAsked.get(false);
    var advised = new HashSet<String>();
    // What may have been keyed wrong comes first, as it may be the reason for all the rest.
    NoticeGroups.of(first).stream()
        .sorted(Comparator.comparing(group -> !isCorrection(group.get(0))))
        .forEach(group -> tell(group, advised));
    if (!first.isEmpty()) {
      out().println(told.stream().anyMatch(CheckCommand::waits) ? SEVERITIES : NOTHING_WAITS);
      out().println();
    }
    exports.lines().forEach(out()::println);
    if (exports.isOpen()) {
      out().println("Then check again." + untilThen(isAsked.get(true)));
    }
  }

  /** How many notices of each code are there till then; empty if there are none. */
  private static String untilThen(List<Notice> notices) {
    return notices.isEmpty()
        ? ""
        : Groups.inOrder(notices.stream(), Notice::code).entrySet().stream()
            .map(of -> of.getKey().id() + " (" + of.getValue().size() + ')')
            .collect(Collectors.joining(", ", " (Until then: ", ".)"));
  }

  /** Prints a group: its first notice, where all are that wait, their bodies, each advice once. */
  private void tell(List<Notice> group, Set<String> advised) {
    tellWhere(group);
    var notice = group.get(0);
    said(group).forEach(line -> out().println("  " + line));
    var advice = group.stream().map(NoticeWords.ENGLISH::advice).distinct().toList();
    boolean isCorrection = isCorrection(notice);
    if (isCorrection) {
      String lines = advice.size() == 1 ? "this line" : "these lines together";
      out().println("  If it was so, put " + lines + " into corrections.csv, with by and on:");
    } else if (waits(notice)) {
      group.stream()
          .skip(1)
          .limit(MOST_ADVICE)
          .filter(other -> !other.place().equals(notice.place()))
          .forEach(other -> out().println("  also " + where(other)));
    }
    // Lines of corrections stand below their heading, though another body's cause has the same.
    advice.stream()
        .filter(line -> isCorrection || advised.add(line))
        .limit(MOST_ADVICE)
        .forEach(line -> out().println("  " + line));
    if (notice.code() == NoticeCode.OWNER_MISSING && !notice.scale().isEmpty()) {
      tellRows(group, Field.BODY, "BODY", "not keyed");
    } else if (notice.code() == NoticeCode.PART_TWICE) {
      tellRows(group, Field.STATUS, "void", "weighed twice");
    }
  }

  /** Prints for each notice the row of corrections.csv that gives a field of its weighing. */
  private void tellRows(List<Notice> group, Field field, String value, String reason) {
    for (var notice : group.subList(0, Math.min(group.size(), MOST_ADVICE))) {
      String ticket = notice.ticket().isEmpty() ? notice.place().toString() : notice.ticket();
      String row = PastedRow.of(notice.scale(), ticket, "", field.id(), value, "BY", "ON", reason);
      out().println("    " + row);
    }
  }

  /** What a group says: each note, or once what all say, or the first and how many there are. */
  private static List<String> said(List<Notice> group) {
    var notice = group.get(0);
    boolean alike = group.stream().allMatch(other -> other.saying().equals(notice.saying()));
    var messages = group.stream().map(NoticeWords.ENGLISH::message).toList();
    if (notice.severity() == Severity.NOTE && !alike && group.size() <= MOST_ADVICE) {
      return messages;
    }
    boolean isOne = group.size() == 1 || isCorrection(notice);
    return List.of(
        isOne
            ? messages.get(0)
            : alike
                ? "%s This comes %d times.".formatted(messages.get(0), group.size())
                : "%d of this kind; the first: %s".formatted(group.size(), messages.get(0)));
  }

  /** Prints severity and code of a group, where its first notice stands, and the bodies of all. */
  private void tellWhere(List<Notice> group) {
    var notice = group.get(0);
    var bodies = group.stream().map(Notice::body).filter(b -> !b.isEmpty()).distinct().toList();
    out()
        .println(
            joined(
                notice.severity().id(),
                notice.code().id(),
                where(notice),
                bodies.isEmpty() ? "" : "body " + String.join(", ", bodies)));
  }

  /** File, line, scale and ticket of a notice, as far as it has them. */
  private static String where(Notice notice) {
    return joined(
        notice.place().toString(),
        notice.scale().isEmpty() ? "" : "scale " + notice.scale(),
        notice.ticket().isEmpty() ? "" : "ticket " + notice.ticket());
  }

  private static String joined(String... words) {
    return Stream.of(words).filter(word -> !word.isEmpty()).collect(Collectors.joining(" "));
  }

  /** Whether a statement or a row waits for what a notice says. */
  private static boolean waits(Notice notice) {
    return notice.severity().compareTo(Severity.HOLD) <= 0;
  }

  /** Whether a notice offers lines for corrections.csv. */
  private static boolean isCorrection(Notice notice) {
    return notice.code() == NoticeCode.LIKELY_CAUSE && !notice.advice().isEmpty();
  }

  /**
   * Whether what settles a notice, a layout, a question or the row of a code, is printed anyway.
   * The reasons of held bodies are printed once all of that is settled.
   */
  private static boolean isAsked(Notice notice, ExportAssistant.Told exports) {
    String folder = notice.place().file().replaceFirst("^[^/]+/([^/]+)/.*", "$1");
    return switch (notice.code()) {
      case EXPORT_UNREADABLE, ROW_BROKEN -> exports.proposed().contains(folder);
      case HELD -> exports.isOpen();
      case STATUS_BAD, TICKET_CONFLICT, VOID_ALONE -> exports.asked().contains(folder);
      case CODE_UNKNOWN ->
          notice.saying().key().endsWith(".UNREAD")
              || notice.saying().values().get("code") instanceof Value.Text code
                  && exports.codes().contains(code.text());
      case SHOP_ROW_BAD -> exports.unfinished().contains(notice.place());
      case SCALE_UNKNOWN -> exports.scales().contains(notice.scale());
      default -> false;
    };
  }
}
