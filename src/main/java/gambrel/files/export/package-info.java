/** The exports of a shop folder, read by their layouts. */
package gambrel.files.export;
