package gambrel.outside;

import gambrel.outside.Style.Cut;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The work of a room, day by day: kill, chill, hang, cut, batch. */
final class RoomWork {
  private static final List<String> CUSTOMERS =
      List.of("adams", "baker", "clark", "dunn", "evans", "flynn", "grant", "hayes", "irwin");

  /** Grams of a lug that a bin is weighed in. */
  static final double LUG = 2_140;

  private final RoomPlan plan;
  private final Nature nature;
  private final Chance chance;
  private final Room room;
  private final Map<Species, Double> usualLoss = new EnumMap<>(Species.class);
  private final Map<Species, Double> usualChill = new EnumMap<>(Species.class);
  private final Map<String, Double> chillOfDay = new HashMap<>();
  private final Map<LocalDate, Double> lossOfDay = new HashMap<>();
  private final Map<String, Style> styles = new HashMap<>();
  private final Map<String, Double> inBoningRoom = new HashMap<>();
  private final double batchLoss;

  private RoomWork(RoomPlan plan, Nature nature, Chance chance) {
    this.plan = plan;
    this.nature = nature;
    this.chance = chance;
    this.room = new Room(plan);
    this.batchLoss = chance.between(1.8, 3);
    for (var species : Species.values()) {
      usualLoss.put(species, species.loss + chance.between(-0.25, 0.25));
      usualChill.put(species, species.chill + chance.between(-0.3, 0.3));
    }
  }

  /** A room in which all this was done. */
  static Room of(RoomPlan plan, Nature nature, Chance chance) {
    return new RoomWork(plan, nature, chance).done();
  }

  private Room done() {
    kill();
    var days = new TreeMap<LocalDate, List<Carcase>>();
    for (var carcase : room.carcases) {
      hang(carcase);
      days.computeIfAbsent(carcase.cut(), d -> new ArrayList<>()).add(carcase);
    }
    days.forEach(this::cut);
    room.tickets.sort(Comparator.comparing(ticket -> ticket.time));
    var numbers = new TreeMap<String, Integer>();
    for (var ticket : room.tickets) {
      int last = numbers.computeIfAbsent(ticket.scale, s -> chance.whole(200, 4_000));
      ticket.number = last + 1;
      numbers.put(ticket.scale, last + 1);
    }
    return room;
  }

  private void kill() {
    var counts = new EnumMap<Species, Integer>(Species.class);
    for (int week = 0; week < plan.weeks(); week++) {
      for (DayOfWeek weekday : plan.killDays()) {
        var day = plan.start().plusWeeks(week).plusDays(weekday.getValue() - 1L);
        for (var species : plan.most().keySet()) {
          int heads = chance.whole(plan.fewest().get(species), plan.most().get(species));
          for (int i = 0; i < heads; i++) {
            int count = counts.merge(species, 1, Integer::sum);
            room.carcases.add(
                carcase(species, String.format("%c%03d", species.letter, count), day));
          }
        }
      }
    }
  }

  private Carcase carcase(Species species, String id, LocalDate killed) {
    String customer = chance.happens(plan.own()) ? "shop" : chance.pick(CUSTOMERS);
    String supplier =
        customer.equals("shop") && !plan.suppliers().isEmpty() ? chance.pick(plan.suppliers()) : "";
    var planned =
        new Carcase(
            id,
            species,
            chance.pick(species.classes),
            styles.computeIfAbsent(
                (plan.alike() ? "all" : customer) + species, c -> chance.pick(Style.of(species))),
            killed,
            killed,
            customer,
            supplier,
            plan.chillers().isEmpty() ? "" : chance.pick(plan.chillers()),
            plan.boners().isEmpty() ? "" : chance.pick(plan.boners()),
            chance.pick(plan.lines()));
    int days = chance.whole(species.hungFrom, species.hungTo) + 1 + nature.hanging(planned);
    var cut = killed.plusDays(days);
    while (cut.getDayOfWeek().getValue() > 5) {
      cut = cut.plusDays(1);
    }
    return new Carcase(
        id,
        species,
        planned.category(),
        planned.style(),
        killed,
        cut,
        customer,
        supplier,
        planned.chiller(),
        planned.boner(),
        planned.bench());
  }

