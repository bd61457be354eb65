/** Whether a body's statement goes out tonight, and if not, why. */
package gambrel.decision;
