package gambrel.files.folder;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Region;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/** Writes the folder of a new shop: comments, and no bodies, scales or codes yet. */
public final class NewShop {
  private static final List<String> FILES =
      List.of("bodies", "customers", "shares", "scales", "charges", "bench", "corrections");

  /** The zone of a shop on a machine without one of its own. */
  private static final String USUAL_ZONE = "Australia/Sydney";

  private NewShop() {}

  /** Whether a folder does not exist or is empty. */
  public static boolean isFree(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return true;
    }
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (var children = Files.list(folder)) {
      return children.findAny().isEmpty();
    }
  }

  /**
   * Writes the folder.
   *
   * @param machine the machine's time zone, by which currency, unit and names of cuts are chosen
   */
  public static void write(Path folder, ZoneId machine) throws IOException {
    Files.createDirectories(folder.resolve("exports"));
    Files.createDirectories(folder.resolve("layouts"));
    var place = Place.of(machine.getId());
    write(folder, "shop.properties", place.fill(text("shop.properties")));
    for (String file : FILES) {
      write(folder, file + ".csv", text(file + ".csv"));
    }
    write(folder, "codes.csv", codes(place.region()));
  }

  /** Where a shop is, as far as its time zone tells. */
  private record Place(String zone, String currency, String unit, Region region) {
    private static Place of(String id) {
      if (id.matches("(America|US)/.*|Pacific/Honolulu")) {
        return new Place(id, "USD", "lb", Region.US);
      }
      if (id.equals("Europe/London")) {
        return new Place(id, "GBP", "kg", Region.UK);
      }
      if (id.startsWith("Europe/")) {
        return new Place(id, "EUR", "kg", Region.UK);
      }
      if (id.equals("Pacific/Auckland")) {
        return new Place(id, "NZD", "kg", Region.AU);
      }
      String zone = id.startsWith("Australia/") ? id : USUAL_ZONE;
      return new Place(zone, "AUD", "kg", Region.AU);
    }

    private String fill(String text) {
      return text.replace("{currency}", currency)
          .replace("{unit}", unit)
          .replace("{zone}", zone)
          .replace("{region}", region.id());
    }
  }

  /** The codes to choose from, each as a comment and with its name in the region. */
  private static String codes(Region region) {
    var trees = BuiltInTables.cuts(region).all();
    return text("codes.csv")
        .lines()
        .map(
            line -> {
              var cells = line.split(",", -1);
              String item = line.startsWith("# ") && cells.length > 2 ? cells[1] : "";
              return trees.stream()
                  .flatMap(tree -> tree.find(item).stream())
                  .findFirst()
                  .map(found -> line + ',' + quoted(found))
                  .orElse(line);
            })
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String quoted(Item item) {
    return CSVFormat.RFC4180.format(item.name());
  }

  private static String text(String name) {
    String path = "/gambrel/start/" + name;
    try (var in = NewShop.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new FileNotFoundException(path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path folder, String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }
}
