package gambrel.files.folder;

import gambrel.trade.cuts.Region;
import gambrel.trade.rows.PastedRow;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the folder of a new shop: comments, and no bodies, scales or codes yet. */
public final class NewShop {
  private static final List<String> FILES =
      List.of(
          "bodies",
          "customers",
          "shares",
          "scales",
          "charges",
          "batches",
          "bench",
          "corrections",
          "cuts");

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
   * @param machine the machine's time zone, by which currency and unit are chosen, and the region
   *     if none is given
   * @param given the region whose cuts and names of cuts are offered
   * @return the region
   */
  public static Region write(Path folder, ZoneId machine, Optional<Region> given)
      throws IOException {
    Files.createDirectories(folder.resolve("exports"));
    Files.createDirectories(folder.resolve("layouts"));
    var places = text("places.txt").lines().filter(line -> isOf(line, given)).toList();
    String place = place(places, machine.getId());
    write(
        folder,
        "shop.properties",
        text("shop.properties")
            .replace("{money}", of("currency", places))
            .replace("{towns}", of("zone", places))
            .replace("{place}", place.replace(' ', '\n')));
    for (String file : FILES) {
      write(folder, file + ".csv", text(file + ".csv"));
    }
    var region =
        Region.valueOf(place.substring(place.lastIndexOf('=') + 1).toUpperCase(Locale.ROOT));
    write(folder, "codes.csv", codes(region));
    return region;
  }

  /**
   * What to do next in a new shop, step by step. The word SHOP is to be replaced by its folder, and
   * COMMAND by how the program is called.
   */
  public static String steps() {
    return text("steps.txt");
  }

  /** What places have for a setting. */
  private static String of(String setting, List<String> places) {
    return places.stream()
        .map(place -> place.replaceFirst(".*\\b" + setting + "=(\\S+).*", "$1"))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static boolean isOf(String place, Optional<Region> region) {
    return region.isEmpty() || place.endsWith("=" + region.get().id());
  }

  /**
   * Money, unit, zone and region: those of the machine's zone, else of the last place of its
   * continent, else of the first place.
   */
  private static String place(List<String> places, String machine) {
    String continent = machine.replaceFirst("/.*", "/").replace("US/", "America/");
    return Stream.of(continent, machine + ' ')
        .flatMap(zone -> places.stream().filter(place -> place.contains("zone=" + zone)))
        .reduce((wider, nearer) -> nearer)
        .map(place -> place.replaceFirst("zone=\\S+", "zone=" + machine))
        .orElse(places.get(0));
  }

  /**
   * The codes to choose from, each as a comment and with its name in the region. A code that has
   * regions in its last cell is offered only there.
   */
  private static String codes(Region region) {
    var trees = BuiltInTables.cuts(region).all();
    return text("codes.csv")
        .lines()
        .flatMap(
            line -> {
              var cells = line.split(",");
              var item =
                  trees.stream()
                      .filter(tree -> cells.length > 2)
                      .flatMap(tree -> tree.find(cells[1]).stream())
                      .findFirst();
              boolean offered = cells.length < 4 || cells[3].contains(region.id());
              return item.isEmpty()
                  ? Stream.of(line)
                  : Stream.of(PastedRow.of(cells[0], cells[1], cells[2], item.get().name()))
                      .filter(code -> offered);
            })
        .collect(Collectors.joining("\n", "", "\n"));
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
