package org.tenthwise.app.picture.chart;

/**
 * What stands on a course besides its figures.
 *
 * @param part before the numbers of the parts
 * @param first what the small mark is: read first after the last cut
 * @param unread what a ring at the foot is: no size
 * @param band what is hatched
 * @param none instead of a picture, where there is no part
 */
public record CourseWords(String part, String first, String unread, String band, String none) {}
