package gambrel.pages.explain;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.AppliedCorrection;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Release;
import java.util.Locale;
import java.util.stream.Stream;

/** Lists releases of a body, and rows that name it and do not count for it. */
final class PaperExplanation {
  private final Night night;
  private final Body body;
  private final Lines lines;

  PaperExplanation(Night night, Body body, Lines lines) {
    this.night = night;
    this.body = body;
    this.lines = lines;
  }

  void add() {
    section(
        "Releases",
        night.shop().releases().stream()
            .filter(r -> r.body().equals(body.id()) && !r.on().isAfter(night.asOf()))
            .map(PaperExplanation::words));
    section(
        "Rows that a correction took away from it",
        night.ledger().corrections().stream()
            .filter(this::takesAway)
            .map(PaperExplanation::takenAway));
    section(
        "Rows set aside that name it",
        night.ledger().setAside().stream()
            .filter(row -> row.bodies().contains(body.id()))
            .map(row -> setAside(row.notice())));
  }

  private void section(String heading, Stream<String> entries) {
    var all = entries.toList();
    if (!all.isEmpty()) {
      lines.heading(heading);
      all.forEach(lines::text);
    }
  }

  private static String words(Release release) {
    return "%s by %s on %s: %s  %s"
        .formatted(
            release.action().name().toLowerCase(Locale.ROOT),
            release.by(),
            release.on().toLocalDateTime(),
            release.reason(),
            release.place());
  }

  /** Whether a correction voids a row of this body or gives it to another body. */
  private boolean takesAway(AppliedCorrection applied) {
    var correction = applied.correction();
    if (correction.field().equals(Field.BODY.id())) {
      return names(applied.was()) && !names(correction.value());
    }
    return correction.field().equals(Field.STATUS.id()) && names(applied.row().get(Field.BODY));
  }

  private boolean names(String text) {
    return text.equals(body.id()) || body.tags().contains(text);
  }

  private static String takenAway(AppliedCorrection applied) {
    var row = applied.row();
    return "%s  %s ticket %s  %s"
        .formatted(row.place(), row.get(Field.SCALE), row.get(Field.TICKET), Lines.words(applied));
  }

  private static String setAside(Notice notice) {
    return "%s  %s ticket %s  %s  %s"
        .formatted(
            notice.place(),
            notice.scale(),
            notice.ticket(),
            notice.code().id(),
            NoticeWords.ENGLISH.message(notice));
  }
}
