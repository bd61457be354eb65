package gambrel.damage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.Trees;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.weighing.SetAside;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What holds for every night, however damaged its shop folder. */
final class NightRules {
  private static final List<String> TABLES =
      List.of("batches", "bodies", "cuts", "notices", "pieces", "rows", "shrink", "statements");

  private static final String ID = "[A-Za-z0-9_%~-]+";
  private static final Pattern PUBLISHED =
      Pattern.compile(
          "(morning|to-print)\\.pdf|data/[a-z-]+\\.csv|summaries/\\d{4}-\\d\\d\\.pdf|\\.[a-z]+"
              + ("|statements/" + ID + '/' + ID + "-r\\d+\\.pdf|held/" + ID + '/' + ID + "\\.pdf"));

  private NightRules() {}

  /** A refused night has published nothing; any other everything. */
  static void check(Inputs inputs, NightOutcome outcome, Path out) {
    assertTrue(Set.of(0, 1).contains(outcome.exitCode()), outcome::toString);
    var report = ((NightOutcome.Done) outcome).report();
    everyRowIsAccountedFor(inputs, report);
    everyRowSetAsideIsTold(report);
    var files = Trees.files(out);
    for (var table : TABLES) {
      assertTrue(files.contains("data/" + table + ".csv"), table);
    }
    assertTrue(files.contains("morning.pdf"));
    for (var file : files) {
      assertTrue(PUBLISHED.matcher(file).matches(), file);
    }
    report.issued().forEach(row -> assertTrue(files.contains(row.file()), row.file()));
  }

  private static void everyRowIsAccountedFor(Inputs inputs, MorningReport report) {
    var read =
        inputs.exports().stream()
            .collect(Collectors.toMap(f -> f.path(), f -> f.rows().size() + f.leftOut()));
    var counted =
        report.night().ledger().rows().stream()
            .collect(Collectors.toMap(r -> r.file(), r -> r.read()));
    assertEquals(read, counted);
  }

  private static void everyRowSetAsideIsTold(MorningReport report) {
    var places = report.notices().stream().map(Notice::place).collect(Collectors.toSet());
    var unreadable =
        report.notices().stream()
            .filter(n -> n.code() == NoticeCode.EXPORT_UNREADABLE)
            .map(n -> n.place().file())
            .collect(Collectors.toSet());
    var unknown =
        report.notices().stream()
            .filter(n -> n.code() == NoticeCode.BODY_UNKNOWN)
            .map(Notice::body)
            .collect(Collectors.toSet());
    for (SetAside row : report.night().ledger().setAside()) {
      var notice = row.notice();
      assertTrue(
          places.contains(notice.place())
              || unreadable.contains(notice.place().file())
              || notice.code() == NoticeCode.BODY_UNKNOWN && unknown.contains(notice.body()),
          notice::toString);
    }
  }
}
