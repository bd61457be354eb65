/** The part of SVG that charts need, painted into the page. */
package gambrel.pages.render.svg;
