/** One night in order: read, reckon, decide, make, publish. */
package gambrel.night;
