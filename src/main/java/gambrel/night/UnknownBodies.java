package gambrel.night;

import gambrel.files.publish.Csv;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.weighing.SetAside;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Makes notices of bodies that rows name and bodies.csv lacks, with the row to paste there.
 *
 * @param inputs the shop folder as read
 */
record UnknownBodies(Inputs inputs) {
  private static final int ISO_DATE = 10;

  /**
   * The notice about a body that is named by some rows, at least one; with the row to paste, unless
   * bodies.csv has one that cannot be read, or a body that had this tag at another time.
   */
  Notice notice(String body, List<SetAside> naming) {
    var first = naming.get(0).notice().aboutBody(body).with("count", naming.size());
    if (!inputs.shop().unread("bodies.csv", "body", body).isEmpty()) {
      return first;
    }
    if (!first.saying().key().equals(NoticeCode.BODY_UNKNOWN.name())) {
      // A body has this tag, at another time.
      return first;
    }
    var places = naming.stream().map(row -> row.notice().place()).collect(Collectors.toSet());
    var found = inputs.rows().filter(row -> places.contains(row.place())).toList();
    var species = species(found);
    var seen = found.stream().flatMap(row -> date(row).stream()).min(Comparator.naturalOrder());
    var cells =
        List.of(
            body, species.map(Species::id).orElse(""), seen.map(LocalDate::toString).orElse(""));
    return first
        .with("row", Csv.line(cells))
        .advising(species.isEmpty() ? "ANY_SPECIES" : "SPECIES");
  }

  /** The date with which a row's time begins; empty if it does not begin with one. */
  private static Optional<LocalDate> date(ExportRow row) {
    String time = row.get(Field.TIME);
    try {
      return Optional.of(LocalDate.parse(time.substring(0, Math.min(ISO_DATE, time.length()))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** The species that has every item that the rows name; empty if none or several have. */
  private Optional<Species> species(List<ExportRow> naming) {
    Set<Species> possible = EnumSet.allOf(Species.class);
    for (var row : naming) {
      code(row.get(Field.CODE))
          .map(ScaleCode::item)
          .filter(item -> !item.isEmpty())
          .ifPresent(
              item -> possible.removeIf(s -> inputs.shop().cuts().of(s).find(item).isEmpty()));
    }
    return possible.size() == 1 ? Optional.of(possible.iterator().next()) : Optional.empty();
  }

  /** The code that fits a text: the exact one, else the one with the longest beginning. */
  private Optional<ScaleCode> code(String text) {
    return inputs.shop().codes().stream()
        .filter(code -> isExact(code, text) || isBeginning(code.pattern(), text))
        .max(
            Comparator.comparing((ScaleCode code) -> isExact(code, text))
                .thenComparing(code -> code.pattern().length()));
  }

  private static boolean isExact(ScaleCode code, String text) {
    return code.pattern().equals(text);
  }

  private static boolean isBeginning(String pattern, String text) {
    return pattern.endsWith("*") && text.startsWith(pattern.substring(0, pattern.length() - 1));
  }
}
