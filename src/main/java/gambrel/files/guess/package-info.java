/** Proposals of a layout for an export that fits none. */
package gambrel.files.guess;
