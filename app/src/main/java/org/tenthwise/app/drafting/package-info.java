/** Lists of characteristics as files, for whoever makes the draft of a plan of one. */
package org.tenthwise.app.drafting;
