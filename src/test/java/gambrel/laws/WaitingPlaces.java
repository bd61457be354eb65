package gambrel.laws;

import gambrel.oracle.ExactNight;

/** The figures in the sentences about bodies that wait. */
final class WaitingPlaces {
  private final ExactNight exact;
  private final EnglishWords words;
  private final Agreement agreement;

  WaitingPlaces(ExactNight exact, EnglishWords words, Agreement agreement) {
    this.exact = exact;
    this.words = words;
    this.agreement = agreement;
  }

  private static String lastWord(String text) {
    return text.replaceFirst("^.* ", "");
  }

  /** The loss of a body that waits for it. */
  void waiting(PrintedPage page, String where) {
    for (var row : page.rows("waiting")) {
      var said = words.read("summary.reason.loss-high", row.cell(2));
      if (said.isPresent()) {
        var body = row.cell(0).replaceFirst(", .*", "");
        var numbers = exact.body(body);
        var place = where + " waiting " + body;
        agreement.number(place, lastWord(said.get().get(0)), numbers.get("cutting_loss"));
        agreement.number(place, said.get().get(1), numbers.get("cutting_loss_pct"));
      }
    }
  }
}
