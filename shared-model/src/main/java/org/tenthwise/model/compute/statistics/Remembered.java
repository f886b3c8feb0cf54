package org.tenthwise.model.compute.statistics;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers that take long to work out, of the few hundred questions that were asked last: the lines of a batch ask for
 * the same number of parts with the same confidence again and again. What is refused is not kept. Any thread may ask.
 */
final class Remembered<Q, A> {

    static final int MOST = 512;

    private final Function<Q, A> workedOut;
    private final Map<Q, A> answers = new LinkedHashMap<>(16, 0.75f, true);

    /** @param workedOut gives the same answer whenever it is asked the same */
    Remembered(Function<Q, A> workedOut) {
        this.workedOut = workedOut;
    }

    A of(Q question) {
        synchronized (answers) {
            if (answers.containsKey(question)) {
                return answers.get(question);
            }
        }
        A answer = workedOut.apply(question);
        synchronized (answers) {
            answers.put(question, answer);
            if (answers.size() > MOST) {
                answers.remove(answers.keySet().iterator().next());
            }
        }
        return answer;
    }
}
