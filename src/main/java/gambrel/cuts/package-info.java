/**
 * What a body breaks into: one tree of parts a species, which a shop may extend item by item.
 *
 * <p>Pure: no files, no clock. The built-in trees are resources read by {@code gambrel.intake}.
 */
package gambrel.cuts;
