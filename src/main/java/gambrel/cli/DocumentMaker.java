package gambrel.cli;

import gambrel.night.Documents;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;

/** Makes a shop's documents; a test puts plainer ones in the place of PDFs. */
interface DocumentMaker {
  /** The documents of the shop in {@code folder}. */
  Documents of(Path folder, Settings settings);
}
