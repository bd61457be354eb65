/** How a body's figures compare with those of like bodies of the shop. */
package gambrel.insight.usual;
