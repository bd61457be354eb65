package gambrel.pages.views;

import java.util.LinkedHashMap;
import java.util.Map;

/** Views of every kind of page, by a short name that also names their preview. */
final class SampleViews {

  private SampleViews() {}

  static Map<String, StatementView> statements() {
    var views = new LinkedHashMap<String, StatementView>();
    views.put("beef-full", SampleBeef.full());
    views.put("beef-revision", SampleBeef.revision());
    views.put("beef-letter-pounds", SampleAmerican.american());
    views.put("lamb-mob-half", SampleLamb.halfMob());
    views.put("pork-held", SamplePork.heldPork());
    views.put("goat-minimal", SampleRare.minimal());
    views.put("beef-condemned", SampleRare.condemned());
    views.put("lamb-whole", SampleLamb.wholeLamb());
    views.put("beef-outright", SampleRare.outrightOnly());
    views.put("lines-1", SampleRare.lines(1));
    views.put("lines-45", SampleRare.lines(45));
    views.put("lines-400", SampleRare.lines(400));
    return views;
  }

  static Map<String, SummaryView> summaries() {
    var views = new LinkedHashMap<String, SummaryView>();
    views.put("month", SampleMonth.month(14));
    views.put("month-1", SampleMonth.month(1));
    views.put("month-400", SampleMonth.month(400));
    views.put("month-empty", SampleMonth.emptyMonth());
    return views;
  }

  static Map<String, MorningView> mornings() {
    var views = new LinkedHashMap<String, MorningView>();
    views.put("morning-busy", SampleMorning.busyMorning());
    views.put("morning-quiet", SampleMorning.quietMorning());
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
