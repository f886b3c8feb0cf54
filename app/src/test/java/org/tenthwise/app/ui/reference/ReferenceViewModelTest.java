package org.tenthwise.app.ui.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.reference.Agreement;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.reference.PublishedCase;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.words.Words;

class ReferenceViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private ReferenceViewModel model;

    @BeforeEach
    void open() {
        model = new ReferenceViewModel(new Comparison(Handbook.sums()), workshop.tasks, workshop.words);
    }

    private ReferenceViewModel.Chapter chapter(String id) {
        return model.chaptersValue().getValue().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void untilTheCasesWereRunThereIsNothingToChoose() {
        assertEquals("", model.sentenceValue().getValue());
        assertEquals("Running the published cases.", model.shownProperty().get().title());
        assertEquals(List.of(), model.chaptersValue().getValue());
        assertEquals(List.of(), model.shownProperty().get().lines());
    }

    @Test
    void theSentenceCountsTheFigures() {
        model.load();
        long figures = Arrays.stream(Topic.values())
                .flatMap(topic -> PublishedCases.of(topic).stream())
                .mapToLong(one -> one.published().size())
                .sum();
        long aside = Arrays.stream(Topic.values())
                .flatMap(topic -> PublishedCases.of(topic).stream())
                .mapToLong(one -> one.aside().size())
                .sum();
        assertEquals(
                "%d figures agree, %d are set aside, none disagrees.".formatted(figures - aside, aside),
                model.sentenceValue().getValue());
    }

    @Test
    void everyTopicCanBeChosenAndTheFirstIs() {
        model.load();
        assertEquals(
                List.of(
                        "threads",
                        "wires",
                        "profiles",
                        "teeth",
                        "cutting",
                        "limits",
                        "chain",
                        "gauging",
                        "runout",
                        "position",
                        "taper",
                        "roughness",
                        "decision",
                        "temperature",
                        "statistics",
                        "aside",
                        "left-out"),
                model.chaptersValue().getValue().stream()
                        .map(ReferenceViewModel.Chapter::id)
                        .toList());
        assertEquals("threads", model.shownProperty().get().chapter());
    }

    @Test
    void aTopicLeadsToItsSourcesAndASourceToItsFiguresAndBack() {
        model.load();
        chapter("wires").open().run();
        ReferenceViewModel.Shown sources = model.shownProperty().get();
        assertEquals("Threads over wires", sources.title());
        ReferenceLine.Source first = (ReferenceLine.Source) sources.lines().get(0);
        first.open().run();
        ReferenceViewModel.Shown figures = model.shownProperty().get();
        assertEquals(first.name(), figures.title());
        assertEquals("wires", figures.chapter());
        assertTrue(figures.lines().stream().allMatch(ReferenceLine.Figure.class::isInstance));
        figures.up().orElseThrow().run();
        assertEquals(sources.title(), model.shownProperty().get().title());
    }

    /** No key of a program stands on the screen, and lengths, angles and temperatures have their unit. */
    @Test
    void everyFigureHasANameOfTheTradeAndItsUnit() {
        FigureNames names = new FigureNames(new Comparison(Handbook.sums()), Words.ENGLISH);
        for (Topic topic : Topic.values()) {
            for (PublishedCase one : PublishedCases.of(topic)) {
                for (String key : one.published().keySet()) {
                    String name = names.name(key);
                    assertFalse(name.contains("_") || name.matches(".*\\w\\.\\w.*"), name);
                    for (String part : key.split("\\.")) {
                        String ending = part.replace('_', '-');
                        assertTrue(
                                part.matches("\\d+")
                                        || Words.ENGLISH.has("reference.result." + ending)
                                        || Words.ENGLISH.has("bench.result." + ending),
                                part);
                    }
                }
            }
        }
        assertEquals("step 2, to", names.name("steps.1.to"));
        model.load();
        chapter("threads").open().run();
        ((ReferenceLine.Source) model.shownProperty().get().lines().get(0))
                .open()
                .run();
        ReferenceLine.Figure first =
                (ReferenceLine.Figure) model.shownProperty().get().lines().get(0);
        assertTrue(first.published().endsWith(" in"), first::published);
        assertTrue(first.computed().endsWith(" in"), first::computed);
    }

    @Test
    void whatIsSetAsideIsShownWithItsReason() {
        model.load();
        chapter("aside").open().run();
        List<ReferenceLine> lines = model.shownProperty().get().lines();
        assertTrue(!lines.isEmpty());
        lines.forEach(line -> {
            ReferenceLine.Figure figure = (ReferenceLine.Figure) line;
            assertEquals(Agreement.ASIDE, figure.agreement());
            assertEquals("set aside", figure.word());
            assertTrue(!figure.because().isBlank(), figure.name());
        });
    }

    @Test
    void whatIsLeftOutIsShownWithItsReason() {
        model.load();
        chapter("left-out").open().run();
        assertEquals(
                PublishedCases.leftOut().stream()
                        .map(one -> new ReferenceLine.Said(one.source() + ": " + one.name(), one.reason()))
                        .toList(),
                model.shownProperty().get().lines());
    }
}
