/** Species, items and cut trees, with the facts of the trade about each item. */
package gambrel.trade.cuts;
