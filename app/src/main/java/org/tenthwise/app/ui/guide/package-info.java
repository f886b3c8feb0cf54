/** The first minutes: a part to try, how a plan comes in, what each key does; then machines and people are named. */
package org.tenthwise.app.ui.guide;
