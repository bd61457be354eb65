/** From rows of exports to weighings that count: corrections, repeats, voids, conflicts, owners. */
package gambrel.weighing;
