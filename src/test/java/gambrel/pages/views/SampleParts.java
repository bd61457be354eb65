package gambrel.pages.views;

import gambrel.pages.views.TableView.Cell;
import gambrel.pages.views.TableView.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The parts of a month for samples: every kind of table, with long names and narrow columns. */
final class SampleParts {
  private static final Words W = SampleWords.ENGLISH;

  private SampleParts() {}

  /** A table whose columns are named by {@code heads}: figures where a head begins with #. */
  static TableView table(String style, String heads, List<Row> rows, String... remarks) {
    var all = Stream.of(heads.split("\\|")).map(SampleParts::head).toList();
    return new TableView(style + " figures even", List.of(all), rows, List.of(remarks));
  }

  private static Cell head(String text) {
    return text.startsWith("#")
        ? new Cell(text.substring(1), "number")
        : new Cell(text, text.isEmpty() ? "first" : "");
  }

  /** A row of cells separated by bars: figures where a cell begins with #. */
  static Row row(String style, String cells) {
    return new Row(style, Stream.of(cells.split("\\|", -1)).map(SampleParts::head).toList());
  }

  static Row group(String title, int columns) {
    return new Row("group", List.of(new Cell(title, "first", columns)));
  }

  static PartView part(String title, TableView... tables) {
    return PartView.of(W.say(title), List.of(tables), List.of());
  }

  static List<PartView> of(List<Row> bodies, int[] shrink) {
    var parts = new ArrayList<PartView>();
    parts.add(
        new PartView(
            W.say("losses", "beef"),
            "wide chapter",
            false,
            List.of(lost()),
            List.of(W.say("places.most")),
            List.of(SampleChart.of("beef", shrink))));
    parts.add(
        PartView.withRoom(
            W.say("in_the_chiller"),
            List.of(
                table(
                    "daily",
                    "|#Beef, usual 2.10%|#",
                    List.of(row("", "4 Mar|#2.05|#of 4"), row("", "18 Mar|#3.41|#of 5")))),
            List.of()));
    parts.add(
        part(
            "against",
            table(
                "against",
                "Customers' bodies, in the chiller|#Lost, kg|#Worth, AUD|#Lost, %|#Middle half",
                List.of(
                    row("", "Beef|#58.3|#752.07|#2.1|#1.8 to 2.3"), row("", "Lamb|#2.7|#|#1.9|#")),
                W.say("against_explained"))));
    parts.add(
        part(
            "batches",
            table(
                "batches",
                "Batch|Product|#Meat in, kg|#Out, kg|State",
                List.of(
                    row("", "S-12|Beef sausages|#61.40|#67.12|balances"),
                    row("", "H-3|Ham, in cure|#15.60|#|open, due 10 April")))));
    parts.add(
        part(
            "yields_before",
            table(
                "like",
                "|#Take-home, % of cold|#Bone, %|#Fat, %|#Trim, %",
                List.of(
                    row("strong", "Beef|#68.4|#18.7|#8.2|#21.0"),
                    row("under", "Twelve months before|#69.1 (66.8–71.4)|#|#|#"),
                    row("", W.say("month.split.boner", "Featherstonehaugh") + "|#|#19.1|#|#")),
                W.say("month.boners.few", "8"))));
    parts.add(
        part(
            "pace",
            table(
                "pace",
                "Piece|Boner|#Pieces|#minutes each|#Middle half|#kg an hour",
                List.of(
                    row("", "Hindquarter, beef|Wyn|#18|#11.4|#10.1–13.0|#312"),
                    row("", "Forequarter, beef|Dario|#2|#14.0|#|#290")),
                W.say("month.pace.read"),
                W.count("month.pace.breaks", 3, "3"))));
    parts.add(
        part(
            "stock",
            table(
                "suppliers",
                "Bought from|#Bodies|#Take-home|#Middle half|#Cost, AUD|#Left over, AUD",
                List.of(
                    row(
                        "",
                        "Featherstonehaugh and Ravenscroft Pastoral, beef|#12|#70.1|#68.9–71.4|"
                            + "#19,620.00|#4,482.55")),
                W.say("month.stock.read"))));
    parts.add(
        PartView.withRoom(
            W.say("unpaid"),
            List.of(
                table(
                    "unpaid",
                    "Issued|Customer|Body|#AUD",
                    List.of(
                        row("", "6 March 2026|Muirne Ó Cathasaigh|L-0102|#141.90"),
                        row("total", "Total|||#540.94")),
                    W.say("payments_known"))),
            List.of()));
    parts.add(
        PartView.withRoom(
            W.say("bodies"),
            List.of(
                table(
                    "bodies tight",
                    "Body|Owner|Kind|Killed|#Hot, kg|#Cold, kg|#Boning, kg|#Home, kg|#Loss, kg|"
                        + "#Chill, %|#Bench, %|#Home, %|State",
                    bodies,
                    W.say("bodies_explained"))),
            List.of()));
    return parts;
  }

  private static TableView lost() {
    return table(
        "lost",
        "|#Chill shrink|#|#kg|#Bench loss|#|#kg",
        List.of(
            group(W.say("summary.customers"), 7),
            row("", "Beef|#2.1|#of 9|#58.3|#1.2|#of 8|#29.88"),
            row("", "Lamb|#1.9|#of 2|#2.7|#|#|#"),
            group(W.say("summary.own"), 7),
            row("", "Pork|#2.0|#of 2|#1.4|#6.0|#of 1|#4.12")),
        W.say("places.read"));
  }
}
