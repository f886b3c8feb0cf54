/**
 * First-article reports at the tablet: which there are, what is asked for one, what it comes to, signed and written.
 */
package org.tenthwise.app.ui.article;
