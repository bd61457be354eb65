/** The trace of each figure of a body down to file, line and ticket. */
package gambrel.pages.explain;
