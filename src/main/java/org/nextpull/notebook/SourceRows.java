package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.plan.Limit;
import org.nextpull.session.SourcePulls;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;
import org.nextpull.unit.Unit;

/** Logs, wires and tables of a session, without the candidates in them. */
record SourceRows(Database database, long session) {
    private static final String OF_SOURCE = " where session = ? and source = ? order by position";

    /**
     * A source as it is kept.
     *
     * @param position place in the day
     * @param described name that its description carries; empty when it could not be opened
     */
    record Kept(
            int position,
            String kind,
            String name,
            Optional<SourceDescription> described,
            BlockReader.RowCount rows,
            int thrownAway) {
        boolean isTable() {
            return kind.equals("table");
        }
    }

    /** Forgets what belongs to the sources, and all sources but the first so many: their candidates stay. */
    void clear(int count) throws NotebookException {
        for (String table : List.of("source_column", "alarm", "result_row")) {
            database.run("delete from " + table + " where session = ?", session);
        }
        database.run("delete from source where session = ? and position >= ?", session, count);
    }

    void write(int position, SourcePulls source) throws NotebookException {
        write(new Kept(position, "log", source.name(), source.description(), source.rowCount(), source.thrownAway()));
        int number = 0;
        for (Alarm alarm : source.alarms()) {
            InsertRow.into("alarm")
                    .put("session", session)
                    .put("source", position)
                    .put("position", number++)
                    .put("limit_name", alarm.limit().id())
                    .put("role", alarm.channel().role())
                    .put("sensor", alarm.channel().sensor())
                    .put("since_line", alarm.since().line())
                    .put("since_s", alarm.since().timeS())
                    .put("until_line", alarm.until().line())
                    .put("until_s", alarm.until().timeS())
                    .put("row_count", alarm.rows())
                    .put("worst", alarm.worst())
                    .put("allowed", alarm.allowed())
                    .insert(database);
        }
    }

    void write(int position, ResultTable table) throws NotebookException {
        write(new Kept(
                position, "table", table.description().name(), Optional.of(table.description()), table.rowCount(), 0));
        int number = 0;
        for (ResultTable.Row row : table.rows()) {
            InsertRow.into("result_row")
                    .put("session", session)
                    .put("source", position)
                    .put("position", number++)
                    .put("line", row.line())
                    .put("day_order", row.order())
                    .put("advance_deg", row.advance().map(Advance::deg))
                    .put("lambda", row.lambda().map(Lambda::value))
                    .put("torque_nm", row.torque().map(Torque::newtonMetres))
                    .put("power_w", row.power().map(Power::watts))
                    .put("label", row.label())
                    .put("fuel", row.fuel())
                    .put("knock", row.knock())
                    .put("used", row.used())
                    .insert(database);
        }
    }

    private void write(Kept source) throws NotebookException {
        Optional<SourceDescription> described = source.described();
        InsertRow.into("source")
                .put("session", session)
                .put("position", source.position())
                .put("kind", source.kind())
                .put("name", source.name())
                .put("described_name", described.map(SourceDescription::name))
                .put("encoding", described.map(SourceDescription::encoding))
                .put("separator", described.map(SourceDescription::separator))
                .put("decimal_mark", described.map(one -> String.valueOf(one.decimal())))
                .put("rows_good", source.rows().good())
                .put("rows_bad", source.rows().bad())
                .put("thrown_away", source.thrownAway())
                .upsert(database, "session, position");
        int number = 0;
        for (SourceDescription.Column column :
                described.map(SourceDescription::columns).orElse(List.of())) {
            InsertRow.into("source_column")
                    .put("session", session)
                    .put("source", source.position())
                    .put("position", number++)
                    .put("header", column.header())
                    .put("role", column.channel().map(Channel::role))
                    .put("sensor", column.channel().map(Channel::sensor))
                    .put("unit", column.unit())
                    .insert(database);
        }
    }

    List<Kept> read() throws IOException {
        return database.list(
                "select * from source where session = ? order by position",
                row -> new Kept(
                        row.integer("position"),
                        row.text("kind"),
                        row.text("name"),
                        description(row),
                        new BlockReader.RowCount(row.wide("rows_good"), row.wide("rows_bad")),
                        row.integer("thrown_away")),
                session);
    }

    private Optional<SourceDescription> description(QueryRow row) throws SQLException, IOException {
        Optional<String> name = row.find("described_name");
        if (name.isEmpty()) {
            return Optional.empty();
        }
        String encoding = row.text("encoding");
        String separator = row.text("separator");
        char decimal = row.text("decimal_mark").charAt(0);
        List<SourceDescription.Column> columns = database.list(
                "select * from source_column" + OF_SOURCE, SourceRows::column, session, row.integer("position"));
        return Optional.of(new SourceDescription(name.get(), encoding, separator, decimal, columns));
    }

    private static SourceDescription.Column column(QueryRow row) throws SQLException {
        Optional<Role> role = row.findConstant(Role.class, "role");
        OptionalInt sensor = row.findInteger("sensor");
        return new SourceDescription.Column(
                row.text("header"),
                role.map(known -> new Channel(known, sensor.orElse(1))),
                row.findConstant(Unit.class, "unit"));
    }

    List<Alarm> alarms(int position) throws IOException {
        return database.list(
                "select * from alarm" + OF_SOURCE,
                row -> new Alarm(
                        row.constant(Limit.class, "limit_name"),
                        new Channel(row.constant(Role.class, "role"), row.integer("sensor")),
                        new Alarm.RowPlace(row.wide("since_line"), row.findReal("since_s")),
                        new Alarm.RowPlace(row.wide("until_line"), row.findReal("until_s")),
                        row.integer("row_count"),
                        row.real("worst"),
                        row.real("allowed")),
                session,
                position);
    }

    ResultTable table(Kept source) throws IOException {
        List<ResultTable.Row> rows = database.list(
                "select * from result_row" + OF_SOURCE,
                row -> new ResultTable.Row(
                        row.wide("line"),
                        row.findInteger("day_order"),
                        row.find("advance_deg", Advance::ofDeg),
                        row.find("lambda", Lambda::of),
                        row.find("torque_nm", Torque::ofNewtonMetres),
                        row.find("power_w", Power::ofWatts),
                        row.find("label"),
                        row.find("fuel"),
                        row.constant(KnockMark.class, "knock"),
                        row.integer("used") == 1),
                session,
                source.position());
        return new ResultTable(source.described().orElseThrow(), rows, source.rows());
    }
}
