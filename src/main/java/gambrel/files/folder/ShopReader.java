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
   * shop.properties}, {@code bodies.csv} or a required setting is missing or cannot be read. A bad
   * row is left out with a notice.
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
    return new Shop(
        settings,
        cuts,
        BuiltInTables.ranges(),
        BuiltInTables.foods(),
        customers,
        bodies,
        FloorTables.codes(folder, known),
        scales,
        FloorTables.bench(folder, known),
        OfficeTables.charges(folder, known),
        OfficeTables.values(folder, known),
        FloorTables.batches(folder),
        OfficeTables.payments(folder, known),
        OfficeTables.corrections(folder, known),
        OfficeTables.releases(folder, known));
  }
}
