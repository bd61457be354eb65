package gambrel.weighing;

import gambrel.notice.Notice;
import java.util.List;

/**
 * What became of the rows of one file; every list is in line order.
 *
 * @param count how many rows have each disposition
 * @param setAside rows that wait for a person
 * @param used rows that are read and understood, in effect or not yet
 * @param weighed those that are in effect, with their weighings
 * @param jumps where a clock went back
 */
record JudgedFile(
    RowCount count,
    List<SetAside> setAside,
    List<ReadRow> used,
    List<DivisionGrid.Weighed> weighed,
    List<Notice> jumps) {}
