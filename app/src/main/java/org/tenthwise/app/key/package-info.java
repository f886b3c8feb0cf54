/**
 * The key of a station: one tablet or desk with its store. What it signs is shown to come from that station and to be
 * unchanged since; it is no person's signature. In go bytes and a file beside the store; out come signatures, and a
 * sentence where there is no key.
 */
package org.tenthwise.app.key;
