package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.FalseAlarms;
import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.Finding;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * {@code -Dmonth.shops=N} takes so many sound shops, 12 by default, and a twelfth as many of each
 * fault, of which nine in ten must be told.
 *
 * <p>The count of months with a false alarm is held to a binomial bound, see {@link FalseAlarms}: a
 * rate twice as high is noticed with probability 0.91 in 2,600 shops.
 */
class EveryFindingTest {
  private static final int SHOPS = Integer.getInteger("month.shops", 12);
  private static final int FAULTY = Math.max(1, SHOPS / 12);

  @TempDir Path folder;

  private static Fault fault(Finding.Kind kind) {
    return switch (kind) {
      case CHILLER -> Fault.CHILLER_TAKES_MORE;
      case CHILLED_BODIES -> Fault.ONE_BODY_DRIES_OUT;
      case BENCH -> Fault.BENCH_LOSES_MORE;
      case BENCH_BODIES -> Fault.ONE_PACK_NOT_WEIGHED;
      case SCALE -> Fault.RAIL_READS_LIGHT;
      case HANGING -> Fault.OWN_BODIES_FORGOTTEN;
      case BATCH -> Fault.BATCH_LOSES;
      case PAPERWORK -> Fault.BINS_NOT_WEIGHED;
      case UNPAID -> Fault.TWO_DO_NOT_PAY;
      case CHARGES -> Fault.WRAPPING_NOT_CHARGED;
      case BONER -> Fault.WYN_LEAVES_MEAT_ON_THE_BONE;
      case CUT_CHOICE -> Fault.LOIN_ON_THE_BONE_IS_CHEAP;
      case BELOW_TRIM -> Fault.STRIPLOIN_IS_CHEAP;
      case SUPPLIER -> Fault.HILLS_BODIES_DRESS_WORSE;
      case CLASS -> Fault.HEIFERS_DRESS_WORSE;
      case STOCK -> Fault.ONE_BODY_BOUGHT_TOO_DEAR;
      case YIELD -> Fault.MORE_FAT_TRIMMED_OFF;
      case PACE -> Fault.WORK_IS_SLOW;
    };
  }

  private List<Finding> findings(long seed, Fault fault) {
    return MonthReport.of(RoutineShop.march(folder.resolve(fault + "-" + seed), seed, fault))
        .findings();
  }

  @ParameterizedTest
  @EnumSource(Finding.Kind.class)
  void comesUpWhereItsFaultIsPlanted(Finding.Kind kind) {
    int told = 0;
    for (long seed = 1; seed <= FAULTY; seed++) {
      told += findings(seed, fault(kind)).stream().anyMatch(f -> f.kind() == kind) ? 1 : 0;
    }
    System.out.printf("%s told in %d of %d shops with its fault%n", kind, told, FAULTY);
    assertTrue(told * 10 >= FAULTY * 9, told + " of " + FAULTY);
  }

  /** At most one month in a hundred has a false finding. */
  @Test
  void isSilentInSoundShopsButForTheRateThatItPromises() {
    Map<Finding.Kind, Long> alarms = new EnumMap<>(Finding.Kind.class);
    int months = 0;
    for (long seed = 1; seed <= SHOPS; seed++) {
      var found = findings(1_000 + seed, Fault.NONE);
      found.forEach(f -> alarms.merge(f.kind(), 1L, Long::sum));
      months += found.isEmpty() ? 0 : 1;
    }
    System.out.printf("%d sound shops: %s%n", SHOPS, alarms);
    new FalseAlarms(SHOPS, AlarmRates.MONTH).check("months " + alarms, months);
  }
}
