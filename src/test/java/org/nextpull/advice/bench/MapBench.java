package org.nextpull.advice.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Prints the figures of the planner of maps on invented engines: {@code MapBench ENGINES SEED [NAME...]}, names as in the first column.
 * Distributions of engines, scatter and knock are those of a simulation study, no published source.
 */
public final class MapBench {
    private MapBench() {}

    /** A kind of engine and how its days are run. */
    record Case(MapClass kind, MapDay.Rules rules) {}

    static Map<String, Case> cases() {
        Map<String, Case> cases = new LinkedHashMap<>();
        MapClass usual = MapClass.usual();
        for (int step = 2; step <= 4; step += 2) {
            MapDay.Rules rules = MapDay.Rules.of(step);
            String by = " " + step + " deg";
            cases.put("spark" + by, new Case(usual, rules));
            cases.put("knock flag" + by, new Case(usual.withKnock(), rules));
            cases.put("knock level" + by, new Case(usual.withKnock(), rules.graded()));
            cases.put("both" + by, new Case(usual, rules.both()));
            cases.put("both, knock flag" + by, new Case(usual.withKnock(), rules.both()));
            cases.put("flat ignition" + by, new Case(usual, rules.flat()));
            cases.put("flat curves" + by, new Case(usual.flatCurves(), rules));
            cases.put("steep curves" + by, new Case(usual.steepCurves(), rules));
            cases.put("lopsided" + by, new Case(usual.lopsided(), rules));
            cases.put("badly guessed" + by, new Case(usual.badlyGuessed(), rules));
            cases.put("wandering" + by, new Case(usual.wandering(), rules));
            cases.put("scattered" + by, new Case(usual.scattered(), rules));
            cases.put("drifting" + by, new Case(usual.drifting(), rules));
            for (MapDay.Candidate which : List.of(MapDay.Candidate.SECOND_ALONE, MapDay.Candidate.SECOND_TAUGHT)) {
                String name = which == MapDay.Candidate.SECOND_ALONE ? "second fuel alone" : "second fuel taught";
                cases.put(name + by, new Case(usual, rules.of(which)));
                cases.put(name + ", both" + by, new Case(usual, rules.both().of(which)));
            }
            cases.put("peak proven" + by, new Case(usual, rules.near(0)));
            cases.put("nodes in their place only" + by, new Case(usual, rules.withoutStrays()));
        }
        return cases;
    }

    /** Kinds of engines whose spark is stepped by 4 deg at three held speeds. */
    static Map<String, MapClass> held() {
        MapClass usual = MapClass.usual();
        Map<String, MapClass> held = new LinkedHashMap<>();
        held.put("held speeds", usual);
        held.put("held speeds, flat curves", usual.flatCurves());
        held.put("held speeds, badly guessed", usual.badlyGuessed());
        held.put("held speeds, wandering", usual.wandering());
        return held;
    }

    public static void main(String[] args) {
        int engines = Integer.parseInt(args[0]);
        long seed = Long.parseLong(args[1]);
        List<String> wanted = List.of(args).subList(2, args.length);
        cases().forEach((name, one) -> {
            if (wanted.isEmpty() || wanted.contains(name)) {
                System.out.println(name + ": " + MapFigures.of(one.kind(), one.rules(), engines, seed));
            }
        });
        held().forEach((name, kind) -> {
            if (wanted.isEmpty() || wanted.contains(name)) {
                System.out.println(name + ": " + HeldFigures.of(kind, 4, engines, seed));
            }
        });
    }
}
