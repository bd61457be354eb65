package gambrel.pages.owner;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A made-up shop that kills and cuts for itself and for customers from December 2025 to December
 * 2026, the same for the same seed: beef, lamb and pork, three boners, three suppliers, own values
 * and charges. From 10 December 2026 on its chiller takes 1.2 % more, and one boner leaves more on
 * the bone. It has two chillers.
 */
final class BusyShop {
  static final String MONTH = "2026-12";

  /** When the statements of the year are out, and those of December not all. */
  static final String EARLIER = "2026-12-01T02:00:00Z";

  static final String LATER = "2027-02-02T02:00:00Z";

  private static final int MOST_BEFORE = 40;
  private static final LocalDate FIRST = LocalDate.of(2025, 12, 1);

  private final SmallShop shop;
  private final BusyBench bench;
  private int bodies;

  /**
   * A shop in a folder.
   *
   * @param american in pounds, dollars and American words, on letter paper
   */
  BusyShop(Path folder, long seed, boolean american) {
    this.shop = new SmallShop(folder);
    this.bench = new BusyBench(shop, new SplittableRandom(seed), american);
    if (american) {
      shop.instead(
          "shop.properties",
          "name=Fold End Boning Room\ncurrency=USD\nlocale=en-US\nunit=lb\nzone=UTC\npaper=letter");
    }
    shop.add("shop.properties", "limit.revisions=500\nallow_mixed_batches=yes");
    shop.add("customers.csv", "c-trust,Trustees of the Estate of W. Featherstone-Ravenscroft");
    shop.instead(
        "bodies.csv",
        "body,species,class,killed,live_weight,fat_mm,customer,supplier,cost,chiller");
    shop.add("scales.csv", "bench1,0.02\nbench2,0.02\nbench3,0.02");
    shop.add(
        "bench.csv",
        """
        scale,from,to,body,batch,customer,boner
        bench1,2025-01-01T00:00,2028-01-01T00:00,,,,Wyn
        bench2,2025-01-01T00:00,2028-01-01T00:00,,,,Dario
        bench3,2025-01-01T00:00,2028-01-01T00:00,,,,Noor""");
    shop.instead(
        "charges.csv",
        """
        charge,description,basis,price,species
        kill,Slaughter,head,60,
        cut,Cutting and packing,cold,1.10,
        hang,Hanging,day,2,beef""");
    shop.add("codes.csv", codes());
    shop.add("values.csv", BusyCuts.values(american));
  }

  /** A further line of shop.properties. */
  void set(String setting) {
    shop.add("shop.properties", setting);
  }

  private static String codes() {
    return Stream.concat(
            BusyCuts.packed().map(item -> item + "," + item + ",pack"),
            Stream.of("hindquarter", "forequarter").map(item -> item + "," + item + ",block"))
        .collect(Collectors.joining("\n"));
  }

  /** Writes so many bodies killed in December 2026, and as many in each month before, up to 40. */
  SmallShop with(int number) {
    for (int month = 0; month <= 12; month++) {
      int those = month == 12 ? number : Math.min(number, MOST_BEFORE);
      for (int i = 0; i < those; i++) {
        bench.body(bodies++, FIRST.plusMonths(month).plusDays(i * 20L / those));
      }
    }
    bench.finish();
    return shop;
  }
}
