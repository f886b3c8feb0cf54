/**
 * Pictures laid out from numbers, in plain Java: sections, strips, run-out rings, thread grooves, plugs, rows of
 * checks.
 *
 * <p>Lengths and words come in; strokes, fills and lettering go out through a {@link org.tenthwise.app.picture.Pen}.
 * One pen draws on the screen, another into the record, so both show the same picture. Colours are named by
 * {@link org.tenthwise.app.picture.Role} and take their values from a {@link org.tenthwise.app.picture.Palette}. Sizes
 * on the sheet are {@code double} pixels, 96 to the inch, y downwards; no verdict is reached here.
 */
package org.tenthwise.app.picture;
