package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Lists of sessions, that of the latest day first, whenever it was kept. */
record Summaries(Database database) {
    /** Between labels in one cell; no label holds it. */
    private static final String UNIT_SEPARATOR = "\u001f";

    private static final String SELECT = """
            select s.*,
                (select count(*) from pull p where p.session = s.id) as pulls,
                (select count(*) from pull p where p.session = s.id and p.standing = 'used') as used,
                (select group_concat(label, char(31)) from
                    (select label, min(number) as first from pull p
                     where p.session = s.id and label is not null group by label order by first)) as labels,
                (select code from advice a where a.session = s.id order by position desc limit 1) as last_code
            from session s
            """;

    private static final String MATCHES = """
            where s.engine like :p escape '\\' or s.fuel like :p escape '\\' or s.plan_name like :p escape '\\'
                or exists (select 1 from pull p where p.session = s.id and (p.label like :p escape '\\'
                    or p.fuel like :p escape '\\' or p.note like :p escape '\\' or p.source like :p escape '\\'))
                or exists (select 1 from act a where a.session = s.id and (a.words like :p escape '\\'))
                or exists (select 1 from advice a where a.session = s.id and a.code like :p escape '\\')
            """;

    private static final Comparator<SessionSummary> LATEST_FIRST = Comparator.comparing(SessionSummary::started)
            .thenComparingLong(SessionSummary::id)
            .reversed();

    List<SessionSummary> all() throws IOException {
        // sorted here and not by the text of the times, which have fractions of a second or none
        return database.list(SELECT, Summaries::summary).stream()
                .sorted(LATEST_FIRST)
                .toList();
    }

    /** Those in which every one of the words stands somewhere, small and capital letters alike for ASCII. */
    List<SessionSummary> find(String words) throws IOException {
        List<SessionSummary> found = all();
        for (String word : Arrays.asList(words.strip().split("\\s+"))) {
            List<Long> matching =
                    database.list("select s.id from session s " + MATCHES, row -> row.wide("id"), pattern(word));
            found = found.stream()
                    .filter(session -> matching.contains(session.id()))
                    .toList();
        }
        return found;
    }

    /** The word anywhere, with the wild cards in it meant as letters. */
    private static String pattern(String word) {
        String plain = word.toLowerCase(Locale.ROOT)
                .replace("\\", "\\\\")
                .replace("%", "\\%")
                .replace("_", "\\_");
        return "%" + plain + "%";
    }

    SessionSummary one(long id) throws IOException {
        return database.first(SELECT + "where s.id = ?", Summaries::summary, id)
                .orElseThrow(() -> NotebookException.noSession(database.file(), id));
    }

    /** The newest session on a capture that was not closed. */
    Optional<SessionSummary> unfinished(String capture) throws IOException {
        return database.first(
                SELECT + "where s.capture = ? and s.closed is null order by s.id desc limit 1",
                Summaries::summary,
                capture);
    }

    /** The newest session on a capture. */
    Optional<SessionSummary> onCapture(String capture) throws IOException {
        return database.first(SELECT + "where s.capture = ? order by s.id desc limit 1", Summaries::summary, capture);
    }

    private static SessionSummary summary(QueryRow row) throws SQLException {
        return new SessionSummary(
                row.wide("id"),
                Instant.parse(row.text("started")),
                row.find("closed").map(Instant::parse),
                row.find("engine"),
                row.find("fuel"),
                row.text("plan_name"),
                row.find("labels")
                        .map(labels -> Arrays.asList(labels.split(UNIT_SEPARATOR)))
                        .orElse(List.of()),
                row.integer("pulls"),
                row.integer("used"),
                row.text("version"),
                row.find("last_code"));
    }
}
