package gambrel.damage;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Sorts slips by what became of them. */
final class MistakeJudge {
  /** What became of a slip. */
  enum Group {
    /** All statements are as they should be. */
    SAME,
    /** A notice names file and line, and what would differ waits. */
    TOLD,
    /** What was typed may have been meant, so that no program could tell. */
    WELL_FORMED,
    /**
     * The contract lets it pass with a notice: a column is lost whose name is too short to resemble
     * another, or a release covers the row that is set aside.
     */
    BY_CONTRACT,
    /**
     * A notice names the row of an export, exit is 1, and nothing in the row says whose it is, so
     * that it holds nobody.
     */
    NAMES_NOBODY,
    /** A statement is wrong, or something is dropped without a word. */
    FAULT
  }

  /**
   * A slip's group.
   *
   * @param why what is wrong, if it is a fault
   */
  record Judgement(Group group, String why) {}

  private static final Set<String> HOLDING =
      Set.of(
          "customers.csv",
          "bodies.csv",
          "shares.csv",
          "charges.csv",
          "payments.csv",
          "batches.csv",
          "corrections.csv");

  private static final Set<String> KEYED =
      Set.of("customers.csv", "bodies.csv", "codes.csv", "cuts.csv", "scales.csv", "charges.csv");

  /** Files whose first column is an id that others name. */
  private static final Set<String> DEFINING =
      Set.of("customers.csv", "bodies.csv", "codes.csv", "scales.csv");

  private final Function<TypedTable, IssuedPages> nights;
  private final IssuedPages whole;
  private final Set<Notice> usual;
  private final WellFormed wellFormed;
  private final Set<String> releases;

  /**
   * A judge.
   *
   * @param shop the tables as they should be
   * @param nights the night of the shop with one table in place of its own
   */
  MistakeJudge(Map<String, TypedTable> shop, Function<TypedTable, IssuedPages> nights) {
    this.nights = nights;
    whole = nights.apply(shop.get("customers.csv"));
    usual = new HashSet<>(whole.notices());
    wellFormed = new WellFormed(shop);
    releases =
        shop.get("releases.csv").rows().stream().map(row -> row.get(0)).collect(Collectors.toSet());
  }

  IssuedPages whole() {
    return whole;
  }

  Judgement judge(Mistake mistake) {
    var night = nights.apply(mistake.after());
    var table = mistake.before();
    return table.settings() ? settings(mistake, night) : table(mistake, night);
  }

  private static Judgement group(Group group) {
    return new Judgement(group, "");
  }

  private Judgement fault(String what, IssuedPages night, IssuedPages expected) {
    var news =
        night.notices().stream()
            .filter(n -> !usual.contains(n))
            .map(n -> n.severity() + " " + n.code() + " " + n.place())
            .distinct()
            .limit(6)
            .collect(Collectors.joining("; "));
    var text = new StringBuilder(what + night.refusal());
    text.append(" | differ ").append(night.different(expected));
    text.append(" missing ").append(night.missing(expected)).append(" | ").append(news);
    night.different(expected).stream()
        .limit(1)
        .forEach(
            key ->
                text.append(" | ")
                    .append(difference(expected.issued().get(key), night.issued().get(key))));
    return new Judgement(Group.FAULT, text.toString());
  }

  private static String difference(String expected, String found) {
    if (expected == null) {
      return "a new statement";
    }
    int at = 0;
    while (at < Math.min(expected.length(), found.length())
        && expected.charAt(at) == found.charAt(at)) {
      at++;
    }
    return "'" + excerpt(expected, at) + "' is '" + excerpt(found, at) + "'";
  }

  private static String excerpt(String text, int at) {
    return text.substring(Math.max(0, at - 40), Math.min(text.length(), at + 40))
        .replace('\n', ' ');
  }

