/** How fast the program is, measured by whoever wants to know; no test depends on it. */
package gambrel.bench;
