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
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Reads a shop folder, all but its exports. */
public final class ShopReader {
  private ShopReader() {}

  /**
   * Reads the folder {@code path}. A row that cannot be read draws a notice and is among what the
   * shop has {@linkplain Shop#unread}.
   *
   * @param notices receives a notice for each row that is left out or taken with a remark
   * @throws UnreadableShop if the folder, {@code shop.properties}, {@code bodies.csv} or a required
   *     setting is missing or cannot be read
   */
  public static Shop read(Path path, List<Notice> notices) {
    if (!Files.isDirectory(path)) {
      throw new UnreadableShop("the shop folder is missing");
    }
    var file = new SettingsFile(path, SettingsFile.SHOP, UnaryOperator.identity(), notices);
    var settings = SettingsReader.read(file);
    var folder =
        new ShopFolder(path, SettingsReader.cells(file, settings), notices, new ArrayList<>());
    var cuts = CutTables.cuts(folder, BuiltInTables.cuts(settings.region()));
    var customers = OfficeTables.customers(folder);
    var owners = new HashSet<>(customers.keySet());
    owners.add(Customer.SHOP);
    var ownerIds = new IdIndex(owners);
    var bodies = FloorTables.shares(folder, FloorTables.bodies(folder, ownerIds), ownerIds);
    var scales = FloorTables.scales(folder, settings.unit());
    var known = Known.of(cuts, ownerIds, bodies.values(), scales.keySet(), settings.region());
    return new Shop(
        settings,
        cuts,
        BuiltInTables.ranges(),
        BuiltInTables.foods(settings.region()),
        new TreeMap<>(customers),
        bodies,
        CutTables.codes(folder, known),
        scales,
        FloorTables.bench(folder, known),
        OfficeTables.charges(folder, known),
        OfficeTables.values(folder, known),
        FloorTables.batches(folder),
        OfficeTables.payments(folder, known),
        OfficeTables.corrections(folder, known),
        OfficeTables.releases(folder, known),
        known.unread(folder));
  }
}
