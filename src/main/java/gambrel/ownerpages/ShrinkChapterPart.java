package gambrel.ownerpages;

import gambrel.month.Completeness;
import gambrel.month.MonthRecords;
import gambrel.statement.Fact;
import gambrel.statement.ShrinkChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Puts together the chapter on weight lost. */
final class ShrinkChapterPart {
  private ShrinkChapterPart() {}

  static ShrinkChapter chapter(MonthRecords records, Wording wording, Places places) {
    var days = new ChillDaysPart(records, wording);
    var notes = new ArrayList<>(new ChartPart(records, wording).few());
    notes.addAll(days.notes());
    return new ShrinkChapter(
        new ShrinkPart(records, wording, places).groups(),
        new HangingPart(records, wording).rows(),
        new FurtherDayPart(records, wording).groups(),
        days.table(),
        notes,
        weights(records, wording));
  }

  private static List<Fact> weights(MonthRecords records, Wording wording) {
    return Completeness.of(records).stream()
        .filter(weight -> weight.of() > 0)
        .map(
            weight ->
                new Fact(
                    wording.say("weights." + weight.what().id()),
                    wording.say(
                        "weights.of",
                        wording.formats().count(weight.known()),
                        wording.formats().count(weight.of()))))
        .toList();
  }
}
