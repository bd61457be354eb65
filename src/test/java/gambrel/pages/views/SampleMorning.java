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
        W.say("morning.title", "Thursday 2 April 2026"),
        List.of(
            W.count("morning.held", 2, "2") + " " + W.count("morning.todo", 2, "2"),
            W.count("morning.cut.finish", 1, "1", "B-0420 (Ada Moss)")
                + " "
                + W.say("morning.cut.next", "L-0110 (Ada Moss)", "Friday 3 April 2026")),
        waits(),
        rail(),
        new MorningView.Ring(
            List.of(
                new MorningView.Issued(
                    "Aroha Ngātuere",
                    "B-0341, beef",
                    "",
                    "219",
                    "231.44 kg",
                    "$399.04",
                    "$512.54",
                    W.say("morning.by.email")),
                new MorningView.Issued(
                    "Muirne Ó Cathasaigh",
                    "L-0102, lamb",
                    W.say("morning.revision", "2"),
                    "",
                    "60.13 kg",
                    "",
                    "",
                    W.say("morning.by.print"))),
            W.count("morning.issued.more", 12, "12"),
            W.say("morning.owing", "Aroha Ngātuere", "$512.54", "12 January 2026")
                + " · "
                + W.count("morning.owing.more", 7, "7")),
        List.of(
            W.count(
                "morning.read",
                412,
                "412",
                W.count("morning.files", 3, "3"),
                "371",
                "36",
                "2",
                "3"),
            W.say("morning.register.new")));
  }

  private static List<MorningView.Waits> waits() {
    var likely =
        List.of(
            new MorningView.Likely(
                "Ticket 5121 (loin chop 4.120 kg) was keyed to P-0078 between tickets of P-0077."
                    + " Moved to P-0077: loss of P-0077 1.1 %; loss of P-0078 0.9 %.",
                W.say("morning.likely.line"),
                List.of("bench-1,5121,2026-04-01,body,P-0077,,,keyed to the wrong body")),
            new MorningView.Likely(
                "Of P-0077 8.1 % is bone, here usually about 12.5 %.",
                "Look for bone of P-0077 that was not weighed.", List.of()));
    return List.of(
        new MorningView.Waits(
            W.say("morning.group.stop"),
            List.of(
                item(
                    "",
                    "7 statements would be revised in one night, more than 5.",
                    "Find what changed so much; if it is right, raise limit.revisions once.")),
            ""),
        new MorningView.Waits(
            W.say("morning.group.hold"),
            List.of(
                new MorningView.Item(
                    "P-0077, pork · Horatio Quillfeather",
                    "4.12 kg is missing in the boning room, 6.0% of the weight into it; the limit is"
                        + " 3.0%.",
                    "Look for a tub or a pack that was not weighed; or release it in releases.csv.",
                    List.of(),
                    likely),
                item(
                    "B-0360, beef · Windrow Lane Boning Room",
                    "The cold weight is missing.",
                    "Add the weighing in an export, or release it in releases.csv.")),
            W.count("morning.more", 3, "3")),
        new MorningView.Waits(
            W.say("morning.group.rows"),
            List.of(
                item(
                    "B-0431",
                    "bodies.csv has no body B-0431.",
                    "Add the body to bodies.csv, or give its id as a tag of a body.",
                    "exports/bench-1/2026-04-01.csv:88"
                        + " · bench-1,5120,2026-04-01T10:14:31,B-0431,7102,4.36")),
            ""),
        new MorningView.Waits(
            W.say("morning.group.mark"),
            List.of(
                item(
                    "",
                    "No row of scale bench-2 has ticket 77.",
                    "Check scale, ticket and date against the export; it changed nothing.",
                    "corrections.csv:4 · " + W.say("morning.ticket", "bench-2", "77"))),
            ""));
  }

  private static MorningView.Item item(String who, String message, String advice, String... rows) {
    return new MorningView.Item(who, message, advice, List.of(rows), List.of());
  }

  private static MorningView.Rail rail() {
    return new MorningView.Rail(
        List.of(
            new MorningView.Hanging(
                "L-0110, lamb",
                "Ada Moss",
                "north",
                "31 Mar",
                "2",
                "21.8 kg",
                W.say("morning.due.asked", "2 Apr"),
                true),
            new MorningView.Hanging(
                "B-0425, beef, steer",
                "Ben Oram",
                "",
                "",
                "",
                "",
                W.count("morning.due.usual", 10, "10", "9 Apr"),
                false)),
        true,
        W.say("morning.usual.note"),
        List.of(
            new MorningView.OnBlock(
                "B-0420, beef, heifer",
                "Ada Moss",
                "1 Apr",
                "225.0 kg",
                "55.44 kg",
                W.say("morning.rest.least", "162.81 kg"))),
        W.say("morning.rest.least.note"),
        List.of(
            new MorningView.Unpacked(
                "H12, Smoked ham", "P-0070 (Ben Oram)", "24 Mar", "17.28 kg", "15 Apr")));
  }

  static MorningView quietMorning() {
    return new MorningView(
        SampleMonth.page(W.say("morning.title", "3 April 2026"), "3 April 2026"),
        W.labels(),
        SampleStatement.SHOP,
        W.say("morning.title", "Friday 3 April 2026"),
        List.of(W.say("morning.well"), W.say("morning.issued.none")),
        List.of(),
        new MorningView.Rail(List.of(), false, "", List.of(), "", List.of()),
        new MorningView.Ring(List.of(), "", ""),
        List.of(W.say("morning.read.none")));
  }
}
