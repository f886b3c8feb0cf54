package org.tenthwise.app.ui;

import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.drawing.DrawingPages;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.handout.ViewHandout;
import org.tenthwise.app.matters.MatterBook;
import org.tenthwise.app.receiving.Receiving;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.PlanDesk;

/**
 * What the screens are built with, in whatever language.
 *
 * @param background its worker owns the ledger of {@code shop}
 * @param plans looks up the plans there are; called on the worker
 * @param desk where plans are made; absent where there is no folder of plans
 * @param drawings pages of the drawings; asked on the worker of {@code aside}
 * @param figures where tables of figures lie
 * @param receiving takes bundles of other stations in; asked on the worker
 * @param bundles where those lie
 * @param aside for what takes long and has no part in the ledger
 * @param handout in the language spoken when it is asked for; its work is called on the worker
 * @param views likewise
 * @param articles the first-article reports of the store; asked on the worker
 * @param matters what is open over its runs; asked on the worker
 * @param facts in the language spoken when they are asked for
 * @param backups absent for a store that is thrown away
 */
public record Fittings(
        Shell shell,
        Look look,
        Runs shop,
        Background background,
        Callable<Catalogue> plans,
        Optional<PlanDesk> desk,
        DrawingPages drawings,
        FilesInFolders figures,
        Receiving receiving,
        FilesInFolders bundles,
        Background aside,
        Supplier<Handout> handout,
        Supplier<ViewHandout> views,
        ReportShelf articles,
        MatterBook matters,
        Sums sums,
        Supplier<AboutFacts> facts,
        Optional<BackupBook> backups,
        Spoken spoken,
        Clock clock) {}
