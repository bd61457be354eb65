/** Reads the scale exports of a shop folder by their layouts. */
package gambrel.files.export;
