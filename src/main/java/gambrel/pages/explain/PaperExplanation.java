package gambrel.pages.explain;

import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.AppliedCorrection;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Release;
import java.util.List;
import java.util.Locale;

/** Lists what people decided about a body, and rows that name it and do not count. */
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
    section("Releases", releases());
    section("Rows that a correction took away from it", takenAway());
    section("Rows set aside that name it", setAside());
  }

  private void section(String heading, List<String> entries) {
    if (!entries.isEmpty()) {
      lines.heading(heading);
      entries.forEach(lines::text);
    }
  }

  private List<String> releases() {
    return night.shop().releases().stream()
        .filter(r -> r.body().equals(body.id()) && !r.on().isAfter(night.asOf()))
        .map(PaperExplanation::words)
        .toList();
  }

  private static String words(Release release) {
    return release.action().name().toLowerCase(Locale.ROOT)
        + " by "
        + release.by()
        + " on "
        + release.on().toLocalDateTime()
        + ": "
        + release.reason()
        + "  "
        + release.place();
  }

  /** Rows that a correction voids or gives to another body. */
  private List<String> takenAway() {
    return night.ledger().corrections().stream()
        .filter(this::takesAway)
        .map(
            applied ->
                applied.row().place()
                    + "  "
                    + applied.row().get(Field.SCALE)
                    + " ticket "
                    + applied.row().get(Field.TICKET)
                    + "  "
                    + Lines.words(applied))
        .toList();
  }

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

  private List<String> setAside() {
    return night.ledger().setAside().stream()
        .filter(row -> row.bodies().contains(body.id()))
        .map(
            row ->
                row.notice().place()
                    + "  "
                    + row.notice().scale()
                    + " ticket "
                    + row.notice().ticket()
                    + "  "
                    + row.notice().code().id()
                    + "  "
                    + NoticeWords.ENGLISH.message(row.notice()))
        .toList();
  }
}
