package gambrel.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A shop folder of a few lines, for figures that are worked out by hand. */
final class TinyShop {
  private static final List<TreeSource.Node> TREE =
      List.of(
          new TreeSource.Node("carcase", "", "carcase", 1),
          new TreeSource.Node("side", "carcase", "piece", 2),
          new TreeSource.Node("hindquarter", "side", "piece", 2),
          new TreeSource.Node("rump", "hindquarter", "meat", 2),
          new TreeSource.Node("forequarter", "side", "piece", 2),
          new TreeSource.Node("left-side", "carcase", "piece", 1),
          new TreeSource.Node("left-hindquarter", "left-side", "piece", 1),
          new TreeSource.Node("left-forequarter", "left-side", "piece", 1),
          new TreeSource.Node("right-side", "carcase", "piece", 1),
          new TreeSource.Node("right-hindquarter", "right-side", "piece", 1),
          new TreeSource.Node("right-forequarter", "right-side", "piece", 1),
          new TreeSource.Node("mince", "carcase", "meat", 1),
          new TreeSource.Node("trim", "carcase", "trim", 1),
          new TreeSource.Node("bone", "carcase", "bone", 1),
          new TreeSource.Node("fat", "carcase", "fat", 1),
          new TreeSource.Node("liver", "carcase", "offal", 1));

  private final Path folder;
  private final Map<String, List<String>> files = new LinkedHashMap<>();
  private int ticket;

  /** One body, {@code B1}, killed on 2 March 2026, of customer {@code ann}. */
  TinyShop(Path folder) {
    this.folder = folder;
    add("shop.properties", "name=Tiny", "currency=EUR", "unit=kg", "zone=UTC", "region=uk");
    add("customers.csv", "customer,name", "ann,Ann", "bob,Bob", "cat,Cat");
    add("bodies.csv", "body,species,killed,live_weight,customer,outcome");
    add("bodies.csv", "B1,beef,2026-03-02,560,ann");
    add("shares.csv", "body,customer,share");
    add("scales.csv", "scale,division,class", "rail,0.5,III", "bench,0.02,III", "pack,0.01,III");
    add("codes.csv", "code,item,step,nominal");
    for (var step : List.of("hot", "cold", "aged", "block", "tub", "pack", "bin", "added")) {
      TREE.forEach(n -> add("codes.csv", step + " " + n.item() + "," + n.item() + "," + step));
    }
    add("codes.csv", "test20,,test,20");
    add("charges.csv", "charge,description,basis,price,tax_percent,minimum,free,item");
    add("batches.csv", "batch,product,gain,due");
    add("releases.csv", "body,by,on,reason,action");
    add("corrections.csv", "scale,ticket,field,value,on,by,reason");
    add("exports/a.csv", "scale,ticket,time,body,code,net,pieces,batch,customer,status");
  }

  TinyShop add(String file, String... lines) {
    files.computeIfAbsent(file, f -> new ArrayList<>()).addAll(List.of(lines));
    return this;
  }

  /** A row with the next ticket; {@code rest} goes on after the net weight. */
  TinyShop row(String scale, String time, String body, String code, String net, String... rest) {
    var start = String.join(",", scale, "" + ++ticket, "2026-03-" + time, body, code, net);
    return add("exports/a.csv", rest.length == 0 ? start : start + "," + String.join(",", rest));
  }

  /** Hot 300, cold 294 the next day, 288 in packs and bins two days later: 6 are lost. */
  TinyShop balanced() {
    row("rail", "02T10:00:00", "B1", "hot carcase", "300");
    row("rail", "03T10:00:00", "B1", "cold carcase", "294");
    row("pack", "05T10:00:00", "B1", "pack rump", "120");
    row("pack", "05T10:10:00", "B1", "pack mince", "80");
    row("bench", "05T10:20:00", "B1", "bin bone", "60");
    return row("bench", "05T10:30:00", "B1", "bin fat", "28");
  }

  /** The tables as of a day and time in March 2026. */
  OracleTables at(String dayTime) {
    return exactlyAt(dayTime).tables();
  }

  /** All figures as of a day and time in March 2026. */
  ExactNight exactlyAt(String dayTime) {
    files.forEach(this::write);
    return ExactNight.of(folder, OffsetDateTime.parse("2026-03-" + dayTime + ":00Z"), trees());
  }

  private void write(String file, List<String> lines) {
    try {
      Files.createDirectories(folder.resolve(file).getParent());
      Files.writeString(folder.resolve(file), String.join("\n", lines) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TreeSource trees() {
    return new TreeSource() {
      @Override
      public List<String> species() {
        return List.of("beef");
      }

      @Override
      public List<Node> items(String species) {
        return TREE;
      }
    };
  }
}
