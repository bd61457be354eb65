/** A small shop for each kind of notice, and what a night makes of it. */
package gambrel.corpus;
