/**
 * What the runs of a store come to, for lists, suggestions and a history: rows drawn from the entries of each run. A
 * {@link org.tenthwise.app.history.RunDigest} is what is drawn of one run; {@link org.tenthwise.app.history.History} is
 * what can be asked of all of them. Nothing here is evidence: the entries are.
 */
package org.tenthwise.app.history;
