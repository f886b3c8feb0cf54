/**
 * Runs worked by a hand that does anything at any time, and an oracle that says what may be called passed.
 *
 * <p>The oracle knows the plan by facts of its own, from which the plan file is written too, and the run by its entries
 * alone. Its rules are those of the README and of the plan file, put into code once more and in another way: it works
 * with plain decimals and knows no class that judges.
 */
package org.tenthwise.app.session.hostile;