  private Judgement stopped(String file, String why, IssuedPages night) {
    boolean told =
        night.exit() == 2
            ? night.refusal().contains(file)
            : night.exit() == 1
                && night.notices().stream()
                    .anyMatch(n -> n.severity() == Severity.STOP && n.place().file().equals(file));
    return told && night.issued().isEmpty()
        ? group(Group.TOLD)
        : fault("not stopped though " + why + ' ', night, whole);
  }

  private Judgement settings(Mistake mistake, IssuedPages night) {
    var columns = ShopColumns.of(mistake.before().file());
    var reading = columns.read(mistake.after().rows().stream().map(row -> row.get(0)).toList());
    var stops = new TreeMap<String, String>();
    reading.stops().forEach(stop -> stops.put(stop, ""));
    reading
        .places()
        .forEach(
            (key, row) -> {
              var value = mistake.after().cell(row, 1).strip();
              if (value.isEmpty()
                  ? columns.filled().contains(key)
                  : !columns.kinds().get(key).holds(value)) {
                stops.put(key + " is " + value, "");
              }
            });
    if (!stops.isEmpty()) {
      return stopped(mistake.before().file(), stops.keySet().toString(), night);
    }
    if (night.exit() > 1) {
      return fault("refused ", night, whole);
    }
    return night.issued().equals(whole.issued())
        ? group(Group.SAME)
        : lost(reading, mistake, night);
  }

  private Judgement lost(ShopColumns.Reading reading, Mistake mistake, IssuedPages night) {
    if (reading.others().isEmpty()) {
      return group(Group.WELL_FORMED);
    }
    return told(night, mistake.before().file(), -1)
        ? group(Group.BY_CONTRACT)
        : fault("no word of " + reading.others() + ' ', night, whole);
  }

  /** Whether a notice that is not there every night names a line of a file, or any of it. */
  private boolean told(IssuedPages night, String file, int line) {
    return night.notices().stream()
        .filter(n -> line >= 0 || !usual.contains(n))
        .anyMatch(n -> n.place().file().equals(file) && (line < 0 || n.place().line() == line));
  }

  /** Whether a notice tells of a row; an unknown body makes one for all of its rows. */
  private boolean told(IssuedPages night, String file, Mistake.ChangedRow row) {
    var body = row.after().getOrDefault("body", "");
    return told(night, file, row.line())
        || file.startsWith("exports/")
            && night.notices().stream()
                .anyMatch(n -> n.code() == NoticeCode.BODY_UNKNOWN && n.body().equals(body));
  }

  private Judgement table(Mistake mistake, IssuedPages night) {
    var file = mistake.before().file();
    var reading = ShopColumns.of(file).read(mistake.after().header());
    if (!reading.stops().isEmpty()) {
      return stopped(file, reading.stops().toString(), night);
    }
    if (night.exit() > 1) {
      return fault("refused ", night, whole);
    }
    if (mistake.kind() == Mistyping.ROW_MISSING) {
      return night.issued().equals(whole.issued()) ? group(Group.SAME) : group(Group.WELL_FORMED);
    }
    if (mistake.kind() == Mistyping.ROW_DOUBLED) {
      return doubled(mistake, night);
    }
    var changes = mistake.changes();
    var readable =
        changes.stream().filter(change -> wellFormed.row(file, change)).collect(Collectors.toSet());
    return readable.size() == changes.size()
        ? readable(mistake, reading, changes, night)
        : unreadable(mistake, changes, readable, night);
  }

  private Judgement doubled(Mistake mistake, IssuedPages night) {
    var file = mistake.before().file();
    if (KEYED.contains(file) && !told(night, file, mistake.row() + 3)) {
      return fault("no word of the second row ", night, whole);
    }
    if (night.issued().equals(whole.issued())) {
      return group(Group.SAME);
    }
    if (night.different(whole).isEmpty() && waits(night, whole)) {
      return group(told(night, file, -1) ? Group.TOLD : Group.WELL_FORMED);
    }
    // Two equal payments may be meant. A correction names a line of the export of bench1.
    boolean mayBeMeant = file.equals("payments.csv") || file.startsWith("exports/bench1/");
    return mayBeMeant ? group(Group.WELL_FORMED) : fault("doubled ", night, whole);
  }

