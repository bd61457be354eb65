package gambrel.cli;

import gambrel.run.Documents;
import gambrel.shop.Settings;
import java.nio.file.Path;

/** Makes a shop's documents; a test puts plainer ones in the place of PDFs. */
interface DocumentMaker {
  /** The documents of the shop in {@code folder}. */
  Documents of(Path folder, Settings settings);
}
