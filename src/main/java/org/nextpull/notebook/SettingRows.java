package org.nextpull.notebook;

import java.io.IOException;
import java.util.List;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** Settings that were asked for, as rows. */
final class SettingRows {
    private SettingRows() {}

    static void replace(Database database, long session, List<AskedSetting> settings) throws NotebookException {
        database.run("delete from setting where session = ?", session);
        int position = 0;
        for (AskedSetting setting : settings) {
            Entry.into("setting")
                    .put("session", session)
                    .put("position", position++)
                    .put("file", setting.file())
                    .put("pull", setting.pull())
                    .put("day_order", setting.order())
                    .put("advance_deg", setting.advance().map(Advance::deg))
                    .put("offset_deg", setting.offsetDeg().map(Advance::deg))
                    .put("lambda", setting.lambda().map(Lambda::value))
                    .put("fuel", setting.fuel())
                    .put("label", setting.label())
                    .put("knock", Ids.of(setting.knock()))
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
                        row.find("advance_deg", Advance::ofDeg),
                        row.find("offset_deg", Advance::ofDeg),
                        row.find("lambda", Lambda::of),
                        row.find("fuel"),
                        row.find("label"),
                        Ids.constant(KnockMark.class, row.text("knock")),
                        row.find("note")),
                session);
    }
}
