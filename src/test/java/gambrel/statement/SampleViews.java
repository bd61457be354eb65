package gambrel.statement;

import java.util.LinkedHashMap;
import java.util.Map;

/** Views of every kind of page, by a short name that also names their preview. */
final class SampleViews {

  private SampleViews() {}

  static Map<String, StatementView> statements() {
    var views = new LinkedHashMap<String, StatementView>();
    views.put("beef-full", SampleBeef.full());
    views.put("beef-revision", SampleBeef.revision());
    views.put("beef-letter-pounds", SampleBeef.american());
    views.put("lamb-mob-half", SampleOthers.halfMob());
    views.put("pork-held", SampleOthers.heldPork());
    views.put("goat-minimal", SampleOthers.minimal());
    views.put("beef-condemned", SampleOthers.condemned());
    views.put("lamb-whole", SampleOthers.wholeLamb());
    views.put("beef-outright", SampleOthers.outrightOnly());
    views.put("lines-1", SampleOthers.lines(1));
    views.put("lines-45", SampleOthers.lines(45));
    views.put("lines-400", SampleOthers.lines(400));
    return views;
  }

  static Map<String, SummaryView> summaries() {
    var views = new LinkedHashMap<String, SummaryView>();
    views.put("month", SampleOwner.month(14));
    views.put("month-1", SampleOwner.month(1));
    views.put("month-400", SampleOwner.month(400));
    views.put("month-empty", SampleOwner.emptyMonth());
    return views;
  }

  static Map<String, MorningView> mornings() {
    var views = new LinkedHashMap<String, MorningView>();
    views.put("morning-busy", SampleOwner.busyMorning());
    views.put("morning-quiet", SampleOwner.quietMorning());
    return views;
  }

  /** The template of a view. */
  static String template(Record view) {
    if (view instanceof StatementView) {
      return "statement.ftlh";
    }
    return view instanceof SummaryView ? "summary.ftlh" : "morning.ftlh";
  }

  static Map<String, Record> all() {
    var views = new LinkedHashMap<String, Record>(statements());
    views.putAll(summaries());
    views.putAll(mornings());
    return views;
  }
}
