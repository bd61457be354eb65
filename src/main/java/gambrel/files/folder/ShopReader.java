package gambrel.files.folder;

import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.UnaryOperator;

/** Reads a shop folder, all but its exports. */
public final class ShopReader {
  private ShopReader() {}

  /**
   * Reads {@code folder}. The result is {@link ShopReading.Unreadable} if the folder, {@code
   * shop.properties}, {@code bodies.csv} or a required setting is missing or cannot be read. A row
   * that cannot be read draws a notice and is among what the shop has {@linkplain Shop#unread}.
   */
  public static ShopReading read(Path folder) {
    if (!Files.isDirectory(folder)) {
      return new ShopReading.Unreadable("the shop folder is missing");
    }
    var notices = new ArrayList<Notice>();
    try {
      return new ShopReading.Ok(shop(folder, notices), notices);
    } catch (UnreadableShop e) {
      return new ShopReading.Unreadable(e.getMessage());
    }
  }

  private static Shop shop(Path path, List<Notice> notices) {
    var file = new SettingsFile(path, SettingsFile.SHOP, UnaryOperator.identity(), notices);
    var read = SettingsReader.read(file);
    var settings = read.settings();
    var folder = new ShopFolder(path, read.types(), notices);
    var cuts = CutsReader.read(folder, BuiltInTables.cuts(settings.region()));
    var customers = OfficeTables.customers(folder);
    var owners = new HashSet<>(customers.keySet());
    owners.add(Customer.SHOP);
    var ownerIds = new IdIndex(owners);
    var bodies = SharesReader.apply(folder, FloorTables.bodies(folder, ownerIds), ownerIds);
    var scales = FloorTables.scales(folder, settings.unit());
    var known = Known.of(cuts, ownerIds, bodies.values(), scales.keySet());
    var codes = FloorTables.codes(folder, known);
    var bench = FloorTables.bench(folder, known);
    var charges = OfficeTables.charges(folder, known);
    var values = OfficeTables.values(folder, known);
    var batches = FloorTables.batches(folder);
    var payments = OfficeTables.payments(folder, known);
    var corrections = OfficeTables.corrections(folder, known);
    var releases = OfficeTables.releases(folder, known);
    return new Shop(
        settings,
        cuts,
        BuiltInTables.ranges(),
        BuiltInTables.foods(),
        customers,
        bodies,
        codes,
        scales,
        bench,
        charges,
        values,
        batches,
        payments,
        corrections,
        releases,
        UnreadReader.read(folder, known));
  }
}
