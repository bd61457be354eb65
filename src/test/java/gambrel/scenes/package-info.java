/**
 * What happens at the block, on the rail and in the office, one scene each: a shop folder of a few
 * lines goes through the whole nightly run, and what comes out is checked by hand.
 */
package gambrel.scenes;
