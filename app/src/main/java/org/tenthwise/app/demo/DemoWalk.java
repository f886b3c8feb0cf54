package org.tenthwise.app.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Scene;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/**
 * Walks a part from the first screen to the last: begins a run, takes every reading and answer of a readings file,
 * looks into the screens that lie beside the way, signs, and hands the record out.
 */
public final class DemoWalk {

    private final KeyPresser finger;
    private final Typist typist;
    private final Camera camera;
    private final Words words;
    private final Plan plan;
    private final ReadingsFile sample;
    private final Presses presses;
    private final String begin;

    /**
     * @param night whether the screens are dark
     * @param rest returns when the thread of the ledger and the screen have done what they were given
     * @param pictures folder that is there
     * @param along is told each step as the walk comes to it
     */
    public DemoWalk(
            Scene scene,
            BooleanProperty night,
            Runnable rest,
            Words words,
            Plan plan,
            ReadingsFile sample,
            Path pictures,
            Consumer<String> along) {
        this.finger = new KeyPresser(scene, rest);
        this.typist = new Typist(finger, words);
        this.camera = new Camera(scene, night, finger, pictures);
        this.words = words;
        this.plan = plan;
        this.sample = sample;
        this.presses = new Presses(finger, typist, camera, words, plan, sample, along);
        this.begin = "begin-%s-%s".formatted(plan.part().number(), plan.part().revision());
    }

    /** @return the pictures taken */
    public List<Path> walk() throws IOException {
        finger.await(begin);
        camera.take("parts");
        camera.aside("about", "about");
        beginRun();
        presses.sayWhere();
        for (Event event : sample.events()) {
            presses.play(event);
        }
        record();
        return camera.taken();
    }

    private void beginRun() throws IOException {
        finger.press(begin);
        camera.take("begin");
        typist.answer(sample.begun().serial());
        typist.answer(sample.begun().lot());
        typist.answer(sample.begun().machine());
        typist.answer(sample.by());
        camera.take("run-first-step");
    }

    private void record() throws IOException {
        camera.take("record");
        for (String as : List.of("hand-pdf", "hand-csv", "hand-json")) {
            finger.press(as);
            camera.once("record-handed-out");
            finger.pressSpoken(words.say("shell.understood"));
        }
        finger.press("back");
        camera.take("parts-and-a-run");
    }
}