  private static String body(String key) {
    return key.substring(key.indexOf('/') + 1);
  }

  private static boolean keyChanged(Mistake.ChangedRow change) {
    var key = change.before().keySet().iterator().next();
    return !change.before().get(key).equals(change.after().get(key));
  }

  private static boolean waits(IssuedPages night, IssuedPages expected) {
    return night.missing(expected).stream()
        .map(key -> night.states().get(body(key)))
        .allMatch(state -> state == null || state.equals("held") || state.equals("open"));
  }

  private Judgement readable(
      Mistake mistake,
      ShopColumns.Reading reading,
      List<Mistake.ChangedRow> changes,
      IssuedPages night) {
    var file = mistake.before().file();
    for (var change : changes) {
      if (wellFormed.namesUnknown(file, change) && !told(night, file, change)) {
        return fault("no word of an unknown id ", night, whole);
      }
    }
    if (night.issued().equals(whole.issued())) {
      return group(Group.SAME);
    }
    if (changes.isEmpty()) {
      return fault("nothing was changed ", night, whole);
    }
    if (DEFINING.contains(file)
        && changes.stream().anyMatch(MistakeJudge::keyChanged)
        && usual.containsAll(night.notices())) {
      return fault("no word of an id that is gone ", night, whole);
    }
    if (night.different(whole).isEmpty()
        && waits(night, whole)
        && changes.stream().allMatch(change -> told(night, file, change))) {
      return group(Group.TOLD);
    }
    return lost(reading, mistake, night);
  }

  /**
   * Whether the rows that wait name nobody: the changed rows of an export, or those of bodies that
   * there are not, which a correction had named before it was changed.
   */
  private boolean nobodys(String file, List<Mistake.ChangedRow> changes, IssuedPages night) {
    var news =
        night.notices().stream()
            .filter(n -> !usual.contains(n) && n.place().file().startsWith("exports/"))
            .toList();
    return file.startsWith("exports/")
        ? changes.stream().allMatch(wellFormed::namesNobody)
        : file.equals("corrections.csv")
            && !news.isEmpty()
            && news.stream().noneMatch(n -> wellFormed.isBody(n.body()));
  }

  private Judgement unreadable(
      Mistake mistake,
      List<Mistake.ChangedRow> changes,
      Set<Mistake.ChangedRow> readable,
      IssuedPages night) {
    var file = mistake.before().file();
    for (var change : changes) {
      boolean elsewhere =
          file.equals("corrections.csv")
              && night.notices().stream().anyMatch(n -> !usual.contains(n));
      if (!readable.contains(change) && !told(night, file, change) && !elsewhere) {
        return fault("no word of line " + change.line() + ' ', night, whole);
      }
    }
    if (HOLDING.contains(file) && night.exit() == 0) {
      return fault("exit code 0 ", night, whole);
    }
    var kept = changes.stream().filter(readable::contains).toList();
    var expected = kept.isEmpty() ? whole : nights.apply(mistake.only(kept));
    boolean released =
        !HOLDING.contains(file)
            && night.different(expected).stream()
                .map(MistakeJudge::body)
                .allMatch(releases::contains);
    boolean differs = !night.different(expected).isEmpty();
    if (differs && night.exit() == 1 && nobodys(file, changes, night)) {
      return group(Group.NAMES_NOBODY);
    }
    if (!waits(night, expected) || differs && !released) {
      return fault("", night, expected);
    }
    if (differs) {
      return group(Group.BY_CONTRACT);
    }
    if (night.issued().equals(whole.issued())) {
      return group(Group.SAME);
    }
    return group(kept.isEmpty() ? Group.TOLD : Group.WELL_FORMED);
  }
}
