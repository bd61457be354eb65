/** Fills the shop's templates, or the built-in ones, with FreeMarker. */
package gambrel.pages.render.template;
