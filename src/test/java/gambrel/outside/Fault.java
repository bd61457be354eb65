package gambrel.outside;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;

/** One thing that is wrong in a room from a month on. */
enum Fault {
  /** A chiller takes 0.8 points more from what hangs in it. */
  CHILLER((id, group) -> id.equals("chiller") && group.equals(Set.of("K1"))) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double chill(Carcase carcase) {
          return carcase.chiller().equals("K1") && !carcase.killed().isBefore(from) ? 0.8 : 0;
        }
      };
    }
  },
  /** A boner leaves 2.5 points of the body more on the bone. */
  BONER((id, group) -> id.equals("boner") && group.equals(Set.of("Ana"))) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double bone(Carcase carcase) {
          return carcase.boner().equals("Ana") && !carcase.cut().isBefore(from) ? 2.5 : 0;
        }
      };
    }
  },
  /** One of two packing scales, each with bodies of its own, shows 0.3 % too little. */
  BENCH_SCALE((id, group) -> id.equals("scale") && group.equals(Set.of("bench1"))) {
    @Override
    Nature from(LocalDate from) {
      return low("bench1", from);
    }

    @Override
    List<String> lines() {
      return List.of("bench1", "bench3");
    }
  },
  /** The one rail scale of two lines shows 0.3 % too little. */
  RAIL_SCALE((id, group) -> id.equals("scale") && group.equals(Set.of("rail"))) {
    @Override
    Nature from(LocalDate from) {
      return low("rail", from);
    }

    @Override
    List<String> lines() {
      return List.of("bench1", "bench3");
    }
  },
  /** The scale of the cold weights, which is not that of the hot ones, shows 0.3 % too little. */
  COLD_SCALE((id, group) -> id.equals("scale") && group.equals(Set.of("rail2"))) {
    @Override
    Nature from(LocalDate from) {
      return low("rail2", from);
    }

    @Override
    String coldScale() {
      return "rail2";
    }
  },
  /** A supplier's bodies dress 2.5 points worse. */
  SUPPLIER(
      (id, group) ->
          Set.of("supplier", "stock").contains(id) && group.equals(Set.of("Hill Farm"))) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double dressing(Carcase carcase) {
          boolean theirs = carcase.supplier().equals("Hill Farm");
          return theirs && !carcase.killed().isBefore(from) ? -2.5 : 0;
        }
      };
    }
  },
  /** Hoggets have 4 points more fat to trim off. */
  CLASS((id, group) -> Set.of("class", "yield").contains(id) && group.equals(Set.of("hogget"))) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double fat(Carcase carcase) {
          return carcase.category().equals("hogget") && !carcase.cut().isBefore(from) ? 4 : 0;
        }
      };
    }
  },
  /** A customer does not pay. */
  UNPAID((id, group) -> id.equals("unpaid") && group.equals(Set.of("grant"))),
  /** Most own cattle hang 18 days longer. */
  HANGING((id, group) -> id.equals("hanging")) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public int hanging(Carcase carcase) {
          boolean own = carcase.isOwn() && carcase.species() == Species.BEEF;
          boolean most = carcase.id().hashCode() % 4 != 0;
          return own && most && !carcase.killed().isBefore(from) ? 18 : 0;
        }
      };
    }
  },
  /** Batches lose twice as much. */
  BATCH((id, group) -> id.equals("batch")) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double batch(LocalDate made) {
          return made.isBefore(from) ? 1 : 2;
        }
      };
    }
  },
  /** All bodies lose 0.6 points more on the bench; all go over both bench scales. */
  BENCH((id, group) -> id.equals("bench")) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double bench(Carcase carcase) {
          return carcase.cut().isBefore(from) ? 0 : 0.6;
        }
      };
    }
  },
  /** Diced beef brings less than the trim that it could be. */
  BELOW_TRIM((id, group) -> id.equals("below-trim") && group.equals(Set.of("stewing-dice"))),
  /** The lambs of two days of kill of a month stand in the hall and lose 2.5 points more. */
  LATE((id, group) -> !group.isEmpty() && (id.contains("late") || id.equals("chilled-bodies"))) {
    @Override
    Nature from(LocalDate from) {
      return new Nature() {
        @Override
        public double chill(Carcase carcase) {
          var killed = carcase.killed();
          boolean late =
              killed.getDayOfWeek() == DayOfWeek.MONDAY
                  && (killed.getDayOfMonth() - 1) / 7 % 2 == 0;
          boolean lamb = carcase.species() == Species.LAMB;
          return late && lamb && !killed.isBefore(from) && killed.getDayOfMonth() < 22 ? 2.5 : 0;
        }
      };
    }
  };

  private final BiPredicate<String, Set<String>> named;

  Fault(BiPredicate<String, Set<String>> named) {
    this.named = named;
  }

  /** What it changes in the bodies from a day on. */
  Nature from(LocalDate from) {
    return Nature.SOUND;
  }

  /** The packing scales of its room. */
  List<String> lines() {
    return List.of("bench1");
  }

  /** The scale of the cold weights of its room. */
  String coldScale() {
    return "rail";
  }

  /**
   * Whether a row of {@code findings.csv} names the fault.
   *
   * @param concerned the bodies that the fault concerns, where it concerns single ones
   */
  boolean isNamedBy(Map<String, String> row, Set<String> concerned) {
    var group = new HashSet<String>(List.of(row.get("group").split(";")));
    group.remove("");
    boolean bodies = this == LATE || this == HANGING;
    return named.test(row.get("finding"), group) && (!bodies || concerned.containsAll(group));
  }

  private static Nature low(String low, LocalDate from) {
    return new Nature() {
      @Override
      public double scale(String scale, LocalDate day) {
        return scale.equals(low) && !day.isBefore(from) ? 0.997 : 1;
      }
    };
  }
}
