package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;

/** Mistypes a cell, a row or the name of a column in one of the shop's own tables. */
final class Typist {
  private static final List<String> PLACES =
      List.of(
          "customers",
          "bodies",
          "shares",
          "charges",
          "payments",
          "corrections",
          "codes",
          "column",
          "charges",
          "payments",
          "corrections",
          "column",
          "batches");

  private final Dice dice;
  private final String place;

  /** Which table is mistyped, if any, goes round with the seed. */
  Typist(ShopPlan plan, long seed) {
    dice = plan.dice;
    int at = (int) (seed % 20);
    place = at < PLACES.size() ? PLACES.get(at) : "";
  }

  /** The text of a table as it is typed, with commas. */
  String type(String table, String csv) {
    if (place.equals("column")) {
      return column(table, csv);
    }
    if (!place.equals(table)) {
      return csv;
    }
    var lines = new ArrayList<>(csv.lines().toList());
    if (lines.size() == 1) {
      lines.add(spare(table));
    }
    int at = dice.between(1, lines.size() - 1);
    var cells = new ArrayList<>(List.of(lines.get(at).split(",", -1)));
    damage(table, List.of(lines.get(0).split(",")), cells);
    lines.set(at, String.join(",", cells));
    return String.join("\n", lines) + "\n";
  }

  private String spare(String table) {
    return switch (table) {
      case "shares" -> "B101,C1,1";
      case "charges" -> "K9,Kill,head,95,,,,,,,,,,,";
      case "payments" -> "C1,,2026-01-05,10,";
      case "batches" -> "S9,Sausages,,,,,";
      default -> "pack,2,,net,1.5,AB,2026-01-05,mistake";
    };
  }

  private void damage(String table, List<String> header, List<String> cells) {
    var damage =
        switch (table) {
          case "customers" -> "name=";
          case "bodies" ->
              dice.pick(
                  List.of(
                      "killed=2026-06-31",
                      "live_weight=48O",
                      "outcome=hole",
                      "species=beaf",
                      "head=l"));
          case "shares" -> dice.pick(List.of("share=1/x", "share=half", "customer="));
          case "charges" ->
              dice.pick(
                  List.of(
                      "price=1.5O",
                      "basis=hott",
                      "description=",
                      "tax_percent=1O",
                      "extra=x",
                      "item=ramp",
                      "from=31.06.2026",
                      "species=beaf",
                      "minimum=l"));
          case "payments" ->
              dice.pick(List.of("amount=5O", "amount=5.1234", "date=2026-06-31", "extra=7"));
          case "batches" ->
              dice.pick(List.of("made=2026-06-31", "gain=yse", "due=2O26", "batch=", "extra=x"));
          case "corrections" ->
              dice.pick(List.of("on=2026-06-31", "field=nett", "reason=", "by=", "extra=x"));
          default -> dice.pick(List.of("step=pakc", "step=", "tare=0.O12", "tare_each=yse"));
        };
    var parts = damage.split("=", -1);
    int at = header.indexOf(parts[0]);
    if (at < 0) {
      cells.add(parts[1]);
    } else {
      cells.set(at, parts[1]);
    }
  }

  private String column(String table, String csv) {
    return switch (table) {
      case "charges" ->
          csv.replaceFirst(
              "tax_percent",
              dice.pick(List.of("tax_percnet", "tax percent", "Tax-Percent", "taxpercents")));
      case "bodies" ->
          csv.replaceFirst(
              "live_weight", dice.pick(List.of("live_wieght", "Live Weight", "LIVEWEIGHT")));
      case "payments" ->
          csv.replaceFirst("note", dice.pick(List.of("nota", "zebra", "remark", "date")));
      default -> csv;
    };
  }

  /** Whether the shop's own cuts have a kind that is none. */
  static String cuts(String csv, Dice dice) {
    return dice.chance(25) ? csv.replaceFirst(",meat,", ",maet,") : csv;
  }
}
