package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Objections;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.TypedFigure;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.model.words.Words;

/**
 * Figures on their way to the disk, each in its order, and what becomes of them. One that is not taken goes back to
 * where it was typed, or is told where others followed it. Screen thread only.
 */
final class SentFigures {

    /** What comes sooner than this after a figure was meant for the same check. */
    private static final Duration SOON = Duration.ofSeconds(1);

    private final TypedFigures typed;
    private final RunSession session;
    private final LedgerTasks tasks;
    private final Words words;
    private final Objections objections;
    private final Untaken untaken;
    private final Clock clock;
    private final Supplier<State> state;
    private final Predicate<State> saysNoMore;
    private final Consumer<State> show;
    private final FigureQueue queue = new FigureQueue();
    private Instant arrived = Instant.MIN;

    /** @param saysNoMore whether nothing is to be said of a check but its verdict; on the thread of the ledger */
    SentFigures(
            TypedFigures typed,
            RunSession session,
            LedgerTasks tasks,
            Words words,
            Untaken untaken,
            Clock clock,
            Supplier<State> state,
            Predicate<State> saysNoMore,
            Consumer<State> show) {
        this.typed = typed;
        this.session = session;
        this.tasks = tasks;
        this.words = words;
        this.objections = new Objections(words);
        this.untaken = untaken;
        this.clock = clock;
        this.state = state;
        this.saysNoMore = saysNoMore;
        this.show = show;
    }

    boolean areOnTheirWay() {
        return queue.isBusy();
    }

    /** Comes to rest and hands out what was not sent, in order. */
    private List<String> rest() {
        List<String> left = queue.stop();
        typed.offer();
        return left;
    }

    /** Behind those on their way. */
    void follow(String figure) {
        queue.add(figure);
    }

    /** What is suggested. */
    void suggested() {
        if (queue.add("")) {
            send("");
        }
    }

    /** @param begun when its first character was typed */
    void take(String figure, Instant begun) {
        if (!queue.add(figure)) {
            return;
        }
        if (state.get().asked().takesFigure()) {
            send(figure);
        } else if (state.get().figureBeginsNext()) {
            open(figure, begun);
        } else {
            rest();
            untaken.tell(figure, List.of(), words.say("run.untaken.asked"));
        }
    }

    /** The figure that is far off, on purpose. */
    void keep(String figure) {
        int step = state.get().inHand().number();
        if (queue.add(figure)) {
            typed.clear();
            work(
                    () -> session.state().inHand().number() == step
                            ? session.keep(figure)
                            : session.enter(step, figure),
                    figure,
                    false);
        }
    }

    /** A figure when the check is full: the first of the next, if it does not come too soon and fits there. */
    private void open(String figure, Instant begun) {
        int step = state.get().inHand().number();
        if (begun.isBefore(arrived.plus(SOON))) {
            rest();
            askWhetherItOpens(figure);
        } else {
            work(() -> session.onwards().enterNext(step, figure, saysNoMore), figure, true);
        }
    }

    private void send(String figure) {
        int step = state.get().inHand().number();
        work(
                () -> session.onwards().after(session.enter(step, figure), saysNoMore),
                figure,
                state.get().asked().asReading().isPresent());
    }

    private void work(Callable<Reply> verb, String figure, boolean reading) {
        tasks.runOr(
                verb,
                reply -> reply.objection()
                        .ifPresentOrElse(why -> refused(reply, why, figure), () -> taken(reply, reading)),
                () -> failed(figure));
    }

    private void taken(Reply reply, boolean reading) {
        arrived = clock.instant();
        show.accept(reply.state());
        if (queue.waiting() == 0) {
            rest();
        } else if (reading && followsOn(reply.state())) {
            sendNext();
        } else {
            List<String> left = rest();
            if (left.size() == 1 && reply.state().figureBeginsNext()) {
                askWhetherItOpens(left.get(0));
            } else {
                untaken.tell(left, words.say("run.untaken.stopped"));
            }
        }
    }

    /** Whether what is asked now belongs to what was taken before it. */
    private static boolean followsOn(State state) {
        return state.asked().asReading().filter(next -> next.taken() > 0).isPresent();
    }

    private void sendNext() {
        TypedFigure next = typed.asOnThePad(queue.next());
        if (next.state() == KeypadViewModel.PadState.ENTERABLE) {
            send(next.figure());
        } else {
            untaken.tell(next.typed(), rest(), words.say("run.objection", Objection.Kind.NOT_A_NUMBER));
        }
    }

    private void refused(Reply reply, Objection why, String figure) {
        List<String> left = rest();
        boolean followed = !left.isEmpty() || typed.isBegun();
        show.accept(reply.state());
        if (why.kind() == Objection.Kind.OPENS_NEXT && left.isEmpty()) {
            askWhetherItOpens(figure);
        } else if (followed) {
            untaken.tell(figure, left, objections.say(why));
        } else {
            typed.giveBack(figure, why);
            why.noSum().map(words::say).map(words::sentence).ifPresent(untaken::tellWhyNoSum);
        }
    }

    private void failed(String figure) {
        List<String> left = rest();
        if (left.isEmpty() && !typed.isBegun()) {
            typed.giveBack(figure);
        } else {
            untaken.tell(figure, left, words.say("run.untaken.stopped"));
        }
    }

    private void askWhetherItOpens(String figure) {
        int here = state.get().inHand().number();
        int next = state.get().next().orElseThrow().number();
        untaken.askWhetherItOpens(figure, here, next, () -> openWith(here, next, figure));
    }

    private void openWith(int here, int next, String figure) {
        if (queue.add(figure)) {
            work(
                    () -> {
                        if (session.state().inHand().number() == here) {
                            session.goTo(next);
                        }
                        return session.enter(next, figure);
                    },
                    figure,
                    true);
        }
    }
}
