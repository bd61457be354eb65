/** Which statements were issued, which are to be, and what changed between two of them. Pure. */
package gambrel.register;
