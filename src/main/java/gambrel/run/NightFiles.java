package gambrel.run;

import gambrel.publish.Changes;
import gambrel.publish.Content;
import gambrel.publish.PublishedFiles;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The output folder as a night finds it, and what the night changes in it. */
final class NightFiles {
  private final PublishedFiles published;
  private final PageShelf shelf;
  private final Changes changes;

  /** The same folder in all three; {@code changes} gathers what has to change there. */
  NightFiles(PublishedFiles published, PageShelf shelf, Changes changes) {
    this.published = published;
    this.shelf = shelf;
    this.changes = changes;
  }

  /** What stands there, before the night. */
  Optional<byte[]> read(String path) throws IOException {
    return published.read(path);
  }

  /** The files below a folder, before the night. */
  List<String> list(String folder) throws IOException {
    return published.list(folder);
  }

  /** Writes a file, unless it stands there already. */
  void write(String path, byte[] bytes) throws IOException {
    if (!published.holds(path, bytes)) {
      changes.write(path, bytes);
    }
  }

  /** Writes a file that is made as it is written, unless it stands there already. */
  void write(String path, Content content) throws IOException {
    if (!published.holds(path, content)) {
      changes.write(path, content);
    }
  }

  /** Writes a page that the next night may take as it is. */
  void page(String path, byte[] page) throws IOException {
    shelf.place(path, page);
    write(path, page);
  }

  /** Writes the list of pages, once all are made. */
  void pages() throws IOException {
    write(PageShelf.FILE, shelf.after(changes));
  }

  /** Removes a file. */
  void remove(String path) {
    changes.remove(path);
  }
}
