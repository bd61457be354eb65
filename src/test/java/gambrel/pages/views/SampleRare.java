package gambrel.pages.views;

import java.util.List;

/** Statements of what happens less often, and lists of any length. */
final class SampleRare {

  private static final Words W = SampleWords.ENGLISH;

  private SampleRare() {}

  /** Nothing known but that there are packs. */
  static StatementView minimal() {
    var sample = new SampleStatement(W, "G-2", W.say("species.goat"), "Ines Plover");
    sample.animal.add(new Fact(W.say("animal.number"), "G-2"));
    sample.answer("packs", W.count("packs.lead.all", 1, "1", "2.20 kg"));
    sample.boxes = new SampleCuts().cut("Diced goat", 1, "2.20").view("kg", null);
    return sample.view();
  }

  static StatementView condemned() {
    var sample =
        new SampleStatement(W, "B-0350", W.say("animal.heading.beef", "heifer"), "Ines Plover");
    sample.known("GB 0522", "Thursday 12 March 2026").issued("13 March 2026", 1);
    sample
        .answer("packs", W.say("packs.condemned.lead"), W.say("packs.condemned"))
        .answer("owe", W.say("owe.due.lead", "$120.00"))
        .answer("rest", W.say("rest.lead.condemned"), W.say("rest.condemned", "212.4 kg"));
    sample.charges =
        new ChargesView(
            "AUD",
            "",
            List.of(
                new ChargesView.Section(
                    "",
                    List.of(
                        new ChargesView.Row(
                            "Killing and dressing", "1 head", "120.00", "", "120.00")),
                    List.of(new ChargesView.Sum(W.say("charges.due.left"), "120.00", true)))),
            List.of());
    return sample.view();
  }

  static StatementView outrightOnly() {
    var cuts = new SampleCuts().cut("Scotch fillet steaks", 6, "3.92").cut("Mince", 10, "10.04");
    var sample =
        new SampleStatement(W, "B-0341", W.say("animal.heading.beef", "steer"), "Ines Plover");
    sample.known("GB 0417, left ear", "Tuesday 10 March 2026").issued("28 March 2026", 1);
    sample
        .answer("packs", W.count("packs.lead.all", 16, "16", cuts.weight() + " kg"))
        .answer("owe", W.say("owe.free.lead"), W.say("owe.outright"))
        .answer("mine", W.say("mine.lead.outright"), W.say("mine.alone"));
    sample.boxes = cuts.view("kg", null);
    return sample.keeping("4 °C", "−18 °C", "steaks", "mince").caution("caution.raw").view();
  }

  /** A statement with {@code lines} cuts, and names that do not fit a line. */
  static StatementView lines(int lines) {
    var cuts = new SampleCuts();
    for (var i = 1; i <= lines; i++) {
      cuts.cut(
          i % 9 == 4
              ? "Cut " + i + ", a name of the shop's own that says far more than any list needs"
              : "Cut " + i,
          1 + i % 12,
          SampleCuts.text(100 + i * 37 % 900, 2));
    }
    var sample =
        new SampleStatement(
            W,
            "B-0399-LONG-NUMBER-OF-THE-SHOP",
            W.say("animal.heading.beef", "bullock, finished on hill pasture"),
            "The Trustees of the Estate of Wilhelmina Featherstonehaugh-Ravenscroft & Daughters");
    sample.known(
        "UK 740 123 456 789, notched, brand of two crossed keys on the near hip",
        "Tuesday 10 March 2026");
    sample.answer(
        "packs", W.count("packs.lead.all", cuts.packs(), "" + cuts.packs(), cuts.weight() + " kg"));
    sample.boxes = cuts.view("kg", null);
    return sample.caution("caution.label.au").view();
  }
}
