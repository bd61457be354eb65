package gambrel.pages.render;

import java.util.Optional;

/** Pages made before, by what they were made of: laying out is most of the work of a page. */
public interface PageMemory {
  /** Remembers nothing. */
  PageMemory NONE =
      new PageMemory() {
        @Override
        public Optional<byte[]> find(String recipe) {
          return Optional.empty();
        }

        @Override
        public void keep(String recipe, byte[] page) {
          // forgets it
        }
      };

  /** The very bytes that {@code recipe} gave before, if they are still there. */
  Optional<byte[]> find(String recipe);

  /** Takes note of a page and of the recipe that it was made by. */
  void keep(String recipe, byte[] page);
}
