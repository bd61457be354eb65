package gambrel.demo;

/** How the shop cuts cattle, read by {@link Part#of}. */
final class BeefRecipes {
  private static final String LEG =
      """
      301 330 PACK 1400-2300 1-1
      302 150 PACK 700-1000 5-8
      303 260 PACK 1400-2300 1-1
      305 115 PACK 1000-1600 1-1
      306 230 PACK 900-1300 3-4
      """;

  private static final String THIN =
      """
      308 330 PACK 900-1400 2-4
      311 45 PACK 500-1100 1-1
      312 28 PACK 400-900 1-1
      313 40 PACK 500-1100 2-2
      """;

  private static final String FORE_PLAIN =
      """
      321 190 PACK 1000-1700 3-4
      323 300 PACK 1500-2500 1-1
      325 130 PACK 1200-2000 1-1
      327 330 PACK 1500-2600 1-1
      """;

  private static final String FORE =
      FORE_PLAIN
          + """
          322 400 PACK 1100-1600 2-4
          324 100 PACK 600-1000 3-5
          328 300 PACK 1000-1500
          """;

  private static final String LOINS =
      """
      309 300 PACK 800-1200 3-4
      310 135 PACK 500-800 3-4
      314 260 PACK 1000-1500
      320 220 PACK 800-1200 3-4
      """;

  private static final String BINS =
      """
      801 1640 BIN
      802 540 BIN
      804 210 BIN
      803 45 BIN
      """;

  /** All of it boned out, in steaks, roasts and dice. */
  static final String BONELESS = LEG + THIN + LOINS + FORE + "851 2350 TRIM\n" + BINS;

  /** Boned out; most of the forequarter to mince. */
  static final String PLAIN = LEG + THIN + LOINS + FORE_PLAIN + "851 3150 TRIM\n" + BINS;

  /** Loin, rib and shin on the bone. */
  static final String TBONE =
      LEG
          + THIN
          + """
          315 510 PACK 900-1400 2-4
          317 360 PACK 1000-1500 3-4
          316 370 PACK 800-1300 2-2
          """
          + FORE
          + """
          851 2250 TRIM
          801 1330 BIN
          802 540 BIN
          804 210 BIN
          803 45 BIN
          """;

  /** An old cow: the best cuts, the rest to mince. */
  static final String MINCER =
      """
      301 400 PACK 1500-2400 1-1
      304 480 PACK 1500-2600 1-1
      308 330 PACK 900-1400 2-4
      309 280 PACK 800-1200 3-4
      310 130 PACK 400-700 2-3
      320 210 PACK 600-1000 2-3
      328 560 PACK 1000-1500
      851 4100 TRIM
      801 1680 BIN
      802 480 BIN
      804 190 BIN
      803 55 BIN
      """;

  /** Whole primals. */
  static final String COUNTER =
      """
      341 620 BIG 5000-7500 1-1
      342 570 BIG 5000-7500 1-1
      343 370 BIG 3500-5000 1-1
      344 380 BIG 3500-5000 1-1
      345 300 BIG 2800-4500 1-1
      346 150 PACK 1300-2000 1-1
      347 230 PACK 2000-3000 1-1
      348 400 BIG 4000-6500 1-1
      349 560 BIG 5000-8000 1-1
      350 520 BIG 5000-8000 1-1
      321 190 PACK 1800-2600 6-8
      314 330 PACK 2000-3000
      328 400 PACK 2000-3000
      851 2300 TRIM
      801 1780 BIN
      802 620 BIN
      804 210 BIN
      803 45 BIN
      """;

  private BeefRecipes() {}
}
