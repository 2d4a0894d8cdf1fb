package org.nextpull.notebook;

import java.io.IOException;
import java.util.List;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** Settings that were asked for, as rows. */
final class SettingRows {
    private SettingRows() {}

    static void replace(Database database, long session, List<AskedSetting> settings) throws NotebookException {
        database.run("delete from setting where session = ?", session);
        int position = 0;
        for (AskedSetting asked : settings) {
            EngineSetting setting = asked.setting();
            InsertRow.into("setting")
                    .put("session", session)
                    .put("position", position++)
                    .put("file", asked.file())
                    .put("pull", asked.pull())
                    .put("day_order", asked.order())
                    .put("advance_deg", setting.advance().map(Advance::deg))
                    .put("offset_deg", setting.offset().map(Advance::deg))
                    .put("lambda", setting.lambda().map(Lambda::value))
                    .put("fuel", setting.fuel())
                    .put("label", setting.label())
                    .put("knock", asked.knock())
                    .put("note", setting.note())
                    .insert(database);
        }
    }

    static List<AskedSetting> read(Database database, long session) throws IOException {
        return database.list(
                "select * from setting where session = ? order by position",
                row -> new AskedSetting(
                        row.find("file"),
                        row.findInteger("pull"),
                        row.findInteger("day_order"),
                        EngineSetting.ofNumbers(
                                        row.find("advance_deg", Advance::ofDeg),
                                        row.find("offset_deg", Advance::ofDeg),
                                        row.find("lambda", Lambda::of))
                                .fitted(row.find("label"), row.find("fuel"))
                                .withNote(row.find("note")),
                        row.constant(KnockMark.class, "knock")),
                session);
    }
}
