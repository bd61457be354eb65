/** Control charts of what bodies lose in the chiller. Statistics, so approximate by nature; exact inputs. */
package gambrel.shrink;
