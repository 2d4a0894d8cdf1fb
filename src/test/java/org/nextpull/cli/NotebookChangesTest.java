package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.SessionStart;

/** Sessions that are added at once, corrected, renamed and removed. */
class NotebookChangesTest {
    private static final String PLAN = "sweep-plans/hillclimb-e10-timing.toml";
    private static final String LOG = "sample-logs/hillclimb-e10-timing.csv";

    @TempDir
    private Path folder;

    private Path notebook = Path.of(".");

    @BeforeEach
    void aNotebook() {
        notebook = folder.resolve("shop.db");
    }

    private Run notebook(String typed, String... words) {
        List<String> all = new ArrayList<>(List.of("notebook"));
        all.addAll(List.of(words));
        all.addAll(List.of("--notebook", notebook.toString()));
        return Run.typing(typed, all.toArray(String[]::new));
    }

    private Run add() {
        return notebook("", "add", "--plan", PLAN, LOG, "--on", "2026-05-09");
    }

    @Test
    void threeThatAddOneLogAtOnceKeepTheDayOnce() throws Exception {
        ExecutorService three = Executors.newFixedThreadPool(3);
        try {
            List<Future<Run>> runs = List.of(three.submit(this::add), three.submit(this::add), three.submit(this::add));
            int kept = 0;
            for (Future<Run> run : runs) {
                kept += run.get().status() == ExitCodes.DONE ? 1 : 0;
            }
            assertThat(kept).isEqualTo(1);
        } finally {
            three.shutdown();
        }
        assertThat(notebook("", "list", "--json").json().path("sessions")).hasSize(1);
    }

    @Test
    void removingAsksFirstAndLeavesNoRowBehind() throws Exception {
        assertThat(add().status()).isZero();
        Run nobody = notebook("", "remove", "1");
        assertThat(nobody.status()).isEqualTo(ExitCodes.WRONG_USAGE);
        assertThat(nobody.err()).contains("--yes");
        Run refused = notebook("no\n", "remove", "1");
        assertThat(refused.out()).contains("Session 1, 2026-05-09, hill-climb two-litre", "Nothing was removed.");
        assertThat(notebook("", "list", "--json").json().path("sessions")).hasSize(1);
        Run unknown = notebook("yes\n", "remove", "1", "7");
        assertThat(unknown.status()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(notebook("", "list", "--json").json().path("sessions"))
                .as("all or none")
                .hasSize(1);
        Run removed = notebook("yes\n", "remove", "1");
        assertThat(removed.status()).as(removed.err()).isZero();
        assertThat(removed.out()).contains("Removed session 1.");
        assertThat(rows()).as("rows of any table").isZero();
        assertThat(add().out()).as("a number is not given again").contains("session 2");
        assertThat(notebook("", "check").status()).isZero();
    }

    private int rows() throws SQLException {
        int rows = 0;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + notebook);
                Statement statement = connection.createStatement()) {
            List<String> tables = new ArrayList<>();
            try (ResultSet names = statement.executeQuery(
                    "select name from sqlite_schema where type = 'table' and name not like 'sqlite_%'")) {
                while (names.next()) {
                    tables.add(names.getString(1));
                }
            }
            assertThat(tables).contains("session", "candidate", "finding_detail", "knowledge");
            for (String table : tables) {
                try (ResultSet count = statement.executeQuery("select count(*) from " + table)) {
                    rows += count.getInt(1);
                }
            }
        }
        return rows;
    }

    @Test
    void theEngineGetsAnotherNameInTheListAndInThePlan() throws Exception {
        assertThat(add().status()).isZero();
        Run renamed = notebook("", "rename", "1", "Hill climb \"B\"");
        assertThat(renamed.status()).as(renamed.err()).isZero();
        assertThat(notebook("", "list").out()).contains("Hill climb \"B\"").doesNotContain("hill-climb two-litre");
        try (Notebook kept = Notebook.openReadOnly(notebook)) {
            assertThat(kept.session(1).input().plan().engine().name()).contains("Hill climb \"B\"");
            assertThat(kept.session(1).start().planText()).contains("# ");
        }
        assertThat(notebook("", "rename", "1", " ").status()).isEqualTo(ExitCodes.WRONG_USAGE);
        assertThat(notebook("", "rename", "3", "x").status()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(notebook("", "check").status()).isZero();
    }

    @Test
    void aPullIsCorrectedAndTheFiguresAreMadeAgain() throws Exception {
        assertThat(add().status()).isZero();
        String before =
                notebook("", "show", "1", "--json").json().at("/pulls/1/lambda").asText();
        Run corrected = notebook("", "correct", "1", "2", "--lambda", "0.95", "--label", "new plugs", "--knock", "yes");
        assertThat(corrected.status()).as(corrected.err()).isZero();
        assertThat(before).isNotEqualTo("0.95");
        var shown = notebook("", "show", "1", "--json").json();
        assertThat(shown.at("/pulls/1/label").asText()).isEqualTo("new plugs");
        assertThat(shown.at("/pulls/1/knock").asText()).isEqualTo("heard");
        assertThat(notebook("", "list", "--json")
                        .json()
                        .at("/sessions/0/labels/0")
                        .asText())
                .as("what is kept beside the samples")
                .isEqualTo("new plugs");
        assertThat(notebook("", "correct", "1", "99", "--lambda", "0.9").status())
                .isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(notebook("", "correct", "1", "2").status()).isEqualTo(ExitCodes.WRONG_USAGE);
        assertThat(notebook("", "correct", "1", "2", "--knock", "maybe").status())
                .isEqualTo(ExitCodes.WRONG_USAGE);
        assertThat(notebook("", "check").status()).isZero();
    }

    @Test
    void aSessionThatRunsIsNotChanged() throws Exception {
        Path captures = folder.resolve("shop-sessions").resolve("20261125T081530Z");
        try (Notebook book = Notebook.open(notebook);
                SessionFolders.Claim running = SessionFolders.Claim.of(captures).orElseThrow()) {
            book.begin(new SessionStart(
                    java.time.Instant.parse("2026-11-25T08:15:30Z"),
                    "test",
                    "plan.toml",
                    "[engine]\nname = \"x\"\n",
                    java.util.Optional.of(running.folder().toString())));
            for (String[] words : new String[][] {
                {"remove", "1", "--yes"}, {"rename", "1", "y"}, {"correct", "1", "1", "--lambda", "0.9"}
            }) {
                Run run = notebook("", words);
                assertThat(run.status()).isEqualTo(ExitCodes.BAD_INPUT);
                assertThat(run.err()).contains("another program runs this session");
            }
        }
        assertThat(notebook("", "remove", "1", "--yes").out()).contains("Its raw data is still in " + captures);
    }
}
