package gambrel.pages.owner.month;

import gambrel.insight.month.pace.Pace;
import gambrel.insight.month.pace.PaceLine;
import gambrel.pages.views.PartView;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How fast pieces were boned, read from the times of weighings on the block. */
record PacePart(MonthPage page) implements MonthPart {

  PartView part() {
    String anHour = unit() + ' ' + say("an_hour");
    var table =
        new TableBuilder<PaceLine>("pace figures even short")
            .first(say("piece"), line -> cut(line.species(), line.item()))
            .head("wider")
            .words(say("boner"), line -> line.boner().orElseGet(() -> say("month.pace.all")))
            .number(say("pieces"), line -> count(line.month().pieces()))
            .number(say("minutes_each"), line -> tenths(line.month().each().median()))
            .number(say("middle"), line -> middle(line.month().each()))
            .number(anHour, line -> anHour(Optional.of(line.month())))
            .number(
                label("before", say("minutes_each")),
                line -> tenths(line.before().map(pace -> pace.each().median())))
            .number(label("before", anHour), line -> anHour(line.before()))
            .rows(parts().paceLines());
    return PartView.of(say("pace"), table.table(), remarks());
  }

  private String anHour(Optional<Pace> pace) {
    return pace.flatMap(Pace::weightAnHour).map(weight -> number(weight, 0)).orElse("");
  }

  private List<String> remarks() {
    var lines = parts().paceLines();
    if (lines.isEmpty()) {
      return month().cut().isEmpty() ? List.of() : List.of(say("month.pace.none"));
    }
    var remarks = new ArrayList<>(List.of(say("month.pace.read")));
    int breaks = parts().pace().month().breaks();
    if (breaks > 0) {
      remarks.add(wording().counted("month.pace.breaks", breaks));
    }
    if (lines.stream().anyMatch(PacePart::isHindquarter)) {
      remarks.add(say("month.pace.usual"));
    }
    return remarks;
  }

  private static boolean isHindquarter(PaceLine line) {
    return line.species() == Species.BEEF && line.item().id().equals(CutTree.HINDQUARTER);
  }
}
