package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The columns that the contract gives the shop's tables, and what kind of cell stands in them. */
final class Columns {
  /**
   * Columns by table: {@code *} marks a required one; behind a colon its kind, text without one.
   */
  private static final Map<String, String> TABLES =
      Map.of(
          "customers", "customer* name* address email language delivery:email|print",
          "bodies",
              "body* species*:species class killed:date live_weight:number live_guessed:yes|no"
                  + " age_months:number fat_mm:number customer head:number tags mark"
                  + " outcome:whole|condemned|cancelled chiller cut_by:date supplier cost:amount"
                  + " note",
          "shares", "body* customer* share*:share",
          "charges",
              "charge* description* basis*:"
                  + "head|live|hot|cold|boning|tub|packed|pack|day|share"
                  + " price*:number minimum:number free:number species:species class item:item body"
                  + " hot_from:number hot_to:number tax_percent:number from:date to:date",
          "payments", "customer* body date*:date amount*:amount note",
          "batches", "batch* product made:date gain:yes|no due:date added note",
          "corrections", "scale* ticket* date:date field*:field value by* on*:moment reason*",
          "codes",
              "code* item step*:hot|cold|aged|block|tub|added|pack|bin|test|other description"
                  + " tare:number tare_each:yes|no nominal:number");

  private static final List<String> FIELDS =
      List.of(
          "time",
          "body",
          "code",
          "net",
          "gross",
          "tare",
          "unit",
          "pieces",
          "operator",
          "batch",
          "customer",
          "status");

  private final Setup setup;

  /** Whether a column is missing, or is perhaps a known one mistyped: nothing is issued. */
  private boolean stopped;

  Columns(Setup setup) {
    this.setup = setup;
  }

  static boolean knows(String table) {
    return TABLES.containsKey(table);
  }

  static Set<String> tables() {
    return TABLES.keySet();
  }

  boolean stopped() {
    return stopped;
  }

  /** Known names, required ones with a star. */
  private static Map<String, String> kinds(String table) {
    var kinds = new TreeMap<String, String>();
    for (var column : TABLES.get(table).split(" +")) {
      var parts = column.split(":", 2);
      kinds.put(parts[0], parts.length == 2 ? parts[1] : "");
    }
    return kinds;
  }

  private static List<String> names(String table) {
    return kinds(table).keySet().stream().map(name -> name.replace("*", "")).toList();
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
  }

  /** The known name of each column of a header; blank for one that is not read. */
  List<String> read(String table, List<String> header) {
    var found = new ArrayList<String>();
    for (var cell : header) {
      var name =
          names(table).stream().filter(n -> plain(n).equals(plain(cell))).findFirst().orElse("");
      stopped |= !name.isEmpty() && found.contains(name);
      found.add(found.contains(name) ? "" : name);
    }
    for (var name : kinds(table).keySet()) {
      stopped |= name.endsWith("*") && !found.contains(name.replace("*", ""));
    }
    var lacking = new ArrayList<>(names(table));
    lacking.removeAll(found);
    for (int i = 0; i < header.size(); i++) {
      var other = plain(header.get(i));
      stopped |= found.get(i).isEmpty() && lacking.stream().anyMatch(n -> resembles(other, n));
    }
    return found;
  }

  private static boolean resembles(String other, String name) {
    int letters = plain(name).length();
    return letters > 3 && !other.isEmpty() && edits(other, plain(name)) <= (letters < 6 ? 1 : 2);
  }

  /** Letters added, left out, changed, or two neighbours exchanged. */
  private static int edits(String a, String b) {
    var steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        int best = i == 0 ? j : j == 0 ? i : Integer.MAX_VALUE;
        if (i > 0 && j > 0) {
          int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
          best = Math.min(steps[i - 1][j - 1] + same, steps[i - 1][j] + 1);
          best = Math.min(best, steps[i][j - 1] + 1);
          boolean exchanged =
              i > 1
                  && j > 1
                  && a.charAt(i - 1) == b.charAt(j - 2)
                  && a.charAt(i - 2) == b.charAt(j - 1);
          best = exchanged ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
        }
        steps[i][j] = best;
      }
    }
    return steps[a.length()][b.length()];
  }

  /** Whether a row can be read. */
  boolean isLegible(String table, Csv.Line line) {
    return !line.tooMany()
        && kinds(table).entrySet().stream().allMatch(e -> isLegible(line, e.getKey(), e.getValue()))
        && !isTurned(line);
  }

  private boolean isLegible(Csv.Line line, String name, String kind) {
    var cell = line.get(name.replace("*", ""));
    return cell.isEmpty() ? !name.endsWith("*") : isOf(kind, cell);
  }

  /** Whether a filled cell of a column can be read. */
  boolean isLegible(String table, Csv.Line line, String column) {
    var kinds = kinds(table);
    var kind = kinds.getOrDefault(column + "*", kinds.getOrDefault(column, ""));
    return !line.get(column).isEmpty() && isOf(kind, line.get(column));
  }

  private boolean isTurned(Csv.Line line) {
    var from = line.get("from");
    var to = line.get("to");
    return !from.isEmpty() && !to.isEmpty() && setup.date(from).isAfter(setup.date(to));
  }

  private boolean isOf(String kind, String cell) {
    return switch (kind) {
      case "" -> true;
      case "number" -> Num.isNumber(cell);
      case "amount" ->
          Num.isNumber(cell) && Num.rounded(Num.of(cell), setup.minorDigits()).equals(Num.of(cell));
      case "date" -> setup.isDate(cell);
      case "moment" -> cell.contains("T") || setup.isDate(cell);
      case "share" -> Shares.isShare(cell);
      case "species" -> setup.trees.containsKey(cell);
      case "item" -> setup.trees.values().stream().anyMatch(tree -> tree.has(cell));
      case "field" -> FIELDS.contains(cell);
      default -> List.of(kind.split("\\|")).contains(cell);
    };
  }
}
