package gambrel.outside;

import java.time.LocalDate;

/** What a fault changes in a room. Nothing, where a fault does not say otherwise. */
interface Nature {
  /** A room in which all is as usual. */
  Nature SOUND = new Nature() {};

  /** Percentage points added to the dressing percentage. */
  default double dressing(Carcase carcase) {
    return 0;
  }

  /** Percentage points added to the chill shrink. */
  default double chill(Carcase carcase) {
    return 0;
  }

  /** Percentage points added to the bench loss. */
  default double bench(Carcase carcase) {
    return 0;
  }

  /** Points of the weight into the boning room that are left on the bone. */
  default double bone(Carcase carcase) {
    return 0;
  }

  /** Points of the weight into the boning room that are trimmed off as fat. */
  default double fat(Carcase carcase) {
    return 0;
  }

  /** What a batch's usual loss is multiplied by. */
  default double batch(LocalDate made) {
    return 1;
  }

  /** What a scale shows of a true weight. */
  default double scale(String scale, LocalDate day) {
    return 1;
  }

  /** Days that a body hangs longer than planned. */
  default int hanging(Carcase carcase) {
    return 0;
  }
}
