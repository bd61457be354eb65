/** What the shop knows apart from its weighings: bodies, owners, codes, scales, prices, decisions. */
package gambrel.shop;
