package gambrel.pages.render;

import java.util.function.Supplier;

/** Keeps pages by their recipe, an id of all input, since layout is most of the work. */
@FunctionalInterface
public interface PageMemory {
  /** Keeps no page. */
  PageMemory NONE = (recipe, maker) -> maker.get();

  /** The bytes of the page of that recipe: as they are kept, else made and kept. */
  byte[] page(String recipe, Supplier<byte[]> maker);
}
