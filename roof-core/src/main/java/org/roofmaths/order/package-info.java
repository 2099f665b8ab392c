/**
 * What to buy, once: net amounts, allowances, packs and stock lengths, what is left over, mass and price.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.roofmaths.order.OrderLine}: one item with its three columns: net, needed with its allowances, to buy.
 *   <li>{@link org.roofmaths.order.OrderTerms}: what is allowed ({@link org.roofmaths.order.Allowance}), how it is sold
 *       ({@link org.roofmaths.order.Stock}), what it costs ({@link org.roofmaths.order.Price}).
 *   <li>{@link org.roofmaths.order.Order}: the lines together, as text, Markdown or a plain tree; and the second order after a delivery
 *       that came short.
 *   <li>{@link org.roofmaths.order.TakeOff}: what the layouts of some faces take, the one place where an order meets setting out.
 *   <li>{@link org.roofmaths.order.UnitsAlong}: units along a line, such as a ridge.
 *   <li>{@link org.roofmaths.order.CountCheck}: a counted number held against area over cover, with the difference explained.
 *   <li>{@link org.roofmaths.order.StockCutting}: which pieces are sawn from which stock length, with a bound on what any plan needs.
 *   <li>{@link org.roofmaths.order.Fixings}, {@link org.roofmaths.order.Nails} and {@link org.roofmaths.order.LoadingOut}: fixings
 *       counted by zone, nails, and how the units are lifted and stacked.
 * </ol>
 *
 * <p>Allowances are added once and the sum is rounded up once. The library adds no allowance by itself;
 * {@link org.roofmaths.order.AllowanceHint} shows what is common. Amounts carry their kind: pieces, a length, an area or a mass. Prices are
 * decimals with a currency. No method takes or returns null.
 */
@NullMarked
package org.roofmaths.order;

import org.jspecify.annotations.NullMarked;
