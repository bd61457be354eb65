/**
 * What the owner's month comes to: its bodies, the twelve months before, what was lost and what it
 * cost, and the findings that ask for a decision. Pure; knows no words. Statistics are approximate by
 * nature, their inputs exact.
 */
package gambrel.month;
