package gambrel.pages.owner;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.night.Inputs;
import gambrel.night.RefusedException;
import gambrel.pages.owner.month.SummaryComposer;
import gambrel.pages.views.PartView;
import gambrel.pages.views.SummaryView;
import gambrel.pages.views.TableView;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Register;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A shop folder of a few lines: rail to 0.5 kg, bench to 0.02 kg, in UTC. */
public final class SmallShop {
  static final Register NOTHING_ISSUED = new Register(List.of());

  private final Path folder;
  private final Map<String, List<String>> files = new LinkedHashMap<>();
  private int ticket;

  public SmallShop(Path folder) {
    this.folder = folder;
    add(
        "shop.properties",
        """
        name=Fold End Boning Room
        currency=AUD
        locale=en-AU
        unit=kg
        zone=UTC\
        """);
    add("customers.csv", "customer,name\nc-ann,Ann Lowry\nc-bob,Bob Teasel");
    add("bodies.csv", "body,species,killed,live_weight,live_guessed,customer,outcome,head");
    add("shares.csv", "body,customer,share");
    add("scales.csv", "scale,division\nrail,0.5\nbench,0.02");
    add("batches.csv", "batch,product,due");
    add("payments.csv", "customer,body,date,amount");
    add(
        "charges.csv",
        """
        charge,description,basis,price
        kill,Slaughter,head,100\
        """);
    add(
        "codes.csv",
        """
        code,item,step
        hot,carcase,hot
        cold,carcase,cold
        aged,carcase,aged
        mince,mince,pack
        trim,trim,tub
        bone,bone,bin
        fat,fat,bin\
        """);
    add("exports/day.csv", "scale,ticket,time,body,code,net,batch");
  }

  SmallShop add(String file, String lines) {
    files.computeIfAbsent(file, f -> new ArrayList<>()).addAll(lines.lines().toList());
    return this;
  }

  /** Writes a file anew. */
  SmallShop instead(String file, String lines) {
    files.remove(file);
    return add(file, lines);
  }

  /** A customer's or, with an empty customer, the shop's beef body. */
  SmallShop beef(String body, String killed, String customer) {
    return add("bodies.csv", body + ",beef," + killed + ",,," + customer);
  }

  /** A weighing with the next ticket. */
  SmallShop row(String scale, String time, String body, String code, String net) {
    return row(scale, time, body, code, net, "");
  }

  SmallShop row(String scale, String time, String body, String code, String net, String batch) {
    ticket++;
    return add(
        "exports/day.csv",
        String.join(",", scale, "" + ticket, time + ":00", body, code, net, batch));
  }

  /** Hot at 08:00 on a day, cold the morning after. */
  SmallShop hung(String body, String day, String hot, String cold) {
    row("rail", day + "T08:00", body, "hot", hot);
    var next = OffsetDateTime.parse(day + "T07:00:00Z").plusDays(1).toString();
    return row("rail", next.substring(0, 16), body, "cold", cold);
  }

  /** Packs and a bin of bone on a day. */
  SmallShop cut(String body, String day, String mince, String bone) {
    row("bench", day + "T09:00", body, "mince", mince);
    return row("bench", day + "T09:30", body, "bone", bone);
  }

  Inputs inputs() {
    files.forEach(this::write);
    try {
      return Inputs.read(folder, Progress.NONE);
    } catch (RefusedException e) {
      throw new IllegalStateException(e);
    }
  }

  public Night at(String moment) {
    var inputs = inputs();
    return new Reckoner(inputs.shop(), inputs.exports()).at(OffsetDateTime.parse(moment));
  }

  /** The summary of a month before anything was issued. */
  SummaryView summary(String month, String moment) {
    return summary(at(moment), month, NOTHING_ISSUED);
  }

  static SummaryView summary(Night night, String month, Register register) {
    return SummaryComposer.compose(
        MonthReport.of(MonthRecords.of(night, register, YearMonth.parse(month))), wording(night));
  }

  public static Wording wording(Night night) {
    return new OwnerDocuments(night.shop().settings()).wording();
  }

  private void write(String file, List<String> lines) {
    try {
      var path = folder.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, String.join("\n", lines) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The texts of the rows of a month's tables of one name, group headings left out. */
  static List<List<String>> rows(SummaryView month, String table) {
    return tables(month, table).stream()
        .flatMap(of -> of.rows().stream())
        .filter(row -> !row.style().equals("group"))
        .map(SmallShop::texts)
        .toList();
  }

  /** The texts of one column. */
  static List<String> column(SummaryView month, String table, int column) {
    return rows(month, table).stream().map(row -> row.get(column)).toList();
  }

  /** All parts after the first page. */
  static Stream<PartView> parts(SummaryView month) {
    return Stream.of(month.losses(), month.money(), month.appendix()).flatMap(List::stream);
  }

  /** The texts of a row's cells. */
  public static List<String> texts(TableView.Row row) {
    return row.cells().stream().map(TableView.Cell::text).toList();
  }

  /** The first part with a title; empty if it is not shown. */
  static Optional<PartView> part(SummaryView month, String title) {
    return parts(month).filter(part -> part.title().equals(title)).findFirst();
  }

  /** The rows of a table below a title, up to the next title. */
  static List<List<String>> below(SummaryView month, String table, String title) {
    var rows = new ArrayList<List<String>>();
    boolean below = false;
    for (var of : tables(month, table)) {
      for (var row : of.rows()) {
        if (row.style().equals("group")) {
          below = texts(row).get(0).equals(title);
        } else if (below) {
          rows.add(texts(row));
        }
      }
    }
    return rows;
  }

  /** All tables with a name, which is the first of their classes. */
  static List<TableView> tables(SummaryView month, String name) {
    return Stream.concat(
            month.first().sums().stream(), parts(month).flatMap(part -> part.tables().stream()))
        .filter(table -> table.style().split(" ")[0].equals(name))
        .toList();
  }

  /** The remarks of a part of a month and of its tables. */
  static List<String> remarks(SummaryView month, String title) {
    return part(month, title).stream()
        .flatMap(
            part ->
                Stream.concat(
                    part.tables().stream().flatMap(table -> table.remarks().stream()),
                    part.remarks().stream()))
        .toList();
  }
}
