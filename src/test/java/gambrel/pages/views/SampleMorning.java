package gambrel.pages.views;

import java.util.List;

/** Mornings with much to do and with nothing. */
final class SampleMorning {

  private static final Words W = SampleWords.ENGLISH;

  private SampleMorning() {}

  static MorningView busyMorning() {
    return new MorningView(
        SampleMonth.page(W.say("morning.title", "2 April 2026"), "2 April 2026"),
        W.labels(),
        SampleStatement.SHOP,
        "Thursday 2 April 2026",
        List.of(
            W.count("morning.held", 2, "2") + " " + W.count("morning.todo", 3, "3"),
            W.count("morning.issued", 2, "2"),
            W.count(
                "morning.read",
                412,
                "412",
                W.count("morning.files", 3, "3"),
                "371",
                "36",
                "2",
                "3")),
        held(),
        "",
        todo(),
        List.of(
            new MorningView.Issued("Aroha Ngātuere", "B-0341", "", "231.44 kg", "$399.04"),
            new MorningView.Issued(
                "Muirne Ó Cathasaigh", "L-0102", W.say("morning.revision", "2"), "60.13 kg", "")),
        "",
        List.of(
            new MorningView.FileRow("exports/bench-1/2026-04-01.csv", "212", "208", "0", "2", "2"),
            new MorningView.FileRow("exports/bench-2/2026-04-01.csv", "164", "127", "36", "0", "1"),
            new MorningView.FileRow("exports/rail/2026-04-01.csv", "36", "36", "0", "0", "0")),
        new MorningView.FileRow(W.say("total"), "412", "371", "36", "2", "3"),
        List.of(W.count("morning.open", 4, "4"), W.say("morning.register.new")));
  }

  private static List<Held> held() {
    var first = SampleMonth.held().get(0);
    var likely =
        List.of(
            new Held.Likely(
                "Ticket 5121 (loin chop 4.120 kg) was keyed to P-0078 between tickets of P-0077."
                    + " Moved to P-0077: loss of P-0077 1.1 %; loss of P-0078 0.9 %.",
                W.say("morning.likely.line"),
                List.of("bench-1,5121,2026-04-01,body,P-0077,,,keyed to the wrong body")),
            new Held.Likely(
                "Of P-0077 8.1 % is bone, here usually about 12.5 %.",
                "Look for bone of P-0077 that was not weighed.", List.of()));
    return List.of(
        new Held(first.body(), first.customer(), first.reason(), first.advice(), likely),
        SampleMonth.held().get(1));
  }

  private static List<MorningView.Todo> todo() {
    return List.of(
        new MorningView.Todo(
            W.say("morning.severity.stop"),
            "",
            "",
            "7 statements would be revised in one night, more than 5.",
            "Find what changed so much; if it is right, raise limit.revisions once.",
            ""),
        new MorningView.Todo(
            W.say("morning.severity.hold"),
            W.say("morning.place", "exports/bench-1/2026-04-01.csv", "88"),
            W.say("morning.ticket", "bench-1", "5120"),
            "The body B-0431 is not in bodies.csv.",
            "Add the body to bodies.csv, or give its id as a tag of a body.",
            "bench-1,5120,2026-04-01T10:14:31,B-0431,7102,4.36,,,kg,1,,,"),
        new MorningView.Todo(
            W.say("morning.severity.mark"),
            W.say("morning.place", "corrections.csv", "4"),
            W.say("morning.ticket", "bench-2", "77"),
            "The correction fits no row.",
            "Check scale, ticket and date against the export; it changed nothing.",
            ""));
  }

  static MorningView quietMorning() {
    return new MorningView(
        SampleMonth.page(W.say("morning.title", "3 April 2026"), "3 April 2026"),
        W.labels(),
        SampleStatement.SHOP,
        "Friday 3 April 2026",
        List.of(W.say("morning.well"), W.say("morning.issued.none"), W.say("morning.read.none")),
        List.of(),
        "",
        List.of(),
        List.of(),
        "",
        List.of(),
        new MorningView.FileRow("", "", "", "", "", ""),
        List.of());
  }
}
