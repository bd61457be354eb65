/** Measures speed on made-up shops of any size; nothing here is a test. */
package gambrel.bench;
