package gambrel.weighing;

import gambrel.notice.Notice;
import java.util.Collection;
import java.util.List;

/**
 * What became of the rows of one file.
 *
 * @param count of them
 * @param setAside those that wait for a person, in line order
 * @param weighings those that have taken effect
 * @param jumps where a clock went back
 * @param ahead rows dated far after the run's clock
 * @param grid weights that a scale cannot show
 */
record JudgedFile(
    RowCount count,
    List<SetAside> setAside,
    List<Weighing> weighings,
    List<Notice> jumps,
    Collection<RowsAhead> ahead,
    DivisionGrid grid) {
  /** The same without its weighings, which are most of it. */
  JudgedFile withoutWeighings() {
    return new JudgedFile(count, setAside, List.of(), jumps, ahead, grid);
  }
}
