package gambrel.damage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The columns of a file of the shop folder, or the keys of {@code shop.properties}, as the contract
 * lists them.
 *
 * @param kinds what each column holds, by name
 * @param needed the columns that a file may not lack
 * @param filled the columns whose cells may not be blank
 */
record ShopColumns(Map<String, CellKind> kinds, List<String> needed, List<String> filled) {
  private static final Map<String, ShopColumns> FILES =
      Map.ofEntries(
          file(
              "customers.csv",
              "*customer KEY,*name TEXT,address TEXT,email TEXT,language LANGUAGE,delivery"
                  + " DELIVERY"),
          file(
              "bodies.csv",
              "*body KEY,*species SPECIES,class TEXT,killed DATE,live_weight NUMBER,live_guessed"
                  + " YES_NO,age_months COUNT,fat_mm NUMBER,customer CUSTOMER,head COUNT,tags"
                  + " TAGS,mark TEXT,outcome OUTCOME,chiller TEXT,cut_by DATE,supplier TEXT,cost"
                  + " AMOUNT,note TEXT"),
          file("shares.csv", "*body BODY,*customer CUSTOMER,*share SHARE"),
          file(
              "codes.csv",
              "*code KEY,item ITEM,*step STEP,description TEXT,tare NUMBER,tare_each YES_NO,nominal"
                  + " NUMBER"),
          file(
              "cuts.csv",
              "*species SPECIES,*item KEY,*parent ITEM,*name TEXT,*kind PART,count COUNT,unece"
                  + " TEXT"),
          file(
              "scales.csv",
              "*scale KEY,where TEXT,layout TEXT,unit UNIT,*division POSITIVE,capacity"
                  + " NUMBER,class SCALE_CLASS"),
          file(
              "bench.csv",
              "*scale SCALE,*from MOMENT,*to MOMENT,body BODY,batch BATCH,customer CUSTOMER,boner"
                  + " TEXT"),
          file(
              "charges.csv",
              "*charge KEY,*description TEXT,*basis BASIS,*price PRICE,minimum NUMBER,free"
                  + " NUMBER,species SPECIES,class TEXT,item ITEM,body BODY,hot_from NUMBER,hot_to"
                  + " NUMBER,tax_percent NUMBER,from DATE,to DATE"),
          file("values.csv", "*item ITEM,*value PRICE,from DATE,to DATE"),
          file(
              "batches.csv",
              "*batch KEY,product TEXT,made DATE,gain YES_NO,due DATE,added TEXT,note TEXT"),
          file("payments.csv", "*customer CUSTOMER,body BODY,*date DATE,*amount AMOUNT,note TEXT"),
          file(
              "corrections.csv",
              "*scale SCALE,*ticket TICKETS,date DATE,*field FIELD,value CORRECTED,*by TEXT,*on"
                  + " MOMENT,*reason TEXT"),
          file("releases.csv", "*body BODY,*by TEXT,*on MOMENT,*reason TEXT,action ACTION"),
          file(
              "exports",
              "scale SCALE,ticket TEXT,*time TIME,+body BODY,*code CODE,net NUMBER,gross"
                  + " NUMBER,tare NUMBER,unit UNIT,pieces COUNT,operator TEXT,batch BATCH,customer"
                  + " CUSTOMER,status STATUS"),
          file(
              "shop.properties",
              "*name TEXT,address TEXT,contact TEXT,*currency CURRENCY,locale LANGUAGE,language"
                  + " LANGUAGE,region REGION,*unit SHOP_UNIT,*zone ZONE,paper PAPER,dates"
                  + " TEXT,tax_name TEXT,tax_included YES_NO,templates TEXT,rail RAIL,rail.beef"
                  + " RAIL,rail.veal RAIL,rail.lamb RAIL,rail.pork RAIL,rail.goat RAIL,rail.game"
                  + " RAIL,tax_number TEXT,tax_number_name TEXT,number_from COUNT,pay_by_days"
                  + " COUNT,pay_to TEXT,year_review TEXT,bins BINS,quiet_hours NUMBER,cutting_days"
                  + " NUMBER,allow_mixed_batches YES_NO,limit.cutting_loss_pct"
                  + " NUMBER,limit.hanging_pct_per_day NUMBER,limit.batch_loss_pct"
                  + " NUMBER,limit.days_hung NUMBER,limit.revisions NUMBER,limit.print"
                  + " NUMBER,print_both_sides YES_NO,print_cover YES_NO"));

  private static Map.Entry<String, ShopColumns> file(String name, String columns) {
    var kinds = new LinkedHashMap<String, CellKind>();
    var needed = new ArrayList<String>();
    var filled = new ArrayList<String>();
    for (var column : columns.split(",")) {
      var parts = column.split(" ");
      var plain = parts[0].replaceAll("[*+]", "");
      kinds.put(plain, CellKind.valueOf(parts[1]));
      if (!plain.equals(parts[0])) {
        needed.add(plain);
      }
      if (parts[0].startsWith("*")) {
        filled.add(plain);
      }
    }
    return Map.entry(name, new ShopColumns(kinds, needed, filled));
  }

  /** The columns of a file. */
  static ShopColumns of(String file) {
    return FILES.get(file.startsWith("exports/") ? "exports" : file);
  }

  /**
   * The names of a header as the contract reads them.
   *
   * @param places where each known column stands
   * @param stops why nothing is issued that night; empty if the header can be read
   * @param others names that are not known
   * @param otherwise names that are known but written in another way
   */
  record Reading(
      Map<String, Integer> places,
      List<String> stops,
      List<String> others,
      List<String> otherwise) {}

  /** Reads the names of a header. */
  Reading read(List<String> header) {
    var places = new LinkedHashMap<String, Integer>();
    var stops = new ArrayList<String>();
    var others = new ArrayList<String>();
    var otherwise = new ArrayList<String>();
    for (int i = 0; i < header.size(); i++) {
      var name = header.get(i);
      var known = kinds.keySet().stream().filter(k -> plain(k).equals(plain(name))).findFirst();
      if (known.isEmpty()) {
        others.add(name);
      } else if (places.putIfAbsent(known.get(), i) != null) {
        stops.add(name + " twice");
      } else if (!known.get().equals(name)) {
        otherwise.add(name);
      }
    }
    for (var other : others) {
      kinds.keySet().stream()
          .filter(known -> !places.containsKey(known) && resembles(plain(other), plain(known)))
          .forEach(known -> stops.add(other + " is like " + known));
    }
    needed.stream()
        .filter(column -> !places.containsKey(column))
        .forEach(column -> stops.add(column + " is missing"));
    if (kinds.containsKey("net") && !places.containsKey("net") && !places.containsKey("gross")) {
      stops.add("net is missing");
    }
    return new Reading(places, stops, others, otherwise);
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
  }

  private static boolean resembles(String name, String known) {
    int allowed = known.length() < 4 ? 0 : known.length() < 6 ? 1 : 2;
    return allowed > 0 && distance(name, known) <= allowed;
  }

  /** Letters added, left out, changed, or two neighbours exchanged. */
  private static int distance(String a, String b) {
    var d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + cost, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
