package gambrel.insight.month;

/** What may be wrong in March in a {@link RoutineShop}. */
enum Fault {
  /** Nothing. */
  NONE,
  /** From the 10th the chiller takes 1.5 % more. */
  CHILLER_TAKES_MORE,
  /** One body loses 4 % more in the chiller. */
  ONE_BODY_DRIES_OUT,
  /** From the 10th 1.2 % of each body is not weighed out. */
  BENCH_LOSES_MORE,
  /** A pack of one body, 2 % of it, is never weighed. */
  ONE_PACK_NOT_WEIGHED,
  /** From the 10th the rail scale reads 1.5 % light under bodies that are not hot. */
  RAIL_READS_LIGHT,
  /** Two of the shop's own bodies hang two weeks longer. */
  OWN_BODIES_FORGOTTEN,
  /** A batch loses 15 %. */
  BATCH_LOSES,
  /** Three bodies have no bins of bone. */
  BINS_NOT_WEIGHED,
  /** The statements of two bodies of January are not paid. */
  TWO_DO_NOT_PAY,
  /** The charge for wrapping ended with February. */
  WRAPPING_NOT_CHARGED,
  /** Wyn leaves 2 % of the body more on the bone. */
  WYN_LEAVES_MEAT_ON_THE_BONE,
  /** A loin on the bone is sold a tenth too cheap. */
  LOIN_ON_THE_BONE_IS_CHEAP,
  /** One own body was bought at three times its price. */
  ONE_BODY_BOUGHT_TOO_DEAR,
  /** Of every body 2.5 % more goes into the fat bin. */
  MORE_FAT_TRIMMED_OFF,
  /** A striploin is sold cheaper than mince. */
  STRIPLOIN_IS_CHEAP,
  /** Bodies that Hill delivers dress 3 % of live weight worse. */
  HILLS_BODIES_DRESS_WORSE,
  /** Heifers dress 3 % of live weight worse. */
  HEIFERS_DRESS_WORSE,
  /** A quarter takes three tenths longer. */
  WORK_IS_SLOW
}
