/**
 * The measuring sums by name: what is given goes in as it was typed, what comes out is the answer with the standard it
 * rests on, or a refusal in a person's words. Every door to the sums, the batch, the published cases and the bench on
 * the tablet, comes through here; the formulas themselves are in the model. Nothing is ever null.
 */
package org.tenthwise.app.sums;
