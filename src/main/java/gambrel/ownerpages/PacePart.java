package gambrel.ownerpages;

import gambrel.cuts.CutTree;
import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.month.MonthRecords;
import gambrel.month.pace.PaceLine;
import gambrel.month.pace.Pace;
import gambrel.statement.PaceChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** How fast pieces were boned, where the block's weighings tell. */
final class PacePart {
  private final MonthRecords records;
  private final Wording wording;
  private final Rates rates;

  PacePart(MonthRecords records, Wording wording) {
    this.records = records;
    this.wording = wording;
    this.rates = new Rates(wording, records.night().shop().settings().currency());
  }

  PaceChapter chapter() {
    var pace = PaceLine.of(records);
    return new PaceChapter(pace.lines().stream().map(this::row).toList(), remarks(pace));
  }

  private PaceChapter.Row row(PaceLine line) {
    var month = line.month();
    return new PaceChapter.Row(
        wording.say(
            "month.pace.piece",
            wording.cut(line.species(), line.item()),
            wording.say("summary.kind." + line.species().id())),
        line.boner().orElseGet(() -> wording.say("month.pace.all")),
        wording.formats().count(month.pieces()),
        rates.tenths(month.each().median()),
        rates.middle(month.each()),
        anHour(month),
        line.before().map(before -> rates.tenths(before.each().median())).orElse(""),
        line.before().map(this::anHour).orElse(""));
  }

  private String anHour(Pace pace) {
    return pace.weightAnHour()
        .map(weight -> wording.formats().number(Exact.round(weight, 0)))
        .orElse("");
  }

  private List<String> remarks(PaceLine.Chapter pace) {
    var remarks = new ArrayList<String>();
    if (pace.lines().isEmpty()) {
      if (!records.bodies().cut().isEmpty()) {
        remarks.add(wording.say("month.pace.none"));
      }
      return remarks;
    }
    remarks.add(wording.say("month.pace.read"));
    if (pace.breaks() > 0) {
      remarks.add(
          wording.count(
              "month.pace.breaks", pace.breaks(), wording.formats().count(pace.breaks())));
    }
    if (pace.lines().stream().anyMatch(PacePart::isHindquarter)) {
      remarks.add(wording.say("month.pace.usual"));
    }
    return remarks;
  }

  private static boolean isHindquarter(PaceLine line) {
    return line.species() == Species.BEEF && line.item().id().equals(CutTree.HINDQUARTER);
  }
}
