/** Reads and paints the part of SVG that the charts use. */
package gambrel.pages.render.svg;
