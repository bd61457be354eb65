/** The shop's templates over the built-in ones, filled by FreeMarker. */
package gambrel.pages.render.template;
