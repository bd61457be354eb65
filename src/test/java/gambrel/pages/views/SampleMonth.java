package gambrel.pages.views;

import java.util.ArrayList;
import java.util.List;

/** Months of few and of many bodies. */
final class SampleMonth {

  private static final Words W = SampleWords.ENGLISH;

  private SampleMonth() {}

  static SummaryView month(int bodies) {
    var rows = new ArrayList<TableView.Row>();
    var shrink = new int[bodies];
    for (var i = 0; i < bodies; i++) {
      shrink[i] = 190 + i * 53 % 70 + (i == 7 ? 150 : 0);
      rows.add(bodyRow(i, shrink[i]));
    }
    return new SummaryView(
        page(W.say("summary.title", "March 2026"), "March 2026"),
        W.labels(),
        SampleStatement.SHOP,
        "March 2026",
        W.say("summary.known", "2 April 2026, 02:00"),
        SampleLosses.firstPage(),
        SampleParts.of(rows, shrink),
        List.of(),
        SampleLosses.firstPage().findings(),
        List.of());
  }

  /** A month in which little happened and less is known. */
  static SummaryView emptyMonth() {
    return new SummaryView(
        page(W.say("summary.title", "April 2026"), "April 2026"),
        W.labels(),
        SampleStatement.SHOP,
        "April 2026",
        W.say("summary.known", "2 May 2026, 02:00"),
        SampleLosses.quiet(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static TableView.Row bodyRow(int i, int shrink) {
    var owners =
        List.of(
            "Aroha Ngātuere",
            "Zdzisław Grzęda",
            "Trustees of the Estate of W. Featherstonehaugh-Ravenscroft",
            "Ines Plover");
    var waits = i % 11 == 5;
    return SampleParts.row(
        waits ? "waits" : "",
        String.join(
            "|",
            "B-0" + (300 + i),
            owners.get(i % owners.size()),
            "beef, steer",
            1 + i % 30 + " Mar",
            "#345.5",
            "#338.4",
            "#331.2",
            waits ? "#" : "#231.44",
            waits ? "#" : "#3.94",
            "#" + SampleCuts.text(shrink, 2),
            waits ? "#" : "#1.2",
            waits ? "#" : "#68.4",
            W.say(waits ? "summary.state.held" : "summary.state.issued")));
  }

  static PageView page(String title, String when) {
    return new PageView(
        "en-AU",
        false,
        title,
        W.say("summary.running", SampleStatement.SHOP.name(), when),
        SampleStatement.SHOP.name());
  }
}
