/**
 * Shop notation to quantities and back.
 *
 * <p>In: what somebody typed, such as {@code 3' 5-3/8"}, and how it is to be read ({@link soapstone.quantity.ReadAs}).
 * Out: a {@link soapstone.quantity.Reading}: an amount in base units with the place it was typed to, or the reason to ask
 * again. {@link soapstone.quantity.ShopReader} is where reading starts, {@link soapstone.quantity.ShopPrinter} prints, and
 * each reads what the other prints. {@link soapstone.quantity.Units} and {@link soapstone.quantity.Dimension} say what can
 * be measured, {@link soapstone.quantity.Rounding} and {@link soapstone.quantity.Tolerance} what is the same in a shop.
 *
 * <p>The forms of one value, where {@code unit} is any word or sign of the spellings table:
 *
 * <pre>
 * value    = [= | about] [- | +] [$] part { [- | , | and] part }     3' - 5 3/8"     22° 30'     1 h 20 min
 * part     = amount [unit]
 * amount   = number | fraction | whole (space | - | and) fraction     41.375     5/8     41 3/8     41-3/8     41⅜
 * unit     = factor { (/ | per | · | -) factor }                      lb per cubic foot     ft-lb     sq ft     in²
 * list     = value { (; | line end) value }
 * point    = [(] value (, | ;) value [)]   |   x value y value
 * </pre>
 */
package soapstone.quantity;
