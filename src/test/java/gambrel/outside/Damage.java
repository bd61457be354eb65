package gambrel.outside;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** One thing that goes wrong with one body of a room, or with two neighbours. */
enum Damage {
  /** A pack is keyed to the body before or after. */
  PACK_TO_NEIGHBOUR {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return toNeighbour(room, chance, Damage::isPack);
    }
  },
  /** A tub of trim is keyed to the body before or after. */
  TUB_TO_NEIGHBOUR {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return toNeighbour(room, chance, t -> t.step.equals("tub"));
    }
  },
  /** A bin of bone is keyed to the body before or after. */
  BONE_TO_NEIGHBOUR {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return toNeighbour(room, chance, isBin("bone"));
    }
  },
  /** A bin of fat is keyed to the body before or after. */
  FAT_TO_NEIGHBOUR {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return toNeighbour(room, chance, isBin("fat"));
    }
  },
  /** The bone of two neighbours was not weighed. */
  TWO_LACK_BONE {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      var carcase = body(room, chance, isBin("bone"));
      if (carcase.isEmpty() || room.neighbours(carcase.get()).isEmpty()) {
        return Optional.empty();
      }
      var other = chance.pick(room.neighbours(carcase.get()));
      var bodies = Set.of(carcase.get().id(), other.id());
      for (var body : bodies) {
        var bin = ticket(room, chance, body, isBin("bone"));
        if (bin.isEmpty()) {
          return Optional.empty();
        }
        room.tickets.remove(bin.get());
      }
      return Optional.of(Truth.missing("no bone of " + bodies, "bin-not-weighed", bodies));
    }
  },
  /** Two neighbouring digits of a weight are exchanged. */
  DIGITS {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return typed(room, chance, Damage::transposed);
    }
  },
  /** The decimal point of a weight is one place too far left or right. */
  DECIMAL {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return typed(room, chance, Damage::shifted);
    }
  },
  /** A hook hangs with the hot weight. */
  HOOK_HOT {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return hook(room, chance, List.of("hot"));
    }
  },
  /** A hook hangs with the hot weight, and still with the cold one. */
  HOOK_HOT_AND_COLD {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return hook(room, chance, List.of("hot", "cold"));
    }
  },
  /** A pack is not weighed. */
  PACK_MISSING {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return missing(room, chance, Damage::isPack, "pack-not-weighed");
    }
  },
  /** A bin of bone is not weighed. */
  BONE_MISSING {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return missing(room, chance, isBin("bone"), "bin-not-weighed");
    }
  },
  /** A bin of fat is not weighed. */
  FAT_MISSING {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return missing(room, chance, isBin("fat"), "bin-not-weighed");
    }
  },
  /** A side is not weighed at one step of the rail. */
  PART_MISSING {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return missing(
          room, chance, t -> t.item.equals("side") && !t.step.equals("aged"), "part-not-weighed");
    }
  },
  /** A tub is keyed to another batch. */
  TUB_TO_BATCH {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      var carcase = body(room, chance, t -> t.step.equals("tub"));
      if (carcase.isEmpty()) {
        return Optional.empty();
      }
      var tub = ticket(room, chance, carcase.get().id(), t -> t.step.equals("tub")).orElseThrow();
      var batch = tub.batch;
      var made = room.batches.get(batch).made();
      var others =
          room.batches.values().stream()
              .filter(b -> !b.id().equals(batch))
              .filter(b -> Math.abs(b.made().toEpochDay() - made.toEpochDay()) <= 1)
              .toList();
      if (others.isEmpty()) {
        return Optional.empty();
      }
      tub.batch = chance.pick(others).id();
      return Optional.of(
          new Truth(
              tub + " belongs into " + batch,
              Set.of("wrong-batch"),
              Set.of(),
              List.of(Map.of(tub.key(), batch)),
              "batch",
              0));
    }
  },
  /** The lug of a bin is weighed with it. */
  TARE_LEFT_ON {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      Predicate<Ticket> lugged = t -> t.step.equals("bin") || t.step.equals("tub");
      var carcase = body(room, chance, lugged);
      if (carcase.isEmpty()) {
        return Optional.empty();
      }
      var bin = ticket(room, chance, carcase.get().id(), lugged).orElseThrow();
      long net = bin.net;
      bin.net += room.plan.scales().get(bin.scale).shows(room.plan.inUnit(RoomWork.LUG));
      bin.tare = 0;
      if (!room.plan.lugs() && !room.plan.tares()) {
        // No file of the room says what a lug weighs, so that there is nothing to paste.
        var what = "the lug of " + bin;
        return Optional.of(Truth.missing(what, "tare-left-on", Set.of(bin.body)));
      }
      return net(room, bin, "tare-left-on", net, boning(room, bin.body) / 100);
    }
  },
  /** The number of the body before stays on the scale, or that of the next is set too early. */
  CHANGEOVER {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return changeover(room, chance);
    }
  },
  /** A ticket is printed twice. */
  DOUBLE_PRESS {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return twice(room, chance);
    }
  },
  /** A scale shows another unit for one ticket, or from one ticket to the body's last. */
  UNIT {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      return unit(room, chance);
    }
  },
  /** One to three bodies lost more than the limit, each by nature. */
  NATURAL {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      var bodies = new HashSet<String>();
      for (int i = chance.whole(1, 3); i > 0; i--) {
        body(room, chance, t -> true).map(Carcase::id).ifPresent(bodies::add);
      }
      bodies.forEach(body -> lose(room, body, chance.between(3.2, 6.5)));
      return Optional.of(Truth.natural("natural losses of " + bodies, bodies));
    }
  },
  /** Two neighbours lost more than the limit, both by nature. */
  NATURAL_PAIR {
    @Override
    Optional<Truth> doTo(Room room, Chance chance) {
      var carcase = body(room, chance, t -> true);
      if (carcase.isEmpty() || room.neighbours(carcase.get()).isEmpty()) {
        return Optional.empty();
      }
      var bodies = Set.of(carcase.get().id(), chance.pick(room.neighbours(carcase.get())).id());
      bodies.forEach(body -> lose(room, body, chance.between(4.8, 5.6)));
      return Optional.of(Truth.natural("natural losses of neighbours " + bodies, bodies));
    }
  };

  /** Both say that tickets are keyed to another body; a run may be one ticket long. */
  private static final Set<String> KEYED = Set.of("wrong-body", "changeover");

  /** Does it to a room; empty if the room has no body that it can happen to. */
  abstract Optional<Truth> doTo(Room room, Chance chance);

  /** Whether the room must have no cold weight: else a hook in the hot weight holds no body. */
  boolean needsHotOnly(Chance chance) {
    return this == HOOK_HOT && chance.happens(0.75);
  }

  /** Whether what is suggested is wrong whatever it is. */
  boolean isNatural() {
    return this == NATURAL || this == NATURAL_PAIR;
  }

  /**
   * Whether the bodies that it holds weigh as bodies do that lost much by nature, so that nothing
   * tells it: a hook that stays in the last rail weight makes every product too small a part.
   */
  boolean looksNatural() {
    return this == HOOK_HOT || this == HOOK_HOT_AND_COLD;
  }

  private static boolean isPack(Ticket ticket) {
    return ticket.step.equals("pack") && ticket.batch.isEmpty() && !ticket.isOffal();
  }

  private static Predicate<Ticket> isBin(String item) {
    return t -> t.step.equals("bin") && t.item.equals(item);
  }

  private static long boning(Room room, String body) {
    return room.boning().getOrDefault(body, 0L);
  }

  /** A body of the room's later half with such a ticket. */
  private static Optional<Carcase> body(Room room, Chance chance, Predicate<Ticket> such) {
    var later = room.carcases.subList(room.carcases.size() / 2, room.carcases.size());
    return chance.shuffled(later).stream()
        .filter(c -> room.of(c.id()).stream().anyMatch(such))
        .findFirst();
  }

  private static Optional<Ticket> ticket(
      Room room, Chance chance, String body, Predicate<Ticket> such) {
    return chance.shuffled(room.of(body)).stream().filter(such).findFirst();
  }

  /** Heavy enough to be missed: the shop's limit is three per cent. */
  private static Predicate<Ticket> heavy(Room room) {
    var boning = room.boning();
    return t -> t.net * 1_000 > boning.getOrDefault(t.body, Long.MAX_VALUE / 2_000) * 24;
  }

  private static Optional<Truth> toNeighbour(Room room, Chance chance, Predicate<Ticket> such) {
    var heavy = such.and(heavy(room));
    var carcase = body(room, chance, heavy);
    if (carcase.isEmpty() || room.neighbours(carcase.get()).isEmpty()) {
      return Optional.empty();
    }
    var ticket = ticket(room, chance, carcase.get().id(), heavy).orElseThrow();
    var other = chance.pick(room.neighbours(carcase.get())).id();
    var own = ticket.body;
    ticket.body = other;
    return Optional.of(
        new Truth(
            ticket + " is of " + own,
            KEYED,
            Set.of(own, other),
            List.of(Map.of(ticket.key(), own)),
            "body",
            0));
  }

  private static Optional<Truth> missing(
      Room room, Chance chance, Predicate<Ticket> such, String cause) {
    var heavy = such.and(heavy(room));
    var carcase = body(room, chance, heavy);
    if (carcase.isEmpty()) {
      return Optional.empty();
    }
    var ticket = ticket(room, chance, carcase.get().id(), heavy).orElseThrow();
    room.tickets.remove(ticket);
    return Optional.of(Truth.missing("not weighed: " + ticket, cause, Set.of(ticket.body)));
  }

  /** What a person types wrong. */
  interface Slip {
    /** What may be typed in place of a weight. */
    List<Long> of(long net);
  }

  private static List<Long> shifted(long net) {
    return List.of(net * 10, Math.round(net / 10.0));
  }

  /** The slips that make this of that: of 0.500 both make 5.000. */
  private static Set<String> causes(long wrong, long net) {
    var causes = new HashSet<String>();
    if (shifted(net).contains(wrong)) {
      causes.add("decimal");
    }
    if (transposed(net).contains(wrong)) {
      causes.add("digits-transposed");
    }
    return causes;
  }

  private static List<Long> transposed(long net) {
    var digits = RoomFolder.weight(net).replace(".", "");
    var all = new ArrayList<Long>();
    for (int i = 0; i < digits.length() - 1; i++) {
      if (digits.charAt(i) != digits.charAt(i + 1)) {
        all.add(
            Long.parseLong(
                digits.substring(0, i)
                    + digits.charAt(i + 1)
                    + digits.charAt(i)
                    + digits.substring(i + 2)));
      }
    }
    return all;
  }

  private static Optional<Truth> typed(Room room, Chance chance, Slip slip) {
    if (room.plan.tares()) {
      return Optional.empty();
    }
    var boning = room.boning();
    var later = room.carcases.subList(room.carcases.size() / 2, room.carcases.size());
    for (var carcase : chance.shuffled(later)) {
      for (var ticket : chance.shuffled(room.of(carcase.id()))) {
        for (long wrong : chance.shuffled(slip.of(ticket.net))) {
          boolean fits = wrong > 0 && wrong <= room.plan.scales().get(ticket.scale).capacity();
          boolean seen = Math.abs(wrong - ticket.net) * 40 > boning.get(carcase.id());
          if (fits && seen && !ticket.isRail() && !ticket.isOffal()) {
            long net = ticket.net;
            ticket.net = wrong;
            return Optional.of(
                new Truth(
                    ticket + " weighed " + RoomFolder.weight(net),
                    causes(wrong, net),
                    Set.of(ticket.body),
                    List.of(Map.of(ticket.key(), RoomFolder.weight(net))),
                    "net",
                    // The last digit of a weight ten times too small is lost.
                    Math.max(5, room.plan.scales().get(ticket.scale).division() / 2)));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Truth> net(
      Room room, Ticket ticket, String cause, long net, long tolerance) {
    return Optional.of(
        new Truth(
            ticket + " weighed " + RoomFolder.weight(net),
            Set.of(cause),
            Set.of(ticket.body),
            List.of(Map.of(ticket.key(), RoomFolder.weight(net))),
            "net",
            Math.max(tolerance, room.plan.scales().get(ticket.scale).division() / 2)));
  }

  private static Optional<Truth> hook(Room room, Chance chance, List<String> steps) {
    var carcase = body(room, chance, t -> t.step.equals("hot"));
    if (carcase.isEmpty()) {
      return Optional.empty();
    }
    var body = carcase.get().id();
    var hung = room.of(body).stream().filter(Ticket::isRail).toList();
    if (hung.stream().anyMatch(t -> t.step.equals("aged"))) {
      return Optional.empty();
    }
    double grams = hung.get(0).item.equals("side") ? 3_600 : 1_200;
    for (var step : steps) {
      var weighed = hung.stream().filter(t -> t.step.equals(step)).findFirst();
      if (weighed.isEmpty()) {
        return Optional.empty();
      }
      var ticket = weighed.get();
      ticket.net += room.plan.scales().get(ticket.scale).shows(room.plan.inUnit(grams));
    }
    // No file of the room says what a hook weighs, so that there is nothing to paste.
    var what = "a hook of " + grams + " g in " + steps + " of " + body;
    return Optional.of(Truth.missing(what, "hook", Set.of(body)));
  }

  private static Optional<Truth> changeover(Room room, Chance chance) {
    var carcase = body(room, chance, Damage::isPack);
    if (carcase.isEmpty() || room.neighbours(carcase.get()).isEmpty()) {
      return Optional.empty();
    }
    var other = chance.pick(room.neighbours(carcase.get())).id();
    var own = carcase.get().id();
    var packs =
        room.tickets.stream()
            .filter(t -> t.scale.equals(carcase.get().bench()) && t.body.equals(own))
            .filter(Damage::isPack)
            .toList();
    boolean before =
        room.of(other).stream()
            .filter(Damage::isPack)
            .anyMatch(t -> t.time.isBefore(packs.get(0).time));
    int run = chance.whole(2, Math.min(6, packs.size() - 1));
    var wrong = before ? packs.subList(0, run) : packs.subList(packs.size() - run, packs.size());
    var right = new LinkedHashMap<String, String>();
    for (var ticket : wrong) {
      ticket.body = other;
      right.put(ticket.key(), own);
    }
    return Optional.of(
        new Truth(
            "a run " + right + " keyed as " + other,
            KEYED,
            Set.of(own, other),
            List.of(right),
            "body",
            0));
  }

  private static Optional<Truth> twice(Room room, Chance chance) {
    Predicate<Ticket> such = heavy(room).and(t -> !t.isOffal() && !t.isRail() && t.batch.isEmpty());
    var carcase = body(room, chance, such);
    if (carcase.isEmpty()) {
      return Optional.empty();
    }
    var ticket = ticket(room, chance, carcase.get().id(), such).orElseThrow();
    // Every later ticket of the scale has the next number.
    room.tickets.stream()
        .filter(t -> t.scale.equals(ticket.scale) && t.number > ticket.number)
        .forEach(t -> t.number++);
    var again = ticket.copy();
    again.number++;
    again.time = ticket.time.plusSeconds(chance.whole(1, 6));
    room.tickets.add(room.tickets.indexOf(ticket) + 1, again);
    return Optional.of(
        new Truth(
            again + " is " + ticket.key() + " again",
            Set.of("double-press"),
            Set.of(ticket.body),
            List.of(Map.of(ticket.key(), "void"), Map.of(again.key(), "void")),
            "status",
            0));
  }

  private static Optional<Truth> unit(Room room, Chance chance) {
    Predicate<Ticket> such = t -> !t.isOffal() && !t.isRail() && t.batch.isEmpty();
    var carcase = body(room, chance, such);
    if (carcase.isEmpty()) {
      return Optional.empty();
    }
    var own = carcase.get().id();
    var first = ticket(room, chance, own, such.and(heavy(room)));
    if (first.isEmpty() || room.plan.tares()) {
      return Optional.empty();
    }
    boolean single = chance.happens(0.5);
    var wrong =
        single
            ? List.of(first.get())
            : room.of(own).stream()
                .filter(such)
                .filter(t -> t.scale.equals(first.get().scale))
                .filter(t -> t.number >= first.get().number)
                .toList();
    var right = new LinkedHashMap<String, String>();
    double factor = room.plan.pounds() ? 1 / Suggestion.POUNDS : Suggestion.POUNDS;
    for (var ticket : wrong) {
      // A scale for kilograms and pounds has a division of 0.01 or 0.05 lb.
      long division = room.plan.pounds() ? 5 : ticket.scale.equals("bench1") ? 10 : 50;
      ticket.net = Math.round(ticket.net * factor / division) * division;
      if (ticket.net > room.plan.scales().get(ticket.scale).capacity()) {
        return Optional.empty();
      }
      right.put(ticket.key(), room.plan.pounds() ? "kg" : "lb");
    }
    return Optional.of(
        new Truth(right + " of " + own, Set.of("unit"), Set.of(own), List.of(right), "unit", 0));
  }

  /** Takes some per cent of the weight into the boning room off all that was packed and binned. */
  static void lose(Room room, String body, double percent) {
    Predicate<Ticket> cut =
        t -> !t.isOffal() && (t.step.equals("bin") || t.step.equals("pack") && t.batch.isEmpty());
    var tickets = room.of(body).stream().filter(cut).toList();
    long sum = tickets.stream().mapToLong(t -> t.net).sum();
    double kept = 1 - boning(room, body) * percent / 100 / sum;
    for (var ticket : tickets) {
      ticket.net = room.plan.scales().get(ticket.scale).shows(ticket.net * kept);
    }
  }
}
