/** Measures speed on made-up shops and statements; run by hand, nothing here is a test. */
package gambrel.bench;
