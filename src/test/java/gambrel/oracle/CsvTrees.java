package gambrel.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;

/**
 * Cut trees read straight from CSV: {@code SPECIES.csv} as the program ships them, in a region's
 * form, and a shop's own cuts laid over them.
 */
public final class CsvTrees implements TreeSource {
  private static final List<String> SPECIES =
      List.of("beef", "veal", "lamb", "pork", "goat", "game");

  private static final Set<String> KINDS =
      Set.of("carcase", "piece", "meat", "trim", "bone", "fat", "waste", "offal", "added");

  private final Map<String, List<Node>> trees = new HashMap<>();
  private final Map<String, Set<String>> minced = new HashMap<>();

  private CsvTrees() {}

  /** The folder of the trees that the program ships. */
  public static Path builtIn() {
    try {
      return Path.of(CsvTrees.class.getResource("/gambrel/cuts/beef.csv").toURI()).getParent();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * The built-in trees with the shop's {@code cuts.csv}.
   *
   * @param shop a shop folder
   */
  public static CsvTrees of(Path shop) {
    var settings = new Properties();
    try (var reader = Files.newBufferedReader(shop.resolve("shop.properties"))) {
      settings.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var region = settings.getProperty("region", "au").trim();
    return of(region, Csv.read(shop.resolve("cuts.csv")));
  }

  private static CsvTrees of(String region, List<Csv.Line> extra) {
    var trees = new CsvTrees();
    for (var species : SPECIES) {
      var nodes = new ArrayList<Node>();
      for (var line : Csv.read(builtIn().resolve(species + ".csv"))) {
        var regional = line.get("parent_" + region);
        nodes.add(node(line, regional.isEmpty() ? line.get("parent") : regional));
      }
      for (var line : extra) {
        if (line.get("species").equals(species) && !KINDS.contains(line.get("kind"))) {
          nodes.removeIf(node -> node.item().equals(line.get("item"))); // it cannot be read
        } else if (line.get("species").equals(species)) {
          lay(nodes, node(line, line.get("parent")));
        }
      }
      trees.trees.put(species, inOrder(nodes, ""));
      trees.minced.put(species, minced(species, trees.trees.get(species)));
    }
    return trees;
  }

  /** An item that its row says nothing of is what the item above it is; parents come first. */
  private static Set<String> minced(String species, List<Node> nodes) {
    var said = new HashMap<String, String>();
    Csv.read(builtIn().resolve(species + ".csv"))
        .forEach(line -> said.put(line.get("item"), line.get("minced")));
    var minced = new HashSet<String>();
    for (var node : nodes) {
      var own = said.getOrDefault(node.item(), "");
      if (own.isEmpty() ? minced.contains(node.parent()) : own.equals("yes")) {
        minced.add(node.item());
      }
    }
    return minced;
  }

  private static Node node(Csv.Line line, String parent) {
    var count = line.get("count");
    return new Node(
        line.get("item"), parent, line.get("kind"), count.isEmpty() ? 1 : Integer.parseInt(count));
  }

  /** A replaced item keeps its place unless its parent changes; a new one comes last. */
  private static void lay(List<Node> nodes, Node own) {
    for (int i = 0; i < nodes.size(); i++) {
      if (nodes.get(i).item().equals(own.item())) {
        if (nodes.get(i).parent().equals(own.parent())) {
          nodes.set(i, own);
          return;
        }
        nodes.remove(i);
        break;
      }
    }
    nodes.add(own);
  }

  private static List<Node> inOrder(List<Node> nodes, String parent) {
    var ordered = new ArrayList<Node>();
    for (var node : nodes) {
      if (node.parent().equals(parent)) {
        ordered.add(node);
        ordered.addAll(inOrder(nodes, node.item()));
      }
    }
    return ordered;
  }

  @Override
  public List<String> species() {
    return SPECIES;
  }

  @Override
  public List<Node> items(String species) {
    return trees.getOrDefault(species, List.of());
  }

  @Override
  public Set<String> minced(String species) {
    return minced.getOrDefault(species, Set.of());
  }
}
