package gambrel.pages.owner.morning;

import gambrel.insight.cause.CorrectionLines;
import gambrel.pages.owner.Names;
import gambrel.pages.views.MorningView.Item;
import gambrel.pages.views.MorningView.Likely;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.Reason;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.Field;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts into words what waits for the owner: whom it concerns, what is wrong, and what to do. */
final class ThingWords {
  private static final int MOST_NAMES = 3;

  private final Night night;
  private final Wording wording;
  private final Names names;
  private final ReasonWords held;

  ThingWords(MorningReport report, Wording wording) {
    this.night = report.night();
    this.wording = wording;
    this.names = new Names(night, wording);
    this.held = new ReasonWords(night, report.causes(), wording);
  }

  /** A body with the reasons that no notice tells. */
  Item of(BodyAccount account, List<Reason> reasons) {
    return held.of(account, reasons);
  }

  /**
   * Notices that are one thing to do.
   *
   * @param rows the notices of the first of them: all rows of a conflict
   * @param bodies the bodies that they concern
   */
  Item of(List<Notice> alike, List<Notice> rows, List<String> bodies) {
    var first = alike.get(0);
    var line =
        alike.size() == 1 && !first.scale().isEmpty()
            ? line(first, rows)
            : Optional.<Likely>empty();
    return new Item(
        who(first, bodies),
        message(alike),
        line.isEmpty() ? advice(alike) : "",
        rows.stream().map(this::row).filter(row -> !row.isEmpty()).toList(),
        line.stream().toList());
  }

  /** Many bodies that lost unusually much are less likely slips of single weighings. */
  private String advice(List<Notice> alike) {
    var first = alike.get(0);
    return first.code() == NoticeCode.CHILL_UNUSUAL && alike.size() > NoticeGroups.MOST_OF_A_KIND
        ? wording.say("morning.chilled.together")
        : wording.notices().advice(first);
  }

  /** The lines for the corrections that settle a row or a conflict; empty if none can. */
  private Optional<Likely> line(Notice first, List<Notice> rows) {
    return switch (first.code()) {
      case TICKET_CONFLICT -> lines("morning.line.conflict", rows, CorrectionLines::voiding);
      case NET_MISSING, NET_ZERO, NET_NEGATIVE, ROW_BROKEN ->
          lines("morning.line.void", rows, CorrectionLines::voiding);
      case NUMBER_BAD ->
          first.saying().values().get("column") instanceof Value.Text column
              ? value(column.text(), rows)
              : value(Field.PIECES.id(), rows);
      case TIME_BAD -> value(Field.TIME.id(), rows);
      case NET_DISAGREES, OVER_CAPACITY -> value(Field.NET.id(), rows);
      case BODY_AMBIGUOUS -> value(Field.BODY.id(), rows);
      default -> Optional.empty();
    };
  }

  private Optional<Likely> value(String field, List<Notice> rows) {
    return lines("morning.line.value", rows, row -> CorrectionLines.correcting(row, field));
  }

  private Optional<Likely> lines(String key, List<Notice> rows, Function<Notice, Phrase> line) {
    var lines = rows.stream().map(line).map(wording.notices()::of).toList();
    return Optional.of(new Likely("", wording.say(key), lines));
  }

  private String who(Notice notice, List<String> bodies) {
    if (!bodies.isEmpty()) {
      return bodies.size() == 1
          ? names.ofWhom(night.bodies().get(bodies.get(0)))
          : wording.names(bodies.stream().map(names::ofBody).toList(), MOST_NAMES);
    }
    return notice.saying().values().get("customer") instanceof Value.Text customer
            && night.shop().customers().containsKey(customer.text())
        ? names.customer(customer.text())
        : notice.body();
  }

  private String message(List<Notice> group) {
    var first = group.get(0);
    String message = wording.notices().message(first);
    if (group.size() == 1) {
      return message;
    }
    boolean alike = group.stream().allMatch(n -> n.saying().equals(first.saying()));
    return wording.say(
        alike ? "morning.group.alike" : "morning.group.kind",
        wording.formats().count(group.size()),
        message);
  }

  /** Where a row is, and what stands there; empty if the notice is about none. */
  private String row(Notice notice) {
    String raw = notice.raw().replaceFirst("[,;\\s]+$", "");
    return Stream.of(notice.place().toString(), raw.isEmpty() ? ticket(notice) : raw)
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" · "));
  }

  private String ticket(Notice notice) {
    if (notice.scale().isEmpty()) {
      return "";
    }
    return notice.ticket().isEmpty()
        ? wording.say("morning.scale", notice.scale())
        : wording.say("morning.ticket", notice.scale(), notice.ticket());
  }
}
