package gambrel.pages.render;

import java.util.Optional;

/** Keeps pages by their recipe, an id of all input, since layout is most of the work. */
public interface PageMemory {
  /** Keeps no page. */
  PageMemory NONE =
      new PageMemory() {
        @Override
        public Optional<byte[]> find(String recipe) {
          return Optional.empty();
        }

        @Override
        public void keep(String recipe, byte[] page) {
          // keeps no page
        }
      };

  /** The bytes of the page of that recipe; empty if it is not kept. */
  Optional<byte[]> find(String recipe);

  /** Keeps a page under its recipe. */
  void keep(String recipe, byte[] page);
}
