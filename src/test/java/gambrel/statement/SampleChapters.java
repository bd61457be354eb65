package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/** The month's chapters on yields, work, values and money, full and empty. */
final class SampleChapters {
  private static final Words W = SampleWords.ENGLISH;
  private static final Counted NONE = new Counted("", "");

  private SampleChapters() {}

  static YieldsChapter yields(List<YieldsChapter.YieldGroup> groups) {
    var cell = new YieldsChapter.Cell(new Counted("68.4", "118"), "69.1 (66.8–71.4)");
    var bare = new YieldsChapter.Cell(NONE, "");
    return new YieldsChapter(
        groups,
        List.of(
            new YieldsChapter.Line("Beef", true, List.of(cell, cell, cell, cell), true),
            new YieldsChapter.Line("steer", false, List.of(cell, bare, bare, cell), true),
            new YieldsChapter.Line(
                W.say("month.split.boner", "Featherstonehaugh"),
                false,
                List.of(bare, cell, bare, bare),
                false)),
        List.of(
            new YieldsChapter.PrimalGroup(
                "Beef",
                List.of(
                    new YieldsChapter.PrimalRow(
                        "Rump and loin",
                        new Counted("12.4", "8"),
                        new Counted("12.1", "61"),
                        "11.6–12.7"),
                    new YieldsChapter.PrimalRow("Thin flank", NONE, NONE, "")))),
        List.of(
            W.say(
                "month.boners.more",
                "Wyn",
                "Beef",
                "2.1",
                "1.2",
                "3.0",
                "20",
                "31")));
  }

  static PaceChapter pace() {
    return new PaceChapter(
        List.of(
            new PaceChapter.Row(
                "Hindquarter, beef", "Wyn", "18", "11.4", "10.1–13.0", "312", "11.0", "318"),
            new PaceChapter.Row("Forequarter, beef", "Dario", "2", "14.0", "", "290", "", "")),
        List.of(W.say("month.pace.read"), W.count("month.pace.breaks", 3, "3")));
  }

  static ValueChapter value() {
    return new ValueChapter(
        List.of(
            new ValueChapter.Worth(
                "Beef", "61", "13.42", "12.90–14.05", "B0703 11.20", "B0716 15.11", "13.10")),
        List.of(
            new ValueChapter.Choice(
                W.say("month.value.of.body", "Short loin", "beef", "kg"),
                List.of(
                    new ValueChapter.Way(
                        "Eye fillet, Porterhouse", "24", "1.84", "1.80–1.90", "", ""),
                    new ValueChapter.Way(
                        "T-bone steak", "18", "1.73", "1.70–1.77", "0.11", "sure")))),
        W.say("month.value.small.kg"),
        List.of(
            new ValueChapter.SmallRow(
                "Short loin, beef", "34.00", "+1.95", "+1.65", "Thin flank", "\u22120.20")),
        List.of(W.say("month.value.missing", "Flank steak, Thick skirt")));
  }

  static MoneyChapter.Weights weights(int bodies) {
    return new MoneyChapter.Weights(
        List.of(W.say("summary.customers"), W.say("summary.own"), W.say("summary.shared")),
        List.of(
            sums("summary.total.killed", "" + (bodies - 2), "1", "1"),
            sums("summary.total.boning", "2,914.6 kg", "271.5 kg", "248.0 kg"),
            sums("summary.total.take_home", "1,994.32 kg", "190.04 kg", "171.12 kg"),
            sums("summary.total.waste", "1.20 kg", "", "")));
  }

  private static MoneyChapter.Sums sums(String key, String... sums) {
    return new MoneyChapter.Sums(W.say(key), List.of(sums));
  }

  static MoneyChapter money(MoneyChapter.Weights weights, List<Fact> totals) {
    return new MoneyChapter(
        List.of(
            new MoneyChapter.Income(
                "Beef", "58", "28,310.20", "2.31", "712.00", "2.28", "705.00")),
        List.of(
            new MoneyChapter.Supplier(
                "Featherstonehaugh and Ravenscroft Pastoral, beef",
                "12",
                "70.1",
                "68.9–71.4",
                "19,620.00",
                "24,102.55",
                "4,482.55",
                "1.77")),
        List.of(
            new MoneyChapter.Stock(
                "B0718",
                "beef, heifer",
                "J. & P. Stroud",
                "69.8",
                "1,477.00",
                "1,402.10",
                "\u221274.90")),
        List.of(
            new MoneyChapter.Unpaid("6 March 2026", "Muirne Ó Cathasaigh", "L-0102", "141.90"),
            new MoneyChapter.Unpaid("28 March 2026", "Aroha Ngātuere", "B-0341", "399.04")),
        "540.94",
        weights,
        totals,
        new MoneyChapter.Remarks(
            List.of(W.say("month.income.read")), List.of(W.say("month.stock.read"))));
  }

  static YieldsChapter noYields() {
    return new YieldsChapter(List.of(), List.of(), List.of(), List.of());
  }

  static PaceChapter noPace() {
    return new PaceChapter(List.of(), List.of());
  }

  static ValueChapter noValue() {
    return new ValueChapter(List.of(), List.of(), "", List.of(), List.of());
  }

  static MoneyChapter noMoney() {
    return new MoneyChapter(
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "",
        new MoneyChapter.Weights(List.of(), List.of()),
        List.of(),
        new MoneyChapter.Remarks(List.of(), List.of()));
  }
}
