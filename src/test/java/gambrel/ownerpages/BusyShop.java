package gambrel.ownerpages;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;

/** A made-up shop that kills and cuts many bodies in June 2026, the same for the same seed. */
final class BusyShop {
  private static final String[] SPECIES = {"beef", "beef", "lamb", "pork"};
  private static final int[] HOT = {560, 520, 45, 150};
  private static final String[] OWNERS = {"c-ann", "c-bob", "", "c-trust"};

  private final Random dice;
  private final SmallShop shop;

  BusyShop(Path folder, long seed) {
    this.dice = new Random(seed);
    this.shop = new SmallShop(folder);
    shop.add("customers.csv", "c-trust,Trustees of the Estate of W. Featherstone-Ravenscroft");
  }

  /** Writes so many bodies; every 23rd loses too much. */
  SmallShop with(int bodies) {
    for (int i = 0; i < bodies; i++) {
      body(i, LocalDate.of(2026, 6, 1).plusDays(i * 20L / bodies));
    }
    return shop;
  }

  private void body(int number, LocalDate killed) {
    String body = String.format(Locale.ROOT, "K%04d", number);
    int kind = dice.nextInt(SPECIES.length);
    String species = SPECIES[kind];
    long hot = HOT[kind] * 10L + dice.nextInt(HOT[kind]);
    long cold = hot * (9780 + dice.nextInt(80)) / 10000;
    shop.add(
        "bodies.csv",
        String.join(
            ",",
            body,
            species,
            killed.toString(),
            "" + hot * 18 / 100,
            "",
            OWNERS[dice.nextInt(OWNERS.length)]));
    shop.hung(body, killed.toString(), tenths(hot), tenths(cold));
    long mince = cold * 72 / 100;
    long lost = number % 23 == 22 ? cold * 8 / 100 : cold / 100;
    shop.cut(body, killed.plusDays(5).toString(), tenths(mince), tenths(cold - mince - lost));
  }

  private static String tenths(long tenths) {
    return tenths / 10 + "." + tenths % 10;
  }
}
