/**
 * A form: a few things to choose from ready answers or to type in words, one in hand at a time, and one key that leads
 * on to what is still missing and at the end does what the form is for.
 *
 * <p>A screen hands in its fields and what is to happen; what was chosen and typed goes out as the fields' values. Null
 * is not passed and not returned.
 */
package org.tenthwise.app.ui.form;
