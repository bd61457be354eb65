package gambrel.cli;

import gambrel.night.Documents;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;

/** Makes a shop's documents; tests use plainer ones than PDFs. */
interface DocumentMaker {
  /** The documents of a shop; {@code folder} is the shop folder. */
  Documents of(Path folder, Settings settings);
}
