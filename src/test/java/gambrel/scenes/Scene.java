package gambrel.scenes;

import gambrel.files.publish.HastyDisk;
import gambrel.night.AsOf;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A shop folder of a few lines and its nightly run. Unless a scene says otherwise: kilograms,
 * euros, UTC; body {@code B1}, beef, killed on 2 March 2026 at 560 kg alive, is Ann's. Days and
 * times of March 2026 are written like {@code 05T14:00}, others in full.
 */
public final class Scene {
  private static final String MONTH = "2026-03-";

  private final Path folder;
  private final Map<String, String> settings = new TreeMap<>();
  private final Map<String, StringBuilder> files = new LinkedHashMap<>();
  private final Weighings weighings = new Weighings(Scene::moment);
  private int runs;

  /** A scene in an empty folder. */
  public Scene(Path folder) {
    this.folder = folder;
    set("name=Tiny", "currency=EUR", "unit=kg", "zone=UTC", "region=au");
    file("customers.csv", "customer,name", "ann,Ann", "bob,Bob", "cat,Cat");
    file(
        "bodies.csv",
        "body,species,killed,customer,live_weight,head,tags,outcome",
        "B1,beef,2026-03-02,ann,560");
    file("scales.csv", "scale,division,class", "rail,0.01,", "bench,0.01,");
    file("codes.csv", "code,item,step,nominal,tare,tare_each");
    file("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    file("releases.csv", "body,by,on,reason,action");
  }

  /** A moment in full; a day of March 2026 may be written {@code 05T14:00} or {@code 05}. */
  static String moment(String text) {
    return text.matches("\\d\\d(T.*)?") ? MONTH + text : text;
  }

  /** Settings of {@code shop.properties}, as {@code key=value}. */
  public Scene set(String... lines) {
    for (String line : lines) {
      settings.put(line.substring(0, line.indexOf('=')), line.substring(line.indexOf('=') + 1));
    }
    return this;
  }

  /** A whole file, in place of what stood there. */
  public Scene file(String path, String... lines) {
    files.remove(path);
    return add(path, lines);
  }

  /** A whole file of exactly this text, its line ends included. */
  public Scene text(String path, String text) {
    files.put(path, new StringBuilder(text));
    return this;
  }

  /** More lines at the end of a file. */
  public Scene add(String path, String... lines) {
    var text = files.computeIfAbsent(path, p -> new StringBuilder());
    List.of(lines).forEach(line -> text.append(line.stripTrailing()).append('\n'));
    return this;
  }

  /** Bodies other than B1. */
  public Scene body(String... rows) {
    return add("bodies.csv", rows);
  }

  /**
   * Weighings in {@code exports/a.csv}, one a line: time, body, step, item, net, then {@code
   * column=value} for whatever else the row holds. A dash is a blank. Rail weights come from scale
   * {@code rail}, others from {@code bench}; tickets count up; every step of an item has its code.
   */
  public Scene weigh(String lines) {
    return weigh("exports/a.csv", lines);
  }

  /** Takes the weighings of {@code exports/a.csv} away, before the folder is first read. */
  public Scene withoutWeighings() {
    files.remove("exports/a.csv");
    return this;
  }

  /** The same in another export. */
  public Scene weigh(String export, String lines) {
    if (!files.containsKey(export)) {
      add(export, Weighings.HEADER);
    }
    lines.lines().filter(line -> !line.isBlank()).forEach(l -> add(export, weighings.row(l)));
    return this;
  }

  /**
   * B1 at its simplest: 300 hot, 294 cold the next day (2 % chill shrink), and three days later all
   * of the 294 in packs and bins: rump 120, mince 80, bone 60, fat 34.
   */
  public Scene simpleBody() {
    return weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    120
        05T10:10 B1 pack mince    80
        05T10:20 B1 bin  bone     60
        05T10:30 B1 bin  fat      34
        """);
  }

  /** A correction by Eve. */
  public Scene correct(String scale, String ticket, String field, String value, String on) {
    return add(
        "corrections.csv",
        String.join(",", scale, ticket, "", field, value, "Eve", moment(on), "looked it up"));
  }

  /** A release by Eve. */
  public Scene release(String body, String action, String on) {
    return add("releases.csv", String.join(",", body, "Eve", moment(on), "asked", action));
  }

  /** The first night of a new output folder. */
  public Found at(String asOf) {
    return night("night" + ++runs, asOf);
  }

  /** One night of many over the same output folder. */
  public Found nextNight(String asOf) {
    return night("reports", asOf);
  }

  /** The figures of a night, without files. */
  public Night reckon(String asOf) {
    try {
      var inputs = read();
      var when = AsOf.read(moment(asOf), inputs.shop().settings().zone());
      return new Reckoner(inputs.shop(), inputs.exports()).at(when);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  private Found night(String out, String asOf) {
    try {
      var inputs = read();
      var when = AsOf.read(moment(asOf), inputs.shop().settings().zone());
      var root = folder.resolve(out);
      var outcome =
          new NightlyRun(inputs, new PlainDocuments(), new HastyDisk(), Progress.NONE)
              .run(root, when, List.of());
      if (outcome instanceof NightOutcome.Done done) {
        return new Found(root, done.exitCode());
      }
      throw new AssertionError(outcome);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  /** The shop folder as the program reads it. */
  public Inputs read() throws RefusedException {
    var shop = folder.resolve("shop");
    var lines = new StringBuilder();
    settings.forEach((key, value) -> lines.append(key).append('=').append(value).append('\n'));
    write(shop.resolve("shop.properties"), lines);
    files.forEach((path, text) -> write(shop.resolve(path), text));
    var codes = new StringBuilder(files.get("codes.csv"));
    weighings.codes().forEach(code -> codes.append(code).append('\n'));
    write(shop.resolve("codes.csv"), codes);
    return Inputs.read(shop, Progress.NONE);
  }

  private static void write(Path file, CharSequence text) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
