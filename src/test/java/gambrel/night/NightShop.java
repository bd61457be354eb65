package gambrel.night;

import gambrel.files.publish.HastyDisk;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A shop folder for tests of whole nights: customers {@code ann} and {@code bob}, a rail scale and
 * a bench scale. Cattle are killed on 2 March 2026 and cut three days later.
 */
public final class NightShop {
  /** The night on which statements of all cut bodies are issued. */
  public static final String NIGHT = "2026-03-06T02:00";

  private static final ZoneId ZONE = ZoneId.of("Australia/Sydney");

  private final Path folder;
  private final Map<String, List<String>> files = new LinkedHashMap<>();
  private int ticket;

  /** A shop without bodies. */
  public NightShop(Path folder) {
    this.folder = folder;
    add("shop.properties", "name=Hollow Lane Meats", "currency=AUD", "unit=kg", "region=au");
    add("shop.properties", "zone=" + ZONE);
    add("customers.csv", "customer,name", "ann,Ann Dorrin", "bob,Bob Tallow");
    add("bodies.csv", "body,species,killed,customer,outcome");
    add("scales.csv", "scale,division", "rail,0.2", "bench,0.005");
    add("codes.csv", "code,item,step", "hot,carcase,hot", "cold,carcase,cold");
    add("codes.csv", "rump,rump,pack", "mince,mince,pack", "liver,liver,pack");
    add("codes.csv", "trim,trim,tub", "bone,bone,bin", "fat,fat,bin", "lamb-leg,leg,pack");
    add("charges.csv", "charge,description,basis,price,tax_percent", "kill,Kill,head,130.00,10");
    add("exports/a.csv", "scale,ticket,time,body,code,net,pieces,batch,customer,status");
  }

  /** Adds lines to a file. */
  public NightShop add(String file, String... lines) {
    files.computeIfAbsent(file, f -> new ArrayList<>()).addAll(List.of(lines));
    return this;
  }

  /** Replaces a text in a file, which must contain it. */
  public NightShop replace(String file, String from, String to) {
    var lines = files.get(file);
    var before = String.join("\n", lines);
    if (!before.contains(from)) {
      throw new IllegalArgumentException(from + " is not in " + before);
    }
    lines.clear();
    lines.addAll(List.of(before.replace(from, to).split("\n")));
    return this;
  }

  /** Removes a file. */
  public NightShop without(String file) {
    files.remove(file);
    return this;
  }

  /** The lines of a file. */
  public List<String> lines(String file) {
    return List.copyOf(files.get(file));
  }

  /** A body of a customer, weighed and cut: 294 cold, 288 in packs and bins. */
  public NightShop beef(String id, String customer) {
    body(id, customer);
    packs(id, "120");
    return this;
  }

  /** A body of a customer that hangs and is not cut. */
  public NightShop body(String id, String customer) {
    add("bodies.csv", cell(id) + ",beef,2026-03-02," + cell(customer) + ",");
    weigh("rail", "02T10:00:00", id, "hot", "300");
    return weigh("rail", "03T10:00:00", id, "cold", "294");
  }

  /** Cuts a body into a rump pack and 168 of mince, bone and fat. */
  public NightShop packs(String id, String rump) {
    weigh("bench", "05T10:00:00", id, "rump", rump);
    weigh("bench", "05T10:10:00", id, "mince", "80");
    weigh("bench", "05T10:20:00", id, "bone", "60");
    return weigh("bench", "05T10:30:00", id, "fat", "28");
  }

  /** A row with the next ticket; {@code rest} is appended after the net weight. */
  public NightShop weigh(
      String scale, String time, String body, String code, String net, String... rest) {
    var start = String.join(",", scale, "" + ++ticket, "2026-03-" + time, cell(body), code, net);
    return add("exports/a.csv", rest.length == 0 ? start : start + ',' + String.join(",", rest));
  }

  private static String cell(String text) {
    return text.matches("[^\",;\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  /** Writes the folder. */
  public Path write() {
    try {
      for (var old : Trees.files(folder)) {
        if (!old.startsWith("reports/")) {
          Files.delete(folder.resolve(old));
        }
      }
      for (var file : files.entrySet()) {
        var path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.writeString(path, String.join("\n", file.getValue()) + "\n");
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where a run without {@code --out} publishes. */
  public Path reports() {
    return folder.resolve("reports");
  }

  /** Runs a night into {@link #reports}. */
  NightOutcome run(String asOf) {
    return run(reports(), asOf);
  }

  /** Runs a night into a folder. */
  NightOutcome run(Path out, String asOf) {
    return night().run(out, moment(asOf), List.of());
  }

  /** Runs a night that must succeed; returns its report. */
  MorningReport done(String asOf) {
    return report(run(asOf));
  }

  /** The report of a run that must have succeeded. */
  static MorningReport report(NightOutcome outcome) {
    if (outcome instanceof NightOutcome.Done done) {
      return done.report();
    }
    throw new AssertionError(outcome.toString());
  }

  NightlyRun night() {
    try {
      return new NightlyRun(
          Inputs.read(write(), Progress.NONE), new TinyDocuments(), new HastyDisk(), Progress.NONE);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  public static OffsetDateTime moment(String asOf) {
    try {
      return AsOf.read(asOf, ZONE);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }
}
