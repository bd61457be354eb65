/** Where each figure of a body comes from, as plain lines of text. Pure. */
package gambrel.explain;
