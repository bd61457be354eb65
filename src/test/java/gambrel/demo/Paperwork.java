package gambrel.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The lists that the office keeps about the quarter's work. */
final class Paperwork {
  private static final Map<String, String> NOTES =
      Map.ofEntries(
          Map.entry("B0702", "Cut over two days: hind on Thursday; fore on Friday."),
          Map.entry("B0707", "Hung three weeks as you asked."),
          Map.entry("B0713", "A tub of bone was tipped before it was weighed."),
          Map.entry("B0714", "Quartered on the rail."),
          Map.entry("B0715", "A bruise on the left rump was cut off on kill day."),
          Map.entry("B0716", "Rumps weighed before and after trimming."),
          Map.entry("L0405", "Taken home whole."),
          Map.entry("P0212", "Hams and bacon are still in cure."),
          Map.entry("D0051", "Brought in dressed and cold."));

  private static final Map<String, String> COSTS =
      Map.of(
          "B0704", "Merrigool Pastoral,1635.00",
          "B0712", "Merrigool Pastoral,1650.00",
          "B0718", "J. & P. Stroud,1477.00",
          "B0723", "Merrigool Pastoral,1540.00",
          "L0410", "Tolley Downs,178.00",
          "P0206", "Dry Tom Piggery,325.00");

  /** The days that owners asked for. */
  private static final Map<String, String> CUT_BY =
      Map.of(
          "B0702", "2026-07-17",
          "B0707", "2026-08-12",
          "B0719", "2026-09-04",
          "B0730", "2026-10-12");

  private final List<Beast> beasts;

  Paperwork(List<Beast> beasts) {
    this.beasts = beasts;
  }

  /** {@code bodies.csv}. */
  String bodies() {
    var lines = new TreeMap<String, String>();
    beasts.forEach(beast -> lines.put(beast.id(), line(beast)));
    lines.put(
        "B0731",
        "B0731,beef,steer,,,,21,,ashdown,1,,Blue 0423,cancelled,,,,,Kept back for another season.");
    lines.put(
        BoughtIn.BODY,
        BoughtIn.BODY + ",veal,vealer,2026-08-31,,,9,,shop,1,,,,,,Merrigool Pastoral,212.00,");
    return "body,species,class,killed,live_weight,live_guessed,age_months,fat_mm,customer,head,"
        + "tags,mark,outcome,chiller,cut_by,supplier,cost,note\n"
        + String.join("\n", lines.values())
        + "\n";
  }

  private static String line(Beast beast) {
    return String.join(
        ",",
        beast.id(),
        beast.species(),
        beast.category(),
        beast.killed().toString(),
        beast.dressing() == 0 ? "" : kilograms(beast.live()),
        beast.is("guess") ? "yes" : "",
        beast.age(),
        beast.fat(),
        beast.owner(),
        Integer.toString(beast.head()),
        beast.tags(),
        beast.mark(),
        beast.style().equals("whole") ? "whole" : "",
        chiller(beast),
        CUT_BY.getOrDefault(beast.id(), ""),
        COSTS.getOrDefault(beast.id(), ","),
        NOTES.getOrDefault(beast.id(), ""));
  }

  /** Cattle hang in two chillers, in turn as they were numbered; all others in a third. */
  private static String chiller(Beast beast) {
    if (!beast.species().equals("beef")) {
      return "small stock";
    }
    return Integer.parseInt(beast.number()) % 2 == 0 ? "north" : "south";
  }

  private static String kilograms(long grams) {
    return grams / 1000 + (grams % 1000 == 0 ? "" : "." + grams % 1000 / 100);
  }

  /** {@code corrections.csv}, once the tickets are numbered. */
  static String corrections(Floor floor, Map<String, List<Row>> remembered) {
    var lines = new ArrayList<>(List.of("scale,ticket,date,field,value,by,on,reason"));
    var before = remembered.get("wrongbody");
    lines.add(
        line(
            before.get(0).ticket + "-" + before.get(before.size() - 1).ticket,
            before.get(0),
            "body,B0703,Hetty,2026-07-09T07:15,first packs keyed on another number"));
    var stuck = remembered.get("conflictB0709").get(1);
    lines.add(
        line(
            floor.bench1.place(stuck),
            stuck,
            "status,void,Hetty,2026-07-30T07:05,ticket printed twice; the tray was on the pan"));
    var garbled = remembered.get("rightL0406");
    lines.add(
        line(
            garbled.get(1).ticket,
            garbled.get(1),
            "net," + garbled.get(0).net + ",Hetty,2026-08-17T07:20,letter O read from the label"));
    return String.join("\n", lines) + "\n";
  }

  private static String line(String ticket, Row row, String change) {
    return "bench1," + ticket + "," + row.time.toLocalDate() + "," + change;
  }

  /** {@code bench.csv}: who boned each day, and whose body was on the bench without its tag. */
  static String bench(Floor floor, Map<String, List<Row>> remembered) {
    var lines = new ArrayList<>(List.of("scale,from,to,body,batch,customer,boner"));
    for (var day : Blocks.days(floor.rail)) {
      lines.add("rail," + day + "T06:30," + day + "T16:00,,,," + Roster.boner(day));
    }
    for (String scale : List.of("bench1", "bench2")) {
      var rows = remembered.get(scale);
      lines.add(
          String.join(
              ",",
              scale,
              rows.get(0).cell("time"),
              rows.get(rows.size() - 1).cell("time"),
              "L0408",
              "",
              "",
              "Wyn"));
    }
    return String.join("\n", lines) + "\n";
  }
}
