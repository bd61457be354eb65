/** Income, debts, suppliers and the shop's own stock. */
package gambrel.insight.month.money;
