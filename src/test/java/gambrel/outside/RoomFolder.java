package gambrel.outside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Writes a room as a shop folder. */
final class RoomFolder {
  private RoomFolder() {}

  /** Writes all files of a room into a new folder. */
  static void write(Room room, Path folder) {
    var plan = room.plan;
    var settings = new ArrayList<String>();
    settings.addAll(
        List.of(
            "name=Outside Room",
            "currency=AUD",
            "locale=en-AU",
            "region=au",
            "unit=" + (plan.pounds() ? "lb" : "kg"),
            "zone=Australia/Brisbane",
            "rail=" + (plan.hotOnly() ? "hot" : "hot,cold"),
            "bins=weighed",
            // Without a cold weight, what a body loses in the chiller counts as bench loss.
            "limit.cutting_loss_pct=" + (plan.hotOnly() ? "6.0" : "3.0"),
            "allow_mixed_batches=yes"));
    write(folder, "shop.properties", settings);
    customers(room, folder);
    bodies(room, folder);
    codes(room, folder);
    scales(room, folder);
    batches(room, folder);
    write(folder, "charges.csv", charges());
    if (!room.bonings.isEmpty()) {
      bench(room, folder);
    }
    if (!room.values.isEmpty()) {
      write(folder, "values.csv", headed("item,value,from,to", room.values));
    }
    payments(room, folder);
    exports(room, folder);
  }

  /** Writes the payments of a room anew. */
  static void payments(Room room, Path folder) {
    write(folder, "payments.csv", headed("customer,body,date,amount", room.payments));
  }

  private static List<String> charges() {
    return List.of(
        "charge,description,basis,price",
        "kill,Slaughter,head,60.00",
        "cut,Cutting and packing,boning,1.90");
  }

  private static void customers(Room room, Path folder) {
    var names = new TreeSet<String>();
    room.carcases.stream().filter(c -> !c.isOwn()).forEach(c -> names.add(c.customer()));
    var lines = names.stream().map(name -> name + ",The " + name + " family,print").toList();
    write(folder, "customers.csv", headed("customer,name,delivery", lines));
  }

  private static void bodies(Room room, Path folder) {
    var lines =
        room.carcases.stream()
            .map(
                c ->
                    String.join(
                        ",",
                        c.id(),
                        c.species().id(),
                        c.category(),
                        c.killed().toString(),
                        weight(room.live.get(c.id())),
                        c.species() == Species.BEEF ? "20" : "",
                        c.customer(),
                        c.chiller(),
                        c.supplier(),
                        c.supplier().isEmpty() ? "" : cost(room, c)))
            .toList();
    write(
        folder,
        "bodies.csv",
        headed(
            "body,species,class,killed,live_weight,age_months,customer,chiller,supplier,cost",
            lines));
  }

  /** Bought by live weight, at a price that leaves a margin. */
  private static String cost(Room room, Carcase carcase) {
    long price = carcase.species() == Species.BEEF ? 330 : 300;
    long cents = room.live.get(carcase.id()) * price / 1_000;
    return cents / 100 + "." + String.format("%02d", cents % 100);
  }

  private static Map<String, String> codes(List<Ticket> tickets) {
    var keys = new TreeSet<String>();
    tickets.forEach(t -> keys.add(t.item + ',' + t.step));
    var codes = new TreeMap<String, String>();
    keys.forEach(key -> codes.put(key, String.valueOf(101 + codes.size())));
    return codes;
  }

  private static void codes(Room room, Path folder) {
    var lug = room.plan.scales().get("bench2").shows(room.plan.inUnit(RoomWork.LUG));
    var lines = new ArrayList<String>();
    codes(room.tickets)
        .forEach(
            (key, code) -> {
              boolean lugged = key.endsWith(",bin") || key.endsWith(",tub");
              lines.add(code + ',' + key + ',' + (lugged && room.plan.lugs() ? weight(lug) : ""));
            });
    write(folder, "codes.csv", headed("code,item,step,tare", lines));
  }

  private static void scales(Room room, Path folder) {
    var lines =
        room.plan.scales().values().stream()
            .map(
                s ->
                    String.join(
                        ",", s.id(), weight(s.division()), weight(s.capacity()), s.accuracy()))
            .toList();
    write(folder, "scales.csv", headed("scale,division,capacity,class", lines));
  }

  private static void batches(Room room, Path folder) {
    var lines =
        room.batches.values().stream()
            .map(b -> String.join(",", b.id(), b.product(), b.made().toString()))
            .toList();
    write(folder, "batches.csv", headed("batch,product,made", lines));
  }

  private static void bench(Room room, Path folder) {
    var lines =
        room.bonings.stream()
            .map(b -> String.join(",", b.scale(), b.from() + "", b.to() + "", b.boner()))
            .toList();
    write(folder, "bench.csv", headed("scale,from,to,boner", lines));
  }

  /** Small rooms export a day at a time, those of many months a month at a time. */
  private static Object file(Room room, Ticket ticket) {
    return room.plan.alike() ? YearMonth.from(ticket.time) : ticket.time.toLocalDate();
  }

  private static void exports(Room room, Path folder) {
    var codes = codes(room.tickets);
    boolean tares = room.plan.tares();
    var files = new TreeMap<String, List<String>>();
    for (var t : room.tickets) {
      var lines =
          files.computeIfAbsent(
              "exports/" + t.scale + '/' + file(room, t) + ".csv",
              f ->
                  new ArrayList<>(
                      List.of(
                          "scale,ticket,time,body,code,net,batch" + (tares ? ",gross,tare" : ""))));
      var line =
          String.join(
              ",",
              t.scale,
              String.valueOf(t.number),
              t.time.toString(),
              t.body,
              codes.get(t.item + ',' + t.step),
              weight(t.net),
              t.batch);
      lines.add(tares ? line + ',' + weight(t.net + t.tare) + ',' + weight(t.tare) : line);
    }
    files.forEach((file, lines) -> write(folder, file, lines));
  }

  /** A weight in the shop's unit. */
  static String weight(long thousandths) {
    return String.format("%d.%03d", thousandths / 1_000, thousandths % 1_000);
  }

  private static List<String> headed(String header, List<String> lines) {
    var all = new ArrayList<>(List.of(header));
    all.addAll(lines);
    return all;
  }

  private static void write(Path folder, String name, List<String> lines) {
    try {
      var file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, String.join("\n", lines) + '\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
