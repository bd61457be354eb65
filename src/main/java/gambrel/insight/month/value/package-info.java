/** What bodies and cuts are worth, and what other ways to cut would have brought. */
package gambrel.insight.month.value;