  /** Weighs a body hot, cold and, where the plan says so, before it is cut. */
  private void hang(Carcase carcase) {
    var species = carcase.species();
    double live = chance.normal(species.live, species.liveSpread) * 1_000;
    long step = species == Species.BEEF ? 2_000 : 500;
    room.live.put(carcase.id(), Math.round(plan.inUnit(live) / step) * step);
    double dressing =
        chance.normal(species.dressing, species.dressingSpread) + nature.dressing(carcase);
    double hot = live * dressing / 100;
    double shrink =
        chance.normal(usualChill.get(species), species.chillSpread)
            + chillOfDay.computeIfAbsent(
                carcase.chiller() + carcase.killed(), d -> chance.normal(0, 0.12))
            + nature.chill(carcase);
    double cold = hot * (1 - shrink / 100);
    var coldDay = carcase.killed().plusDays(1);
    long hung = coldDay.datesUntil(carcase.cut()).count();
    double aged = cold * (1 - species.drying * hung / 100 * chance.between(0.85, 1.15));
    var sides = parts(species);
    var halves = chance.normal(0.5, 0.004);
    int place = (int) room.carcases.stream().takeWhile(c -> !c.equals(carcase)).count() % 23;
    var hotTime = LocalTime.of(7, 30).plusMinutes(place * 9L + chance.whole(0, 5));
    rail("rail", carcase, "hot", sides, halves, hot, carcase.killed().atTime(hotTime));
    boolean coldToo = !plan.hotOnly();
    if (coldToo) {
      var time = coldDay.atTime(6, 0).plusSeconds(place * 50L + chance.whole(0, 30));
      rail(plan.coldScale(), carcase, "cold", sides, halves, cold, time);
    }
    boolean again = coldToo && plan.aged() && species == Species.BEEF && hung > 1;
    if (again) {
      var time = carcase.cut().atTime(6, 5).plusSeconds(place * 60L);
      rail(plan.coldScale(), carcase, "aged", sides, halves, aged, time);
    }
    inBoningRoom.put(carcase.id(), aged);
    // What dried off since the last rail weighing counts as bench loss.
    double last = again ? aged : coldToo ? cold : hot;
    inBoningRoom.put(carcase.id() + " weighed", last);
  }

  private List<String> parts(Species species) {
    if (species == Species.BEEF || species == Species.PORK && plan.sides()) {
      return List.of("side", "side");
    }
    return List.of("carcase");
  }

  private void rail(
      String scale,
      Carcase carcase,
      String step,
      List<String> parts,
      double half,
      double weight,
      LocalDateTime time) {
    for (int i = 0; i < parts.size(); i++) {
      double share = parts.size() == 1 ? 1 : i == 0 ? half : 1 - half;
      weigh(scale, time.plusSeconds(i * 40L), carcase.id(), step, parts.get(i), weight * share);
    }
  }

  private Ticket weigh(
      String scale, LocalDateTime time, String body, String step, String item, double grams) {
    double shown = plan.inUnit(grams) * nature.scale(scale, time.toLocalDate());
    var ticket = new Ticket(scale, time, body, step, item, plan.scales().get(scale).shows(shown));
    room.tickets.add(ticket);
    return ticket;
  }

  /** Cuts the bodies of a day one after the other on each line, then makes its batches. */
  private void cut(LocalDate day, List<Carcase> carcases) {
    var lines = new TreeMap<String, LocalDateTime>();
    var batches = new LinkedHashMap<String, Double>();
    var work = chance.shuffled(carcases);
    work.sort(Comparator.comparing(Carcase::species));
    for (var carcase : work) {
      room.order.computeIfAbsent(Room.day(carcase), d -> new ArrayList<>()).add(carcase);
      var start = lines.getOrDefault(carcase.bench(), day.atTime(6, 40));
      var end = cut(carcase, start, batches);
      lines.put(carcase.bench(), pause(end));
    }
    var from = lines.values().stream().max(LocalDateTime::compareTo).orElseThrow().plusMinutes(20);
    for (var batch : batches.entrySet()) {
      from = make(batch.getKey(), batch.getValue(), from);
    }
  }

  private LocalDateTime pause(LocalDateTime end) {
    boolean lunch = end.getHour() == 12 && chance.happens(0.7);
    return end.plusSeconds(lunch ? 1_800 : chance.whole(60, 240));
  }

