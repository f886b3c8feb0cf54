/**
 * Published cases on the tablet: topic by topic and source by source, each printed figure beside the one worked out,
 * what is set aside and what is left out, with the reasons. The cases are run anew each time the screen is opened.
 */
package org.tenthwise.app.ui.reference;
