/** What may be wrong in a shop's data, with a stable code, a place and advice. */
package gambrel.notice;
