package piecewright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.plan.Act;
import piecewright.plan.CouchedDemo;
import piecewright.plan.DemoPlan;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.publish.Program;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.Wording;

/** A real browser prints the sheet; what it printed is read back. */
@Tag("clients")
class ChromiumTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"A4, pale, 4", "letter, pale, 4", "A4, couched, 5", "letter, couched, 5"})
    void aPaleBatchIsFourSheetsOfPaperADarkOneFiveAndTheFirstHasEveryStep(String paper, String batch, int most)
            throws Exception {
        boolean couched = batch.equals("couched");
        PlanRequest request = couched ? CouchedDemo.request() : DemoPlan.request();
        Plan plan = couched ? CouchedDemo.plan() : DemoPlan.plan();
        Program programs = new Program(folder);
        programs.mustBeThere("chromium", "chromium", "--version");
        programs.mustBeThere("pdftotext", "pdftotext", "-v");
        String sheet = BenchSheet.of(request, plan, DisplayUnits.metric(), Known.of(Map.of()));
        Path file = Files.writeString(
                folder.resolve("sheet.html"), sheet.replace("</style>", "@page { size: " + paper + " }</style>"));
        programs.run(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-pdf-header-footer",
                "--print-to-pdf=" + folder.resolve("sheet.pdf"),
                file.toUri().toString());
        String about = programs.run("pdfinfo", folder.resolve("sheet.pdf").toString());
        assertTrue(about.contains(" pts (" + paper + ")"), about);
        List<String> pages = pages(programs);
        assertTrue(pages.size() <= most, pages.size() + " pages");
        everyStepIsPrintedOnTheFirstPage(plan, pages.get(0).replaceAll(" +", " "));
        assertEquals(
                1, pages.stream().filter(page -> page.contains("Give or take")).count(), "one page of weights");
    }

    private List<String> pages(Program programs) throws IOException, InterruptedException {
        Path text = folder.resolve("sheet.txt");
        programs.run("pdftotext", "-layout", folder.resolve("sheet.pdf").toString(), text.toString());
        return Files.readString(text).lines().toList().isEmpty()
                ? List.of()
                : List.of(Files.readString(text).split("\f"));
    }

    private static void everyStepIsPrintedOnTheFirstPage(Plan plan, String first) {
        Wording wording = new Wording(DisplayUnits.metric(), plan.subject().zone());
        MomentFormat moments =
                new MomentFormat(plan.subject().zone(), DisplayUnits.metric().locale());
        for (Act act : plan.acts()) {
            String title = moments.moment(act.startsAt()) + " " + wording.actTitle(act);
            assertTrue(first.contains(title), title + " in " + first);
        }
    }
}
