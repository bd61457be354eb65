package gambrel.oracle;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Small made-up shops, each wholly decided by its seed, that use most of what a shop folder can
 * say.
 *
 * <p>They keep clear of what the contract leaves open: weighings in the repeated hour, a side and
 * the other side's quarters without a hand, rail weights of anything but carcase, sides and
 * quarters.
 */
public final class RandomShop {
  private final long seed;
  private final Dice dice;
  private final TreeSource trees;
  private final ShopPlan plan;
  private final Weigher weigher;
  private final PaperMaker papers;
  private final Typist typist;
  private final List<String> ids = new ArrayList<>();
  private final TreeMap<String, String> files = new TreeMap<>();

  /** Between the two weighings of one ticket, or null. */
  private LocalDateTime conflict;

  private RandomShop(Path folder, long seed, Function<Path, TreeSource> trees) throws IOException {
    this.seed = seed;
    dice = new Dice(seed);
    plan = new ShopPlan(dice, seed);
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("shop.properties"), plan.properties());
    if (plan.ownCuts) {
      Files.writeString(folder.resolve("cuts.csv"), Typist.cuts(plan.cuts(), dice));
    }
    this.trees = trees.apply(folder);
    weigher = new Weigher(plan);
    papers = new PaperMaker(plan);
    typist = new Typist(plan, seed);
  }

  /**
   * Writes a shop into an empty folder.
   *
   * @param trees gives the trees of a folder that has its {@code shop.properties} and {@code
   *     cuts.csv}; the shop's items are picked from them
   * @return moments worth a run, the last one when all is over
   */
  public static List<OffsetDateTime> write(Path folder, long seed, Function<Path, TreeSource> trees)
      throws IOException {
    var shop = new RandomShop(folder, seed, trees);
    shop.make();
    for (var file : shop.files.entrySet()) {
      var path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
    var moments = shop.moments();
    var releases = shop.releases(folder, moments);
    Files.writeString(folder.resolve("releases.csv"), releases);
    return moments;
  }

  private void make() {
    var batches = new BatchMaker(weigher);
    var bodies = new ArrayList<BodyMaker>();
    for (int i = plan.bodies; i > 0; i--) {
      var id = dice.chance(3) ? "@" + i : dice.pick(List.of("B", "B", "b-")) + (100 + i);
      ids.add(id);
      bodies.add(new BodyMaker(weigher, trees, id, batches.bySpecies));
    }
    bodies.forEach(BodyMaker::run);
    bodies.forEach(papers::add);
    batches.finish(ids);
    tests();
    if (weigher.lines.isEmpty()) {
      weigher.goTo(plan.firstDay, 9);
      weigher.test(plan.railScale, plan.weight(new BigDecimal(20)), true);
    }
    exports();
    papers.charge(ids);
    if (plan.bills.chance(70)) {
      papers.bill(ids, plan.bills);
    }
    files.put("batches.csv", table("batches", batches.csv));
    folder();
  }

  private void tests() {
    var twenty = new BigDecimal(20);
    for (var scale : plan.scales()) {
      for (int i = dice.between(0, 4); i > 0; i--) {
        weigher.goTo(plan.firstDay.plusDays(dice.between(0, 14)), dice.between(6, 17));
        weigher.test(scale, twenty, dice.chance(scale.equals(plan.wrapScale) ? 70 : 94));
      }
    }
  }

  private void exports() {
    var lines = weigher.lines;
    var spoiler = new Spoiler(plan, lines, ids);
    spoiler.spoilDay();
    var book = new ExportBook(dice);
    book.number(lines);
    lines.addAll(spoiler.voids());
    if (dice.chance(20)) {
      conflict = spoiler.weighAgainLater();
    }
    book.spread(lines);
    var corrector = new Corrector(plan, book);
    corrector.correct(ids);
    book.files.forEach((file, of) -> files.put(file, ExportBook.csv(of, dice)));
    if (seed % 20 == 13 || seed % 20 == 18) {
      var last = files.lastKey();
      var text = files.get(last);
      int end = text.lastIndexOf('\n', text.length() - 2);
      files.put(last, text.substring(0, dice.between(end + 2, text.length() - 1)));
    }
    if (dice.chance(25)) {
      new WrapMaker(plan, weigher.codes).make(ids, files);
    }
    files.put("bench.csv", table("bench", spoiler.bench));
    files.put("corrections.csv", table("corrections", corrector.csv));
  }

  private void folder() {
    var customers = new StringBuilder("customer,name\n");
    plan.customers.forEach(c -> customers.append(c).append(",Farmer ").append(c).append('\n'));
    files.put("customers.csv", table("customers", customers));
    files.put("bodies.csv", table("bodies", papers.bodies));
    files.put("shares.csv", table("shares", papers.shares));
    files.put("charges.csv", table("charges", papers.charges));
    files.put("payments.csv", table("payments", papers.payments));
    files.put("codes.csv", table("codes", new StringBuilder(weigher.codes.csv())));
    var scales = new StringBuilder("scale,where,layout,unit,division,capacity,class\n");
    plan.scales().forEach(scale -> scales.append(scale.csv()).append('\n'));
    files.put("scales.csv", table("scales", scales));
  }

  /** Now and then with semicolons and a byte order mark, as spreadsheets leave files. */
  private String table(String name, StringBuilder csv) {
    var text = typist.type(name, csv.toString());
    text = dice.chance(8) ? text.replace(',', ';') : text;
    return dice.chance(5) ? "\uFEFF" + text : text;
  }

  private List<OffsetDateTime> moments() {
    var moments = new ArrayList<OffsetDateTime>();
    var last = weigher.lines.stream().map(l -> l.time).max(LocalDateTime::compareTo).orElseThrow();
    int days = (int) ChronoUnit.DAYS.between(plan.firstDay, last.toLocalDate());
    if (conflict != null) {
      moments.add(at(conflict));
    }
    while (moments.size() < 3) {
      LocalDate day = plan.firstDay.plusDays(dice.between(1, days + 3));
      moments.add(at(day.atTime(dice.between(5, 23), dice.between(0, 59))));
    }
    moments.sort(OffsetDateTime::compareTo);
    moments.add(at(last.plusDays(dice.between(1, 20)).plusHours(3)));
    return moments;
  }

  private OffsetDateTime at(LocalDateTime time) {
    return time.atZone(ZoneId.of(plan.zone)).toOffsetDateTime();
  }

  /** Releases some of what is held at one of the moments and closes some of what is open. */
  private String releases(Path folder, List<OffsetDateTime> moments) {
    var csv = new StringBuilder("body,by,on,reason,action\n");
    var on = moments.get(dice.between(1, 3));
    for (var row : Oracle.compute(folder, on, trees).table("bodies.csv")) {
      var id = row.get(0).replaceFirst("^'", "");
      var action = row.get(4).equals("held") ? "release" : row.get(4).equals("open") ? "close" : "";
      if (!action.isEmpty() && dice.chance(30)) {
        var local = on.toLocalDateTime().truncatedTo(ChronoUnit.SECONDS);
        csv.append(String.join(",", id, "AB", Spoiler.iso(local), "known", action)).append('\n');
      }
    }
    return csv.toString();
  }

  /** Writes one shop and prints its tables: {@code FOLDER SEED}. */
  public static void main(String[] args) throws IOException {
    var folder = Path.of(args[0]);
    var moments = write(folder, Long.parseLong(args[1]), CsvTrees::of);
    var tables = Oracle.compute(folder, moments.get(3), CsvTrees.of(folder));
    System.out.println("as of " + moments.get(3));
    tables
        .tables()
        .forEach(
            (file, rows) -> {
              System.out.println("\n" + file);
              rows.forEach(row -> System.out.println(String.join(",", row)));
            });
  }
}
