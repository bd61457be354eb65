package gambrel.night;

import gambrel.files.publish.Csv;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.CodeIndex;
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
   * its name has no letter or digit, bodies.csv has a row of it that cannot be read, or a body had
   * this tag at another time.
   */
  Notice notice(String body, List<SetAside> naming) {
    var first = naming.get(0).notice().aboutBody(body).with("count", naming.size());
    if (body.chars().noneMatch(Character::isLetterOrDigit)
        || !inputs.shop().unread("bodies.csv", "body", body).isEmpty()) {
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

  private List<String> items(String pattern) {
    return inputs.shop().codes().stream()
        .filter(code -> code.pattern().equals(pattern))
        .map(ScaleCode::items)
        .findFirst()
        .orElse(List.of());
  }

  private boolean has(Species species, String item) {
    return inputs.shop().cuts().of(species).find(item).isPresent();
  }

  /** The species that has an item of every code that the rows name; empty if none or several. */
  private Optional<Species> species(List<ExportRow> naming) {
    Set<Species> possible = EnumSet.allOf(Species.class);
    var patterns = CodeIndex.of(inputs.shop());
    for (var row : naming) {
      patterns
          .find(row.get(Field.CODE))
          .map(this::items)
          .filter(items -> !items.isEmpty())
          .ifPresent(items -> possible.removeIf(s -> items.stream().noneMatch(i -> has(s, i))));
    }
    return possible.size() == 1 ? Optional.of(possible.iterator().next()) : Optional.empty();
  }
}
