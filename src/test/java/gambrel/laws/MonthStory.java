package gambrel.laws;

import gambrel.oracle.ExactNight;
import java.util.List;

/** The figures in sentences: the owner's month in words, and the losses of bodies that wait. */
final class MonthStory {
  private final ExactNight exact;
  private final EnglishWords words;
  private final Agreement agreement;

  MonthStory(ExactNight exact, EnglishWords words, Agreement agreement) {
    this.exact = exact;
    this.words = words;
    this.agreement = agreement;
  }

  /** The story of a month. */
  void compare(PrintedPage page, String month) {
    var numbers = exact.month(month);
    for (var sentence : page.sentences()) {
      var owner =
          MonthPlaces.OWNERS.stream()
              .filter(of -> sentence.startsWith(words.say("summary." + of)))
              .findFirst()
              .orElse("any");
      var place = month + " story " + owner + " all ";
      for (var loss : List.of("chill", "ageing", "bench")) {
        words
            .read("summary.lost." + loss, sentence.replaceFirst("^.* lost ", ""))
            .filter(said -> !owner.equals("any"))
            .ifPresent(
                said ->
                    agreement.number(
                        place + loss,
                        said.get(0).replaceFirst("^.*, ", ""),
                        numbers.get(owner + " all " + loss + "_loss")));
      }
      for (var key : List.of("summary.cut.one", "summary.cut.many")) {
        var name = owner + " all home_of_boning";
        words
            .read(key, sentence)
            .ifPresent(
                said -> {
                  agreement.number(place + "cut", said.get(1), numbers.get(name + " of"));
                  agreement.number(place + "home", said.get(2), numbers.get(name));
                  agreement.number(place + "of", said.get(3), numbers.get(name + " pct"));
                });
      }
      words
          .read("summary.left", sentence)
          .ifPresent(
              said ->
                  agreement.number(
                      place + "left", lastWord(said.get(0)), numbers.get(owner + " all sum left")));
    }
  }

  private static String lastWord(String text) {
    return text.replaceFirst("^.* ", "");
  }

  /** The loss of a body that waits for it. */
  void waiting(PrintedPage page, String where) {
    for (var row : page.rows("waiting")) {
      var said = words.read("summary.reason.loss-high", String.join(" ", row.cells()));
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
