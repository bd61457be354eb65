package gambrel.insight.cause;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/** A mistake made in a clean shop, and the truth about it. */
enum Damage {
  /** One or two tickets keyed to another body of the day. */
  WRONG_BODY(Cause.WRONG_BODY) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, shop.rows.stream().filter(Damage::isCut).toList());
      var shift = shift(shop, row);
      int at = shift.indexOf(row);
      int number = Math.min(1 + random.nextInt(2), shift.size() - at);
      var others = othersOfDay(shop, row);
      if (others.isEmpty()) {
        return Optional.empty();
      }
      String other = pick(random, others);
      var moved =
          shift.subList(at, at + number).stream().filter(r -> r.body.equals(row.body)).toList();
      return Optional.of(key(moved, other));
    }
  },
  /** The print key pressed twice. */
  DOUBLE_PRESS(Cause.DOUBLE_PRESS) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, shop.rows.stream().filter(r -> !r.isRail()).toList());
      var copy = row.copy(2 + random.nextInt(6));
      shop.rows.add(copy);
      return Optional.of(new Truth(Cause.DOUBLE_PRESS, Set.of(row, copy), 1, ""));
    }
  },
  /** A bin or some trays weighed with their tare. */
  TARE_LEFT_ON(Cause.TARE_LEFT_ON) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      boolean trays = shop.style.trayTared && random.nextBoolean();
      var rows =
          shop.rows.stream()
              .filter(r -> trays ? r.print == ShopRow.Print.ALL && !r.isBin() : r.isBin())
              .filter(r -> r.print != ShopRow.Print.GROSS)
              .toList();
      if (rows.isEmpty()) {
        return Optional.empty();
      }
      var row = pick(random, rows);
      var all = new ArrayList<>(List.of(row));
      if (trays) {
        rows.stream()
            .filter(r -> r.body.equals(row.body) && r != row)
            .limit(random.nextInt(12))
            .forEach(all::add);
      }
      for (var one : all) {
        one.net += shop.style.shown(one.scale, trays ? shop.style.trayTare : shop.style.binTare);
        one.tare = 0;
      }
      return Optional.of(new Truth(Cause.TARE_LEFT_ON, Set.copyOf(all), all.size(), ""));
    }
  },
  /** The body key changed too late or too early when the next body came. */
  CHANGEOVER(Cause.CHANGEOVER) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var scale = shop.of("bench" + (1 + random.nextInt(shop.style.benches)));
      var changes = new ArrayList<Integer>();
      var own = scale.stream().filter(r -> !r.body.isEmpty()).toList();
      for (int i = 1; i < own.size(); i++) {
        boolean day = own.get(i).time.toLocalDate().equals(own.get(i - 1).time.toLocalDate());
        boolean alike = species(shop, own.get(i)).equals(species(shop, own.get(i - 1)));
        if (day && alike && !own.get(i).body.equals(own.get(i - 1).body)) {
          changes.add(i);
        }
      }
      if (changes.isEmpty()) {
        return Optional.empty();
      }
      int change = pick(random, changes);
      int number = 2 + random.nextInt(20);
      boolean late = random.nextInt(4) > 0;
      String right = own.get(late ? change : change - 1).body;
      String wrong = own.get(late ? change - 1 : change).body;
      var moved = new ArrayList<ShopRow>();
      for (int i = 0; i < number; i++) {
        int at = late ? change + i : change - 1 - i;
        if (at >= 0 && at < own.size() && own.get(at).body.equals(right)) {
          moved.add(own.get(at));
        }
      }
      return moved.size() < 2 ? Optional.empty() : Optional.of(key(moved, wrong));
    }
  },
  /** A rail weight that was not taken. */
  PART_NOT_WEIGHED(Cause.PART_NOT_WEIGHED) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var sides = shop.rows.stream().filter(r -> r.isRail() && r.code.endsWith("side")).toList();
      if (sides.isEmpty()) {
        return Optional.empty();
      }
      var row = pick(random, sides);
      var gone = new ArrayList<>(List.of(row));
      if (random.nextInt(3) == 0) {
        boolean hot = row.code.startsWith("hot");
        String other = (hot ? "cold" : "hot") + row.code.substring(row.code.indexOf('.'));
        sides.stream()
            .filter(r -> r.body.equals(row.body) && r.code.equals(other))
            .reduce((a, b) -> row == first(sides, row) ? a : b)
            .ifPresent(gone::add);
      }
      shop.rows.removeAll(gone);
      return Optional.of(new Truth(Cause.PART_NOT_WEIGHED, Set.copyOf(gone), 0, ""));
    }
  },
  /** A rail weight keyed to another body weighed that day. */
  STRAY_PART(Cause.WRONG_BODY) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, shop.of("rail"));
      var others =
          othersOfDay(shop, row).stream()
              .filter(o -> shop.bodies.get(o).species().equals(shop.bodies.get(row.body).species()))
              .toList();
      return others.isEmpty()
          ? Optional.empty()
          : Optional.of(key(List.of(row), pick(random, others)));
    }
  },
  /** A hook weighed hot or cold with one body. */
  HOOK(Cause.HOOK) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      if (!shop.style.hookKnown) {
        return Optional.empty();
      }
      var row = pick(random, shop.of("rail"));
      var all = new ArrayList<>(List.of(row));
      if (random.nextBoolean()) {
        shop.of("rail").stream()
            .filter(r -> r != row && r.body.equals(row.body))
            .filter(r -> r.code.startsWith(row.code.substring(0, 3)))
            .forEach(all::add);
      }
      all.forEach(r -> r.net += shop.style.shown("rail", shop.style.hook));
      return Optional.of(new Truth(Cause.HOOK, Set.copyOf(all), all.size(), ""));
    }
  },
  /** A tub of bone or fat that was not weighed. */
  BIN_NOT_WEIGHED(Cause.BIN_NOT_WEIGHED) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row =
          pick(random, shop.rows.stream().filter(r -> r.code.matches("bin\\.(bone|fat)")).toList());
      shop.rows.remove(row);
      return Optional.of(new Truth(Cause.BIN_NOT_WEIGHED, Set.of(row), 0, ""));
    }
  },
  /** A decimal point in the wrong place. */
  DECIMAL(Cause.DECIMAL) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var rows = netOnly(shop).stream().filter(Damage::isCut).toList();
      if (rows.isEmpty()) {
        return Optional.empty();
      }
      var row = pick(random, rows);
      row.net = random.nextBoolean() ? row.net * 10 : row.net / 10;
      return Optional.of(new Truth(Cause.DECIMAL, Set.of(row), 1, ""));
    }
  },
  /** Two digits of a typed weight exchanged. */
  DIGITS(Cause.DIGITS_TRANSPOSED) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var rows = netOnly(shop).stream().filter(Damage::isCut).toList();
      if (rows.isEmpty()) {
        return Optional.empty();
      }
      var row = pick(random, rows);
      var digits = new StringBuilder(Long.toString(row.net));
      int at = random.nextInt(digits.length() - 1);
      char first = digits.charAt(at);
      digits.setCharAt(at, digits.charAt(at + 1));
      digits.setCharAt(at + 1, first);
      row.net = Long.parseLong(digits.toString());
      return Optional.of(new Truth(Cause.DIGITS_TRANSPOSED, Set.of(row), 1, ""));
    }
  },
  /** A hook of a weight that no file tells, in the hot weight. */
  UNKNOWN_HOOK(Cause.HOOK) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      if (shop.style.hookKnown) {
        return Optional.empty();
      }
      var row =
          pick(random, shop.of("rail").stream().filter(r -> r.code.startsWith("hot.")).toList());
      row.net += shop.style.shown("rail", shop.style.hook);
      return Optional.of(new Truth(Cause.HOOK, Set.of(row), 1, row.body));
    }
  },
  /** A tub keyed to another batch of the day. */
  WRONG_BATCH(Cause.WRONG_BATCH) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var tubs = shop.rows.stream().filter(r -> r.code.startsWith("tub.")).toList();
      if (tubs.isEmpty()) {
        return Optional.empty();
      }
      var tub = pick(random, tubs);
      var others =
          tubs.stream()
              .filter(r -> r.time.toLocalDate().equals(tub.time.toLocalDate()))
              .map(r -> r.batch)
              .filter(b -> !b.equals(tub.batch))
              .distinct()
              .toList();
      if (others.isEmpty()) {
        return Optional.empty();
      }
      tub.batch = pick(random, others);
      return Optional.of(new Truth(Cause.WRONG_BATCH, Set.of(tub), 1, ""));
    }
  },
  /** A pack that was not weighed. */
  PACK_NOT_WEIGHED(Cause.PACK_NOT_WEIGHED) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row =
          pick(
              random,
              shop.rows.stream()
                  .filter(r -> r.code.startsWith("pack.") && r.batch.isEmpty())
                  .toList());
      shop.rows.remove(row);
      return Optional.of(new Truth(Cause.PACK_NOT_WEIGHED, Set.of(row), 0, row.body));
    }
  },
  /** A tub of fat that was not weighed. */
  FAT_NOT_WEIGHED(Cause.BIN_NOT_WEIGHED) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, shop.rows.stream().filter(r -> r.code.equals("bin.fat")).toList());
      shop.rows.remove(row);
      return Optional.of(new Truth(Cause.BIN_NOT_WEIGHED, Set.of(row), 0, row.body));
    }
  },
  /** A tub of bone keyed to another body of the day. */
  BONE_TO_NEIGHBOUR(Cause.WRONG_BODY) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, shop.rows.stream().filter(r -> r.code.equals("bin.bone")).toList());
      var others = othersOfDay(shop, row);
      return others.isEmpty()
          ? Optional.empty()
          : Optional.of(key(List.of(row), pick(random, others)));
    }
  },
  /** Of each of two bodies of a day a tub of bone was not weighed. */
  TWO_LACK_BONE(Cause.BIN_NOT_WEIGHED) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var bones = shop.rows.stream().filter(r -> r.code.equals("bin.bone")).toList();
      var row = pick(random, bones);
      var others = othersOfDay(shop, row);
      if (others.isEmpty()) {
        return Optional.empty();
      }
      String other = pick(random, others);
      var also = bones.stream().filter(r -> r.body.equals(other)).findFirst();
      shop.rows.remove(row);
      also.ifPresent(shop.rows::remove);
      return also.map(r -> new Truth(Cause.BIN_NOT_WEIGHED, Set.of(row, r), 0, row.body));
    }
  },
  /** Two bodies of a day that lost more than the shop allows, by nature. */
  NATURAL(null) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, shop.rows.stream().filter(Damage::isCut).toList());
      var bodies = new ArrayList<>(List.of(row.body));
      if (random.nextBoolean()) {
        othersOfDay(shop, row).stream().findFirst().ifPresent(bodies::add);
      }
      long lost = 25L + random.nextInt(40);
      for (var one : shop.rows) {
        if (bodies.contains(one.body) && !one.isRail()) {
          one.net = shop.style.shown(one.scale, one.net * (1000 - lost) / 1000);
        }
      }
      return Optional.of(new Truth(null, Set.of(row), 0, row.body));
    }
  },
  /** One row in the other unit. */
  UNIT_ROW(Cause.UNIT) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var rows = netOnly(shop).stream().filter(r -> !r.isRail()).toList();
      if (rows.isEmpty()) {
        return Optional.empty();
      }
      var row = pick(random, rows);
      otherUnit(shop, row);
      return Optional.of(new Truth(Cause.UNIT, Set.of(row), 1, ""));
    }
  },
  /** A scale left in the other unit for a day. */
  UNIT_DAY(Cause.UNIT) {
    @Override
    Optional<Truth> happen(CleanShop shop, SplittableRandom random) {
      var row = pick(random, netOnly(shop));
      var shift = shift(shop, row);
      if (!netOnly(shop).containsAll(shift)) {
        return Optional.empty();
      }
      shift.forEach(r -> otherUnit(shop, r));
      return Optional.of(new Truth(Cause.UNIT, Set.copyOf(shift), shift.size(), ""));
    }
  };

  final Cause cause;

  Damage(Cause cause) {
    this.cause = cause;
  }

  /**
   * A mistake that was made.
   *
   * @param cause the cause to be suggested
   * @param rows the rows concerned, also removed ones
   * @param touched how many of them a correct correction names
   * @param owner the body of the rows
   */
  record Truth(Cause cause, Set<ShopRow> rows, int touched, String owner) {
    Set<String> tickets() {
      var tickets = new HashSet<String>();
      rows.forEach(r -> tickets.add(r.scale + " " + r.ticket));
      return tickets;
    }
  }

  /** Makes the mistake; empty if this shop has no row for it. Tickets must be numbered again. */
  abstract Optional<Truth> happen(CleanShop shop, SplittableRandom random);

  private static List<ShopRow> netOnly(CleanShop shop) {
    return shop.rows.stream().filter(r -> r.print == ShopRow.Print.NET).toList();
  }

  private static boolean isCut(ShopRow row) {
    return !row.isRail() && !row.body.isEmpty() && row.batch.isEmpty();
  }

  private static String species(CleanShop shop, ShopRow row) {
    return shop.bodies.get(row.body).species();
  }

  private static <T> T pick(SplittableRandom random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static ShopRow first(List<ShopRow> rows, ShopRow row) {
    return rows.stream()
        .filter(r -> r.body.equals(row.body) && r.code.equals(row.code))
        .findFirst()
        .orElseThrow();
  }

  private static List<ShopRow> shift(CleanShop shop, ShopRow row) {
    return shop.of(row.scale).stream()
        .filter(r -> r.time.toLocalDate().equals(row.time.toLocalDate()))
        .toList();
  }

  private static List<String> othersOfDay(CleanShop shop, ShopRow row) {
    String species = shop.bodies.get(row.body).species();
    return shift(shop, row).stream()
        .map(r -> r.body)
        .filter(b -> !b.isEmpty() && !b.equals(row.body))
        .filter(b -> shop.bodies.get(b).species().equals(species))
        .distinct()
        .toList();
  }

  private static Truth key(List<ShopRow> rows, String wrong) {
    String right = rows.get(0).body;
    rows.forEach(row -> row.body = wrong);
    return new Truth(Cause.WRONG_BODY, Set.copyOf(rows), rows.size(), right);
  }

  private static void otherUnit(CleanShop shop, ShopRow row) {
    double factor = shop.style.pounds ? 0.45359237 : 1 / 0.45359237;
    row.net = shop.style.shown(row.scale, Math.round(row.net * factor));
  }
}
