package gambrel.pages.views;

import static gambrel.pages.views.FlowView.Kind.HOME;
import static gambrel.pages.views.FlowView.Kind.LEFT;
import static gambrel.pages.views.FlowView.Kind.LOST;

import gambrel.pages.render.pdf.DocumentInfo;
import java.time.Instant;
import java.util.List;
import java.util.Random;

/** Any number of full statements of about sixty packs on two pages, no two alike. */
public final class ManyStatements {

  private static final Words W = SampleWords.ENGLISH;
  private static final Instant ISSUED = Instant.parse("2026-04-02T02:00:00Z");
  private static final List<String> NAMES =
      List.of("Aroha Ngātuere", "Muirne Ó Cathasaigh", "Ines Plover", "Zdzisław Grzęda");
  private static final List<String> FORE =
      List.of("Chuck steaks", "Blade roasts", "Brisket, rolled", "Short ribs", "Shin, diced");
  private static final List<String> HIND =
      List.of("Porterhouse steaks", "Eye fillet", "Rump steaks", "Topside roasts", "Flank");

  private final Random dice;
  private final String body;
  private final SampleStatement sample;
  private final SampleCuts cuts = new SampleCuts();

  private ManyStatements(int number) {
    dice = new Random(number);
    body = "B-" + (10_000 + number);
    sample =
        new SampleStatement(
            W,
            body,
            W.say("animal.heading.beef", "steer"),
            NAMES.get(number % NAMES.size()) + " " + number);
  }

  /** The statement of that number; the same number gives the same statement. */
  public static StatementView view(int number) {
    return new ManyStatements(number).view();
  }

  /** What the document of a view says about itself. */
  public static DocumentInfo info(StatementView view) {
    return new DocumentInfo(
        view.page().title(), view.page().language(), view.shop().name(), view.heading(), ISSUED);
  }

  private StatementView view() {
    sample.known("GB " + dice.nextInt(10_000), "Tuesday 10 March 2026").issued("2 April 2026", 1);
    cuts.group("Forequarter");
    FORE.forEach(name -> cuts.cut(name, 2 + dice.nextInt(6), weight()));
    cuts.group("Hindquarter");
    HIND.forEach(name -> cuts.cut(name, 2 + dice.nextInt(6), weight()));
    cuts.group("Mince, sausages, bones")
        .cut("Mince", 12 + dice.nextInt(6), weight())
        .cut("Beef sausages", W.say("packs.part.meat", "5.20 kg"), 6, weight());
    answers();
    sample.flow = flow();
    sample.boxes = cuts.view("kg", null);
    sample.charges = charges();
    return sample
        .keeping("4 °C", "−18 °C", "steaks", "roasts", "mince", "sausage")
        .caution("caution.sale.au", "caution.raw", "caution.label.au")
        .view();
  }

  private String weight() {
    return SampleCuts.text(300 + dice.nextInt(900), 2);
  }

  private void answers() {
    sample
        .answer(
            "packs",
            W.count("packs.lead.all", cuts.packs(), "" + cuts.packs(), cuts.weight() + " kg"))
        .answer(
            "owe", W.say("owe.due.lead", "$" + money(200)), W.say("owe.payments", "$" + money(50)))
        .answer(
            "why",
            W.say("why.lead.guessed", "612 kg", cuts.weight() + " kg"),
            W.say("why.of_cold", "6" + percent(), "338.4 kg"))
        .answer(
            "normal",
            W.say("normal.lead.usual", W.say("normal.name.take_home"), "20", "steer"),
            W.say("normal.take_home", "6" + percent(), W.say("normal.ours", "64.9%", "71.2%")),
            W.say("normal.like"))
        .answer("mine", W.say("mine.lead"), W.say("mine.alone"));
  }

  private String percent() {
    return dice.nextInt(10) + "." + dice.nextInt(10) + "%";
  }

  private String money(int about) {
    return SampleCuts.text(100L * about + dice.nextInt(9000), 2);
  }

  private FlowView flow() {
    return new SampleFlow("kg", "612")
        .stage(W.say("flow.live.guessed"), "612")
        .off(W.say("flow.dressing"), "345.5", "266.5")
        .stage(W.say("flow.hot"), "345.5")
        .off(W.say("flow.chill"), "338.4", "7.1")
        .stage(W.say("flow.boning"), "338.4")
        .part(HOME, W.say("flow.home"), cuts.weight())
        .part(LEFT, W.say("flow.bone"), weight())
        .part(LEFT, W.say("flow.fat"), weight())
        .part(LOST, W.say("flow.bench"), weight())
        .view();
  }

  private ChargesView charges() {
    return new ChargesView(
        "AUD",
        "",
        List.of(
            new ChargesView.Section(
                "",
                List.of(
                    new ChargesView.Row("Killing and dressing", "1 head", "120.00", "", "120.00"),
                    new ChargesView.Row(
                        "Cutting and packing", weight() + " kg", "1.10", "", money(300)),
                    new ChargesView.Row(
                        "Making sausages", weight() + " kg", "3.50", "", money(80))),
                List.of(
                    new ChargesView.Sum(W.say("charges.net"), money(500), false),
                    new ChargesView.Sum(
                        W.say("charges.tax", "GST", "10%", money(500)), money(50), false),
                    new ChargesView.Sum(W.say("charges.due.left"), money(500), true)))),
        List.of());
  }
}