  private LocalDateTime cut(Carcase carcase, LocalDateTime start, Map<String, Double> batches) {
    var species = carcase.species();
    double weight = inBoningRoom.get(carcase.id());
    double lost =
        (usualLoss.get(species)
                + lossOfDay.computeIfAbsent(carcase.cut(), d -> chance.normal(0, 0.07))
                + chance.normal(0, 0.25)
                + nature.bench(carcase))
            / 100;
    lost = Math.max(lost, 0.001);
    double weighed = inBoningRoom.get(carcase.id() + " weighed");
    // A sound body stays within the shop's limit of 3 % and what it may dry.
    double out = Math.max(weight * (1 - lost), weighed * 0.975 - (weighed - weight));
    var shares = shares(carcase);
    double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    var time = start;
    var binned = new ArrayList<Cut>();
    var bins = plan.binScale(carcase.bench());
    for (var cut : carcase.style().cuts()) {
      double grams = out * shares.get(cut) / sum;
      if (cut.step().equals("bin")) {
        binned.add(cut);
      } else if (cut.step().equals("tub")) {
        var batch = batch(carcase);
        for (double part : divided(cut, grams)) {
          time = time.plusSeconds(chance.whole(30, 70));
          var ticket = weigh(bins, time, carcase.id(), "tub", cut.item(), part);
          ticket.batch = batch;
          tare(ticket);
          batches.merge(batch, part, Double::sum);
        }
      } else {
        for (double part : divided(cut, grams)) {
          time = time.plusSeconds(chance.whole(20, 60));
          weigh(carcase.bench(), time, carcase.id(), "pack", cut.item(), part);
        }
      }
    }
    if (species == Species.LAMB && chance.happens(0.5)) {
      time = time.plusSeconds(30);
      weigh(carcase.bench(), time, carcase.id(), "pack", "liver", chance.between(550, 800));
    }
    var last = time;
    for (var cut : binned) {
      for (double part : divided(cut, out * shares.get(cut) / sum)) {
        last = last.plusSeconds(chance.whole(25, 90));
        tare(weigh(bins, last, carcase.id(), "bin", cut.item(), part));
      }
    }
    if (!carcase.boner().isEmpty()) {
      for (var scale : List.of(carcase.bench(), bins)) {
        var boning = new Room.Boning(scale, start, last, carcase.boner());
        if (!room.bonings.contains(boning)) {
          room.bonings.add(boning);
        }
      }
      return last.plusSeconds(5);
    }
    // The next body may be begun while the bins of this one are still weighed.
    return time.plusSeconds(20);
  }

  private Map<Cut, Double> shares(Carcase carcase) {
    var shares = new LinkedHashMap<Cut, Double>();
    for (var cut : carcase.style().cuts()) {
      double share = cut.share() * (1 + chance.normal(0, cut.spread()));
      boolean bin = cut.step().equals("bin");
      if (bin && cut.item().equals("bone")) {
        share += nature.bone(carcase) / 100;
      }
      if (bin && cut.item().equals("fat")) {
        share += nature.fat(carcase) / 100;
      }
      shares.put(cut, share);
    }
    // What is bone or fat is what the animal is; the meat is the rest.
    double bins = sum(shares, true);
    double meat = sum(shares, false);
    shares.replaceAll((cut, s) -> cut.step().equals("bin") ? s : s * (1 - bins) / meat);
    return shares;
  }

  private static double sum(Map<Cut, Double> shares, boolean bins) {
    return shares.entrySet().stream()
        .filter(e -> e.getKey().step().equals("bin") == bins)
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  private List<Double> divided(Cut cut, double grams) {
    boolean bulk = !cut.step().equals("pack");
    int tickets = cut.tickets(grams);
    if (!bulk && cut.weighings() == 0) {
      tickets = Math.max(1, (int) Math.round((double) tickets / plan.coarse()));
    }
    var parts = new ArrayList<Double>();
    for (int i = 0; i < tickets; i++) {
      parts.add(1 + chance.normal(0, cut.weighings() > 0 ? 0.03 : 0.08));
    }
    double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
    parts.replaceAll(part -> grams * part / sum);
    return parts;
  }

  private void tare(Ticket ticket) {
    if (plan.tares()) {
      ticket.tare = plan.scales().get(ticket.scale).shows(plan.inUnit(LUG));
    }
  }

  private String batch(Carcase carcase) {
    var day = carcase.cut();
    boolean sausages = carcase.species() == Species.PORK || carcase.species() == Species.GOAT;
    String id = (sausages ? "S" : "M") + String.format("%03d", day.getDayOfYear());
    room.batches.putIfAbsent(id, new Room.Batch(id, sausages ? "Sausages" : "Mince", day));
    return id;
  }

  private LocalDateTime make(String batch, double meat, LocalDateTime from) {
    var day = from.toLocalDate();
    var line = plan.lines().get(0);
    var bins = plan.binScale(line);
    boolean sausages = batch.startsWith("S");
    var time = from;
    double in = meat;
    if (sausages) {
      double added = meat * chance.between(0.1, 0.14);
      weigh(bins, time, "", "added", "", added).batch = batch;
      in += added;
    }
    double lost = chance.normal(batchLoss, 0.45) / 100 * nature.batch(day);
    double left = in * (1 - Math.max(0.004, lost));
    double usual = 1_000.0 * plan.coarse() * 2;
    while (left > 0) {
      double pack = left < usual * 1.6 ? left : usual * chance.between(0.95, 1.05);
      time = time.plusSeconds(chance.whole(15, 30));
      weigh(line, time, "", "pack", sausages ? "sausages" : "mince", pack).batch = batch;
      left -= pack;
    }
    return time.plusMinutes(5);
  }
}
