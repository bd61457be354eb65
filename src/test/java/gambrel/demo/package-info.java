/**
 * Writes the demo shop in {@code sample-exports}: an invented boning room, its people and a quarter
 * of work, drawn from a fixed seed. Nothing in it comes from a real business.
 */
package gambrel.demo;
