/**
 * The words a person reads, on the screen and in the record. One bundle a language, its keys by screen; what goes in is
 * a key and what fills its gaps, what comes out is a sentence. Figures come in as text already, so that nothing here
 * can round or group them.
 */
package org.tenthwise.app.text;
